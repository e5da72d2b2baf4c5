import {
  type Arc,
  angleOf,
  arc,
  cross,
  directionAt,
  dot,
  nearestOnEdge,
  norm,
  polar,
  scale,
  subtract,
  type Vec,
} from '../../geometry/index.ts';
import type { KeyDimension } from '../../sketch/index.ts';
import { type Drawing, pathMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { writeAngle, writeLength } from '../layout/figures.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { DRAWN, step } from '../layout/strokes.ts';
import { drawLeader } from './leader.ts';
import { drawLengthDimension, measuredLength } from './length-dimension.ts';
import { type PatternSource, showsPart } from './source.ts';

/** A key dimension in words, for a table. */
export interface DimensionRow {
  readonly label: string;
  readonly figure: string;
}

/** Radius of the arc that shows an angle, mm. */
const ANGLE_ARC = 8;
/** How far a corner may differ from an angle's figure and still be drawn as that angle, rad. */
const SAME_ANGLE = 1e-6;

/**
 * Draws the key dimensions where they belong, shortest first; those for which there is no room come back as rows. A pattern
 * that does not show the part's own edge has nothing to dimension: there all of them are rows.
 */
export function drawDimensions(drawing: Drawing, source: PatternSource): readonly DimensionRow[] {
  const { part, routing, options } = source;
  const regions = [part.region, ...routing.blank, ...(options.view === 'all' ? routing.template : [])];
  const rowOf = (dimension: KeyDimension): DimensionRow => ({
    label: dimension.label,
    figure: figureOf(source, dimension),
  });
  if (!showsPart(source)) return part.dimensions.map(rowOf);
  const hull = regions.flatMap((region) => region.outer.edges.flatMap((edge) => flattenEdge(edge, 0.5)));
  const lengths = part.dimensions
    .filter((dimension) => dimension.kind === 'length')
    .sort((a, b) => measuredLength(a) - measuredLength(b));
  const others = part.dimensions.filter((dimension) => dimension.kind !== 'length');
  return [...others, ...lengths].flatMap((dimension) => {
    const row = rowOf(dimension);
    const drawn = drawing.asOptional(dimension.name, () =>
      drawOne(drawing, source, dimension, row.figure, hull),
    );
    return drawn ? [] : [row];
  });
}

function drawOne(
  drawing: Drawing,
  source: PatternSource,
  dimension: KeyDimension,
  figure: string,
  hull: readonly Vec[],
): boolean {
  switch (dimension.kind) {
    case 'length':
      return drawLengthDimension(drawing, dimension, figure, hull);
    case 'angle':
      return drawAngle(drawing, source, dimension, figure);
    case 'radius': {
      const found = arcOf(source, dimension);
      const centre = found?.centre ?? dimension.at;
      const ray = angleOf(subtract(dimension.at, centre));
      return drawLeader(drawing, dimension.at, `${figure} ${dimension.label}`, {
        directions: found === undefined ? [] : [ray + Math.PI, ray],
      });
    }
    default:
      return dimension satisfies never;
  }
}

/** What is printed: lengths and radii as they lie in the geometry, angles as the form gives them. */
function figureOf(source: PatternSource, dimension: KeyDimension): string {
  const { lengths } = source.options;
  switch (dimension.kind) {
    case 'length':
      return writeLength(measuredLength(dimension), lengths);
    case 'angle':
      return writeAngle(dimension.value);
    case 'radius':
      return `R ${writeLength(arcOf(source, dimension)?.radius ?? dimension.value, lengths)}`;
    default:
      return dimension satisfies never;
  }
}

/** The arc of the part with the dimension's edge identity that passes nearest to its place. */
function arcOf(source: PatternSource, dimension: Extract<KeyDimension, { kind: 'radius' }>): Arc | undefined {
  return edgesOf([source.part.region])
    .filter((edge): edge is Arc => edge.kind === 'arc' && edge.tag.id === dimension.edge)
    .map((edge) => ({ edge, away: nearestOnEdge(edge, dimension.at).distance }))
    .sort((a, b) => a.away - b.away)[0]?.edge;
}

/** Words with a leader; and an arc between the two edges, where they meet there at just this angle. */
function drawAngle(
  drawing: Drawing,
  source: PatternSource,
  dimension: Extract<KeyDimension, { kind: 'angle' }>,
  figure: string,
): boolean {
  const words = `${figure} ${dimension.label}`;
  const corner = cornerAt(source, dimension.at);
  if (corner === undefined || Math.abs(corner.angle - dimension.value) > SAME_ANGLE) {
    return drawLeader(drawing, dimension.at, words);
  }
  const bisector = polar(corner.start + corner.angle / 2);
  const away = angleOf(bisector) + Math.PI;
  const outward = [0, 0.3, -0.3, 0.6, -0.6, 0.9, -0.9].map((turn) => away + turn);
  if (!drawLeader(drawing, dimension.at, words, { directions: outward })) return false;
  const ends = [corner.start, corner.start + corner.angle].map((angle) =>
    step(dimension.at, polar(angle), ANGLE_ARC),
  ) as [Vec, Vec];
  const bow = arc(...ends, dimension.at, 1, DRAWN);
  const points = flattenEdge(bow, 0.2);
  const isClear = points.slice(1).every((p, i) => drawing.occupancy.isClearOfBoxes(points[i]!, p));
  const room = { centre: step(dimension.at, bisector, ANGLE_ARC), halfWidth: 1.5, halfHeight: 1.5, angle: 0 };
  if (isClear && drawing.occupancy.linesIn(room) === 0) drawing.draw([pathMark('dimension', [bow])]);
  return true;
}

/** The angle in the material between the two edges that meet at a point, anticlockwise from `start`. */
function cornerAt(
  source: PatternSource,
  at: Vec,
): { readonly start: number; readonly angle: number } | undefined {
  const edges = edgesOf([source.part.region]);
  const near = (p: Vec): boolean => norm(p.x - at.x, p.y - at.y) < 1e-6;
  const before = edges.find((edge) => near(edge.to));
  const after = edges.find((edge) => near(edge.from));
  if (before === undefined || after === undefined) return undefined;
  const out = directionAt(after, 0);
  const back = scale(directionAt(before, 1), -1);
  const turned = Math.atan2(cross(out, back), dot(out, back));
  return { start: angleOf(out), angle: turned > 0 ? turned : turned + 2 * Math.PI };
}
