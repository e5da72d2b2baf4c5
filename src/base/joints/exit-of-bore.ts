import { dot3, type Edge, norm, pointToWorld, subtract3, type Vec3 } from '../../geometry/index.ts';
import type { SolidPart } from '../contact/api.ts';
import type { Bore } from './api.ts';
import { type Exit, exitsAlong, NOWHERE } from './wood-behind.ts';

/** mm on either side of a corner of the outline at which its two edges are met. */
const ASIDE = 1e-4;
const STEPS = 8;

/**
 * Where a bore of this mouth first comes out as it is drilled deeper, looked for all along its middle and both its sides: at even steps, and wherever a
 * corner of the outline or the belly of an arc looks at it.
 */
export function exitOfBore(part: SolidPart, { own, length, width }: Bore): Exit {
  const half = (length - width) / 2;
  const { region } = part.drawn;
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  const looking = edges
    .flatMap((edge) => placesOf(edge, own.z))
    .map((p) => dot3(subtract3({ ...p, z: own.origin.z }, own.origin), own.x))
    .flatMap((s) => [s - ASIDE, s + ASIDE])
    .filter((s) => Math.abs(s) <= half);
  const even = half === 0 ? [0] : Array.from({ length: STEPS + 1 }, (_, k) => half * ((2 * k) / STEPS - 1));
  const sooner = exitsAlong(part, own.z);
  let first = NOWHERE;
  for (const x of [...even, ...looking])
    for (const y of [-width / 2, 0, width / 2]) first = sooner(pointToWorld(own, { x, y, z: 0 }), first);
  return first;
}

/** Where an edge begins, and where an arc stands out most against the drilled line. */
function placesOf(edge: Edge, { x, y }: Vec3): readonly { readonly x: number; readonly y: number }[] {
  if (edge.kind === 'line') return [edge.from];
  const run = norm(x, y);
  if (run < ASIDE) return [edge.from];
  const { centre, radius } = edge;
  return [edge.from, { x: centre.x - (x / run) * radius, y: centre.y - (y / run) * radius }];
}
