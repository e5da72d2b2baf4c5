import type { Finding } from '../core/index.ts';
import {
  add,
  chordAlong,
  cross,
  directionAt,
  dot,
  type Edge,
  leftOf,
  middle,
  nearestOnEdges,
  perimeterOfOutline,
  placeAlong,
  polar,
  scale,
  subtract,
  unit,
  type Vec,
} from '../geometry/index.ts';
import { GRAIN_SLOPE } from '../materials/index.ts';
import { grainAt, type SketchedPart } from '../sketch/index.ts';
import type { Rule } from './rule.ts';

/** A place where two edges run side by side, and how steeply the grain crosses the limb between them. */
interface Limb {
  readonly at: Vec;
  readonly slope: number;
  readonly edges: readonly [string, string];
  /** A saw across it would part the wood in two: nothing else carries what it carries. */
  readonly parts: boolean;
}

/** mm between the places looked at along a loop. */
const STEP = 40;

/** Sine of the angle within which two edges run side by side. */
const SIDE_BY_SIDE = 0.5;

/** A limb is at least this many times longer than wide; less is a corner or a foot, and carries no bending. */
const SLENDER = 2;

/**
 * Does the grain cross a limb so steeply that it breaks? Slope is rise over run of the grain against the limb's own length.
 * The part as a whole, along its centre line, must not be steeper than the limit for loaded legs. A limb of it is a caution,
 * and a stop where the grain runs more across than along and nothing bridges it: an arm breaks off, a rail over a window
 * is held at both ends.
 */
export const shortGrain: Rule = (part, _, say) => {
  const { from, to } = part.centreLine;
  const whole = slopeAgainst(part.grain, subtract(to, from));
  if (whole >= GRAIN_SLOPE.caution) {
    const severity = whole >= GRAIN_SLOPE.stop ? 'stop' : 'caution';
    return [describe(part, whole, severity, [], middle(from, to), 'the part')];
  }
  const steep = steepLimbs(part);
  if (steep.length === 0) return [];
  const worst = steep.reduce((a, b) => (b.slope > a.slope ? b : a));
  const edges = [...new Set(steep.flatMap((limb) => limb.edges))];
  const where = `the limb between ${worst.edges.map((id) => say.edges([id])).join(' and ')}`;
  const breaksOff = steep.some((limb) => limb.parts && limb.slope > ACROSS);
  return [describe(part, worst.slope, breaksOff ? 'stop' : 'caution', edges, worst.at, where)];
};

function describe(
  part: SketchedPart,
  slope: number,
  severity: Finding['severity'],
  edges: readonly string[],
  at: Vec,
  where: string,
): Finding {
  const words =
    slope > 1 ? `${Math.round((Math.atan(slope) * 180) / Math.PI)}°` : `1:${(1 / slope).toFixed(1)}`;
  return {
    code: 'part.short-grain',
    severity,
    part: part.name,
    edges,
    at,
    message: `The grain crosses ${where} at ${words}: short grain. At 1:10 four fifths of the strength is left, at 1:5 about half.`,
    // A grain square to a limb has no finite slope.
    measured: { value: Math.min(slope, STEEPEST), unit: 'none' },
    limit: { value: GRAIN_SLOPE.caution, unit: 'none' },
    cure: 'Turn the part on the board so that the grain follows it, take a board whose grain sweeps with it, or laminate it.',
  };
}

const STEEPEST = 1000;

/** Slope from which grain runs more across a limb than along it. */
const ACROSS = 1;

function slopeAgainst(grain: number, axis: Vec): number {
  const along = polar(grain);
  return Math.abs(cross(axis, along)) / Math.abs(dot(axis, along));
}

/** Looks across the wood every STEP mm along each loop. */
function steepLimbs(part: SketchedPart): Limb[] {
  const { region } = part;
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  return [region.outer, ...region.holes].flatMap((loop) => {
    const round = perimeterOfOutline(loop);
    const count = Math.ceil(round / STEP);
    return Array.from({ length: count }, (_, k) => {
      const { index, point, direction } = placeAlong(loop, ((k + 0.5) / count) * round);
      const limb = steepLimbAt(part, edges, loop.edges[index]!.tag.id, point, direction);
      return limb && { ...limb, parts: limb.parts && loop === region.outer };
    }).filter((limb) => limb !== undefined);
  });
}

function steepLimbAt(
  part: SketchedPart,
  edges: readonly Edge[],
  edge: string,
  start: Vec,
  along: Vec,
): Limb | undefined {
  const across = chordAlong([part.region], start, leftOf(along));
  if (across === undefined) return undefined;
  const end = nearestOnEdges(edges, across.to);
  const other = edges[end.index]!;
  const back = directionAt(other, end.t);
  if (Math.abs(cross(along, back)) > SIDE_BY_SIDE) return undefined;
  const axis = unit(add(along, scale(back, Math.sign(dot(along, back)))));
  const at = middle(across.from, across.to);
  const slope = slopeAgainst(grainAt(part, at), axis);
  if (slope < GRAIN_SLOPE.caution) return undefined;
  const long = chordAlong([part.region], at, axis)?.length ?? 0;
  return long < SLENDER * across.length
    ? undefined
    : { at, slope, edges: [edge, other.tag.id], parts: end.index < part.region.outer.edges.length };
}
