import {
  add,
  type Box,
  distance,
  type Edge,
  intersectEdges,
  leftOf,
  length,
  line,
  locate,
  polygonOutline,
  type Region,
  scale,
  subtract,
  type Vec,
} from '../geometry/index.ts';
import { TAPE } from '../materials/index.ts';
import type { Fixing } from './api.ts';

const TAG = { id: 'tape', role: 'left' } as const;

/**
 * Strips of tape along a line, each in the middle of the widest stretch of `held` across it; only where the part is wide
 * enough that tape alone may hold it.
 */
export function tapePlaces(
  { from, to }: { readonly from: Vec; readonly to: Vec },
  held: readonly Region[],
  box: Box,
): Fixing[] {
  const long = distance(from, to);
  if (long === 0) return [];
  const along = scale(subtract(to, from), 1 / long);
  const across = leftOf(along);
  const far = length({ x: box.maxX - box.minX, y: box.maxY - box.minY });
  const edges = held.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));
  const count = Math.max(1, Math.floor(long / TAPE.spacing));
  const places: Fixing[] = [];
  for (let k = 0; k < count; k++) {
    const station = add(from, scale(along, ((k + 0.5) / count) * long));
    const ray = line(add(station, scale(across, -far)), add(station, scale(across, far)), TAG);
    const at = middleOfWidest(ray, edges, held);
    if (at === undefined || !isFree(at, along, edges, held)) continue;
    const turn = Math.atan2(along.y, along.x) - Math.PI / 2;
    places.push({ kind: 'tape', at, width: TAPE.width, height: TAPE.length, turn });
  }
  return places;
}

function middleOfWidest(ray: Edge, edges: readonly Edge[], held: readonly Region[]): Vec | undefined {
  const points = edges.flatMap((edge) => {
    const met = intersectEdges(ray, edge);
    return met.kind === 'points' ? met.points : [];
  });
  const sorted = [...points].sort((a, b) => a.onA - b.onA).map(({ point }) => point);
  let best: Vec | undefined;
  let wide = TAPE.leastWidth - 2 * TAPE.fromEdge;
  for (let k = 0; k + 1 < sorted.length; k++) {
    const middle = scale(add(sorted[k]!, sorted[k + 1]!), 0.5);
    const apart = distance(sorted[k]!, sorted[k + 1]!);
    if (apart >= wide && locate(held, middle) === 'inside') [best, wide] = [middle, apart];
  }
  return best;
}

/** Does a strip that is as wide as tape asks for lie within `held`? */
function isFree(at: Vec, along: Vec, edges: readonly Edge[], held: readonly Region[]): boolean {
  const half = scale(along, TAPE.length / 2);
  const side = scale(leftOf(along), (TAPE.leastWidth - 2 * TAPE.fromEdge) / 2);
  const corners = [
    subtract(subtract(at, half), side),
    subtract(add(at, half), side),
    add(add(at, half), side),
    add(subtract(at, half), side),
  ];
  const strip = polygonOutline(corners, TAG);
  return (
    corners.every((corner) => locate(held, corner) === 'inside') &&
    strip.edges.every((edge) => edges.every((other) => intersectEdges(edge, other).kind === 'none')) &&
    edges.every((edge) => locate([{ outer: strip, holes: [] }], edge.from) === 'outside')
  );
}
