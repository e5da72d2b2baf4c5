import {
  angleOf,
  dot,
  type Edge,
  leftOf,
  lengthOf,
  norm,
  polar,
  scale,
  subtract,
} from '../../geometry/index.ts';
import type { Cut } from '../api.ts';
import { RIP_WITHIN } from '../end-cut/facts.ts';
import type { Blank, CutPlane, EdgeSide } from '../end-cut/index.ts';
import { faceEdgeOf } from '../joints/face-edge.ts';
import type { MadePart } from '../made/api.ts';
import { extentAlong } from './extent-along.ts';

/** An edge straight over at least this share of the part's length can lie against a fence. */
const LEAST_SHARE = 0.4;
/** Directions nearer than this (rad) are parallel enough for a fence: 0.05 mm over 500 mm. */
const PARALLEL = 1e-4;

/** How a part lies at the saw, and what the fence stands against. */
export interface SawnBlank {
  readonly blank: Blank;
  /** The straight edge against the fence; absent where a curved part is held in its blank. */
  readonly edge?: string;
}

/**
 * What lies on the saw when a part's ends are cut: against the fence lies the face edge that joints are measured from; a part with none is
 * sawn before it is shaped, from the face edge of its blank, which runs along the grain. `about` is the cut whose lengths are wanted: they are counted from the
 * cut at the other end.
 */
export function blankOfPart(made: MadePart, about?: Cut): SawnBlank {
  const { sketch, cuts, silhouette } = made;
  const ends = new Set(cuts.map(({ name }) => name));
  const edges = silhouette.flatMap(({ outer }) => outer.edges);
  const straight = edges.filter((edge) => edge.kind === 'line' && !ends.has(edge.tag.id));
  const named = faceEdgeOf({ ...made, hand: 'left' }, 'face').edge;
  const [face] = straight.filter(({ tag }) => tag.id === named).toSorted((a, b) => lengthOf(b) - lengthOf(a));
  const { along } = extentAlong(silhouette, sketch.grain);
  const least = LEAST_SHARE * (along.most - along.least);
  const fenceAngle = upwards(face === undefined ? sketch.grain : angleOf(subtract(face.to, face.from)));
  const { across } = extentAlong(silhouette, fenceAngle);
  const right = scale(leftOf(polar(fenceAngle)), -1);
  const sideOf = ({ from }: Edge): EdgeSide =>
    2 * dot(from, right) > across.least + across.most ? 'right' : 'left';
  const parallel = straight.filter(
    (edge) =>
      lengthOf(edge) >= least &&
      Math.abs(Math.sin(angleOf(subtract(edge.to, edge.from)) - fenceAngle)) < PARALLEL,
  );
  const sides = new Set(parallel.map(sideOf));
  const blank: Blank = {
    left: across.least,
    right: across.most,
    thickness: sketch.thickness,
    faceEdge: face === undefined ? 'left' : sideOf(face),
    fenceAngle,
    // A part held in its blank has both edges of the blank.
    straight: face === undefined || sides.size === 2 ? 'both' : sideOf(face),
    reference: referenceOf(made, fenceAngle, about),
  };
  return face === undefined ? { blank } : { blank, edge: face.tag.id };
}

/** A cut's plane as the arithmetic of end cuts takes it. */
export function cutPlane({ plane: { normal, offset } }: Cut): CutPlane {
  return { normal, point: { x: normal.x * offset, y: normal.y * offset, z: normal.z * offset } };
}

/** Lengths count from the cut at the other end; where there is none, from the end of the blank. */
function referenceOf(made: MadePart, direction: number, about: Cut | undefined): Blank['reference'] {
  const side = ({ plane }: Cut): number => Math.sign(dot(plane.normal, polar(direction)));
  const own = about === undefined ? 1 : side(about);
  const crosses = ({ plane }: Cut): boolean =>
    Math.abs(dot(plane.normal, polar(direction))) >
    Math.sin(RIP_WITHIN) * norm(plane.normal.x, plane.normal.y);
  const other = made.cuts.find((cut) => cut.meets && crosses(cut) && side(cut) === -own);
  if (other !== undefined) return { kind: 'cut', plane: cutPlane(other) };
  const { along } = extentAlong(made.silhouette, direction);
  return { kind: 'square', y: own > 0 ? along.least : along.most };
}

/** The same line's direction towards larger y. */
function upwards(angle: number): number {
  const turned = Math.sin(angle) < 0 ? angle + Math.PI : angle;
  return Math.atan2(Math.sin(turned), Math.cos(turned));
}
