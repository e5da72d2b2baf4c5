import {
  add,
  type Box,
  cross,
  directionAt,
  type Edge,
  intersectEdges,
  line,
  scale,
  subtract,
  type Vec,
} from '../../geometry/index.ts';
import type { UnroutedRun } from './find-runs.ts';
import type { Side } from './side.ts';

interface Ray {
  readonly corner: Vec;
  readonly along: Vec;
}

/** Where two rays cross ahead of both, and how far along each, mm; nothing when they are parallel or part. */
export function crossingOfRays(a: Ray, b: Ray): { at: Vec; a: number; b: number } | undefined {
  const turn = cross(a.along, b.along);
  if (Math.abs(turn) < PARALLEL) return undefined;
  const gap = subtract(b.corner, a.corner);
  const alongA = cross(gap, b.along) / turn;
  const alongB = cross(gap, a.along) / turn;
  if (!(alongA > 0 && alongB > 0)) return undefined;
  return { at: add(a.corner, scale(a.along, alongA)), a: alongA, b: alongB };
}

/** Sine of the angle below which two rays count as parallel: they would cross metres away. */
const PARALLEL = 1e-3;

/**
 * From the corner before a run to the corner after it, out past everything: along the straight continuation of each
 * routed neighbour to a box round the whole loop, and round the box with the wood on the left. A side that does not
 * run on starts from the far end of its unrouted edge. Nothing when a continuation hits the loop itself.
 */
export function detour(
  run: UnroutedRun,
  a: Side,
  b: Side,
  { loop, box }: { readonly loop: readonly Edge[]; readonly box: Box },
): Edge[] | undefined {
  const startA = a.runsOn ? a : { corner: a.end.to, along: directionAt(a.end, 1) };
  const startB = b.runsOn ? b : { corner: b.end.from, along: scale(directionAt(b.end, 0), -1) };
  const kept = [a, b].filter((side) => !side.runsOn).length;
  if (kept >= run.edges.length) return undefined;
  const lead = a.runsOn ? [] : [a.end];
  const tail = b.runsOn ? [] : [b.end];
  const tag = { id: `run-on.${run.edges[0]!.tag.id}`, role: 'left' } as const;
  const outA = leave(box, startA);
  const outB = leave(box, startB);
  const met = crossingOfRays(startA, startB);
  const meets = met !== undefined && met.a <= outA.far && met.b <= outB.far;
  const points = meets ? [met.at] : [outA.at, ...cornersBetween(box, outA.at, outB.at), outB.at];
  const path = [startA.corner, ...points, startB.corner];
  const edges = path.slice(1).map((to, at) => {
    const from = path[at]!;
    if (at === 0) return line(from, to, a.routed.tag);
    return line(from, to, at === path.length - 2 ? b.routed.tag : tag);
  });
  const rays = [edges[0]!, edges.at(-1)!];
  const hits = rays.some((ray, at) => {
    const start = at === 0 ? ray.from : ray.to;
    return loop.some((edge) => !startsAt(edge, start) && intersectEdges(ray, edge).kind !== 'none');
  });
  return hits ? undefined : [...lead, ...edges, ...tail];
}

function startsAt({ from, to }: Edge, p: Vec): boolean {
  return (from.x === p.x && from.y === p.y) || (to.x === p.x && to.y === p.y);
}

/** Where a ray from inside a box leaves it. */
function leave(box: Box, { corner, along }: Ray): { at: Vec; far: number } {
  const farX = along.x > 0 ? (box.maxX - corner.x) / along.x : (box.minX - corner.x) / along.x;
  const farY = along.y > 0 ? (box.maxY - corner.y) / along.y : (box.minY - corner.y) / along.y;
  const far = Math.min(along.x === 0 ? Infinity : farX, along.y === 0 ? Infinity : farY);
  return { at: add(corner, scale(along, far)), far };
}

/** The corners of a box passed anticlockwise from one place on its border to another. */
function cornersBetween(box: Box, from: Vec, to: Vec): Vec[] {
  const { minX, minY, maxX, maxY } = box;
  const corners = [
    { x: minX, y: minY },
    { x: maxX, y: minY },
    { x: maxX, y: maxY },
    { x: minX, y: maxY },
  ];
  const start = alongBorder(box, from);
  const round = 2 * (maxX - minX + (maxY - minY));
  const ahead = (p: Vec): number => (alongBorder(box, p) - start + round) % round;
  const end = ahead(to);
  return corners
    .map((at) => ({ at, ahead: ahead(at) }))
    .filter((corner) => corner.ahead > 0 && corner.ahead < end)
    .sort((p, q) => p.ahead - q.ahead)
    .map((corner) => corner.at);
}

/** How far along the border of a box, anticlockwise from its lower left corner, a place on it lies. */
function alongBorder(box: Box, p: Vec): number {
  const { minX, minY, maxX, maxY } = box;
  const wide = maxX - minX;
  const high = maxY - minY;
  const away = [p.y - minY, maxX - p.x, maxY - p.y, p.x - minX].map(Math.abs);
  switch (away.indexOf(Math.min(...away))) {
    case 0:
      return p.x - minX;
    case 1:
      return wide + (p.y - minY);
    case 2:
      return wide + high + (maxX - p.x);
    default:
      return 2 * wide + high + (maxY - p.y);
  }
}
