import type { PlacedPart } from '../../base/index.ts';
import {
  angleOf,
  directionToFrame,
  distance,
  dot3,
  pointToFrame,
  pointToWorld,
  subtract,
  type Vec,
} from '../../geometry/index.ts';
import type { Camera } from '../view/api.ts';
import type { Dimension } from './api.ts';
import { cornersInWorld } from './corners-in-world.ts';

/** A face turned from the picture by less than this (rad) shows its angles true. */
const TRUE_ANGLE = 1e-4;
/** Leans between these (rad) are worth an angle: less is plumb, more is a level part. */
const LEAN = { least: 0.2 * (Math.PI / 180), most: 50 * (Math.PI / 180) } as const;
/** A part leans both ways where it leans by more than this (rad) in each: a frame turned a little in plan does not. */
const BOTH_WAYS = Math.PI / 180;

/**
 * Leans from plumb, one of each different part: of its longest straight edge where its face shows true; of a part that leans both ways, what
 * one sees of its length, which is what splay and rake mean, and the figure says so.
 */
export function leansOfBase(parts: readonly PlacedPart[], camera: Camera): readonly Dimension[] {
  const seen = new Set<string>();
  return parts.flatMap((part): readonly Dimension[] => {
    if (seen.has(part.place)) return [];
    const isTrue = Math.abs(dot3(part.frame.z, camera.z)) >= Math.cos(TRUE_ANGLE);
    const edge = isTrue
      ? longestEdge(part, camera)
      : leansBothWays(part, camera)
        ? lengthOnFloor(part, camera)
        : undefined;
    if (edge === undefined) return [];
    const [low, high] = edge.from.y < edge.to.y ? [edge.from, edge.to] : [edge.to, edge.from];
    const lean = angleOf(subtract(high, low)) - Math.PI / 2;
    if (Math.abs(lean) < LEAN.least || Math.abs(lean) > LEAN.most) return [];
    seen.add(part.place);
    const [from, to] = lean > 0 ? [Math.PI / 2, Math.PI / 2 + lean] : [Math.PI / 2 + lean, Math.PI / 2];
    return [
      {
        kind: 'angle',
        name: `${part.label} from plumb`,
        at: low,
        from,
        to,
        ...(isTrue ? {} : { words: 'in this view' }),
      },
    ];
  });
}

/** Turn in plan of each different part that stands on edge: of its face from the table's length. */
export function turnsOfBase(parts: readonly PlacedPart[], camera: Camera): readonly Dimension[] {
  const seen = new Set<string>();
  return parts.flatMap((part): readonly Dimension[] => {
    if (seen.has(part.place) || Math.abs(dot3(part.frame.z, camera.z)) > 1e-4) return [];
    const points = part.face
      .flatMap(({ outer }) => outer.edges)
      .map(({ from }) => pointToFrame(camera, pointToWorld(part.frame, { ...from, z: 0 })))
      .toSorted((a, b) => a.x - b.x || a.y - b.y);
    const [first, last] = [points[0], points.at(-1)];
    if (first === undefined || last === undefined || distance(first, last) < 1) return [];
    const turn = angleOf(subtract({ x: last.x, y: last.y }, { x: first.x, y: first.y }));
    const fromAxis = Math.abs(turn) < Math.PI / 4 ? turn : turn - Math.sign(turn) * (Math.PI / 2);
    if (Math.abs(fromAxis) < LEAN.least) return [];
    seen.add(part.place);
    const axis = turn - fromAxis;
    const [from, to] = fromAxis > 0 ? [axis, turn] : [turn, axis];
    return [{ kind: 'angle', name: `${part.label} in plan`, at: { x: first.x, y: first.y }, from, to }];
  });
}

function longestEdge(part: PlacedPart, camera: Camera): { readonly from: Vec; readonly to: Vec } | undefined {
  const cuts = new Set(part.cuts.map(({ name }) => name));
  const lines = part.face
    .flatMap(({ outer }) => outer.edges)
    .filter((edge) => edge.kind === 'line' && !cuts.has(edge.tag.id))
    .map(({ from, to }) => ({ from: onPicture(part, from, camera), to: onPicture(part, to, camera) }));
  return lines.toSorted((a, b) => distance(b.from, b.to) - distance(a.from, a.to))[0];
}

function onPicture({ frame }: PlacedPart, p: Vec, camera: Camera): Vec {
  const { x, y } = pointToFrame(camera, pointToWorld(frame, { ...p, z: 0 }));
  return { x, y };
}

function leansBothWays({ frame }: PlacedPart, camera: Camera): boolean {
  const along = directionToFrame(camera, frame.y);
  const up = Math.abs(along.y);
  return Math.atan2(Math.abs(along.x), up) > BOTH_WAYS && Math.atan2(Math.abs(along.z), up) > BOTH_WAYS;
}

/** The part's length as seen, from the corner of its foot that lies farthest out. */
function lengthOnFloor(
  part: PlacedPart,
  camera: Camera,
): { readonly from: Vec; readonly to: Vec } | undefined {
  const corners = cornersInWorld(part).map((p) => pointToFrame(camera, p));
  const lowest = Math.min(...corners.map(({ y }) => y));
  const along = directionToFrame(camera, part.frame.y);
  const way = along.y < 0 ? -1 : 1;
  const outward = along.x * way > 0 ? 1 : -1;
  const feet = corners.filter(({ y }) => y < lowest + 0.05).toSorted((a, b) => outward * (a.x - b.x));
  const foot = feet[0];
  if (foot === undefined) return undefined;
  return { from: { x: foot.x, y: foot.y }, to: { x: foot.x + way * along.x, y: foot.y + way * along.y } };
}
