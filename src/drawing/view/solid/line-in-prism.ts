import { dot3, norm, type Plane3, type Vec, type Vec3 } from '../../../geometry/index.ts';
import type { Facet, FlatPrism } from './flat-prism.ts';

/** Stretches of a line, as pairs of parameters, in order and apart. */
export type Stretches = readonly (readonly [number, number])[];

/** Of a component of a direction: less is none. */
const NONE = 1e-12;
/** mm; a line so near to a plane that bounds what it runs along lies on it. */
const ON = 1e-9;

/** What planes leave of the stretch from `start` to `end` of the line o + t·d; nothing when nothing. A line on a plane counts as inside. */
export function withinPlanes(
  o: Vec3,
  d: Vec3,
  [start, end]: readonly [number, number],
  planes: readonly Plane3[],
): readonly [number, number] | undefined {
  let [t0, t1] = [start, end];
  for (const { normal, offset } of planes) {
    const slope = dot3(normal, d);
    const height = dot3(normal, o) - offset;
    if (Math.abs(slope) < NONE) {
      if (height > ON) return undefined;
    } else if (slope > 0) t1 = Math.min(t1, -height / slope);
    else t0 = Math.max(t0, -height / slope);
    if (t0 > t1) return undefined;
  }
  return [t0, t1];
}

/**
 * Where the line o + t·d runs inside the prism, from t = `least` on, exactly but for rounding: the convex stretch between faces and cuts,
 * less what lies outside the walls. Lines along a wall may count as in or out.
 */
export function lineInPrism(prism: FlatPrism, o: Vec3, d: Vec3, least = -Infinity): Stretches {
  let range: readonly [number, number] = [least, Infinity];
  if (Math.abs(d.z) < NONE) {
    if (o.z > 0 || o.z < -prism.thickness) return [];
  } else {
    const [a, b] = [-o.z / d.z, (-prism.thickness - o.z) / d.z];
    range = [Math.max(least, Math.min(a, b)), Math.max(a, b)];
  }
  for (const { plane } of prism.cuts) {
    const slope = dot3(plane.normal, d);
    const height = dot3(plane.normal, o) - plane.offset;
    if (Math.abs(slope) < NONE) {
      if (height > 0) return [];
    } else if (slope > 0) range = [range[0], Math.min(range[1], -height / slope)];
    else range = [Math.max(range[0], -height / slope), range[1]];
  }
  if (!(range[0] < range[1])) return [];
  if (norm(d.x, d.y) < NONE) return isWithin(prism.loops, o) ? [range] : [];
  return alongWalls(prism.loops, o, d, range);
}

/** Is the point within an odd number of the loops? */
function isWithin(loops: FlatPrism['loops'], { x, y }: Vec): boolean {
  let inside = false;
  for (const loop of loops) {
    for (const { from, to } of loop) {
      if (from.y > y === to.y > y) continue;
      if (x < from.x + ((y - from.y) / (to.y - from.y)) * (to.x - from.x)) inside = !inside;
    }
  }
  return inside;
}

function alongWalls(
  loops: FlatPrism['loops'],
  o: Vec,
  d: Vec,
  [start, end]: readonly [number, number],
): Stretches {
  const crossings: number[] = [];
  for (const loop of loops) for (const facet of loop) crossAt(facet, o, d, crossings);
  crossings.sort((a, b) => a - b);
  const stretches: [number, number][] = [];
  for (let i = 0; i + 1 < crossings.length; i += 2) {
    const from = Math.max(start, crossings[i]!);
    const to = Math.min(end, crossings[i + 1]!);
    if (from < to) stretches.push([from, to]);
  }
  return stretches;
}

/** Each end of a facet lies on one side of the line or the other, never on it, so that the crossings of a loop are even in number. */
function crossAt({ from, to }: Facet, o: Vec, d: Vec, crossings: number[]): void {
  const a = d.x * (from.y - o.y) - d.y * (from.x - o.x);
  const b = d.x * (to.y - o.y) - d.y * (to.x - o.x);
  if (a > 0 === b > 0) return;
  const share = a / (a - b);
  const x = from.x + share * (to.x - from.x) - o.x;
  const y = from.y + share * (to.y - from.y) - o.y;
  crossings.push((x * d.x + y * d.y) / (d.x * d.x + d.y * d.y));
}
