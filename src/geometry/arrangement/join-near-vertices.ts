import { filled, reals, unfilled } from '../memory/lists.ts';
import { orderByKey } from '../memory/order-by-key.ts';
import type { Cuts } from './cuts.ts';
import type { Pieces } from './pieces.ts';
import { joinVertices } from './vertex-union.ts';

/** Vertices are compared along this direction, which no outline runs along: few then lie level that do not lie together. */
const ACROSS_X = Math.cos(0.4901);
const ACROSS_Y = Math.sin(0.4901);
/** Up to this many are put in order one by one. */
const FEW = 40;

/**
 * Joins vertices nearer to each other than the snap, wherever pieces are cut: three pieces through one place give three
 * crossings that rounding sets apart. `offsets` tells which pieces are cut.
 */
export function joinNearVertices(pieces: Pieces, cuts: Cuts, offsets: Int32Array): void {
  if (cuts.count === 0) return;
  const near = suspects(pieces, verticesOfCutPieces(pieces, cuts, offsets), cuts.snap);
  const { vertices } = pieces;
  sortAcross(near, vertices);
  for (let k = 0; k < near.length; k++) {
    const v = near[k]!;
    const x = vertices[2 * v]!;
    const y = vertices[2 * v + 1]!;
    const across = acrossOf(vertices, v);
    for (let m = k + 1; m < near.length; m++) {
      const w = near[m]!;
      if (acrossOf(vertices, w) - across > 1.01 * cuts.snap) break;
      const dx = vertices[2 * w]! - x;
      const dy = vertices[2 * w + 1]! - y;
      const square = dx * dx + dy * dy;
      if (square <= cuts.snap * cuts.snap) joinVertices(cuts.union, v, w, square);
    }
  }
}

/** Vertices at which pieces are cut and ends of the pieces cut, each once. */
function verticesOfCutPieces(pieces: Pieces, cuts: Cuts, offsets: Int32Array): Int32Array {
  const { ends } = pieces;
  const known = filled(pieces.vertexCount);
  const found = unfilled(pieces.vertexCount);
  let count = 0;
  const add = (v: number): void => {
    if (known[v] === 1) return;
    known[v] = 1;
    found[count++] = v;
  };
  for (let k = 0; k < cuts.count; k++) add(cuts.vertex[k]!);
  for (let i = 0; i < pieces.count; i++) {
    if (offsets[i] === offsets[i + 1]) continue;
    add(ends[2 * i]!);
    add(ends[2 * i + 1]!);
  }
  return found.subarray(0, count);
}

/** So many levels are told apart before places are compared. */
const LEVELS = 2 ** 30 - 2;

/** Of many vertices those that may lie level with another: most are told at once not to, by their levels in whole numbers. */
function suspects({ vertices }: Pieces, all: Int32Array, snap: number): number[] {
  if (all.length <= FEW) return [...all];
  const across = reals(all.length);
  let least = Infinity;
  let most = -Infinity;
  for (let k = 0; k < all.length; k++) {
    const place = acrossOf(vertices, all[k]!);
    across[k] = place;
    if (place < least) least = place;
    if (place > most) most = place;
  }
  const levels = unfilled(all.length);
  const perLevel = Math.min(LEVELS / (most - least || 1), 1 / (4 * snap));
  for (let k = 0; k < all.length; k++) levels[k] = (across[k]! - least) * perLevel;
  const order = orderByKey(levels);
  const found: number[] = [];
  for (let k = 0; k < order.length; k++) {
    const level = levels[order[k]!]!;
    const before = k > 0 && level - levels[order[k - 1]!]! <= 1;
    if (before || (k + 1 < order.length && levels[order[k + 1]!]! - level <= 1)) found.push(all[order[k]!]!);
  }
  return found;
}

function acrossOf(vertices: Float64Array, v: number): number {
  return ACROSS_X * vertices[2 * v]! + ACROSS_Y * vertices[2 * v + 1]!;
}

function sortAcross(items: number[], vertices: Float64Array): void {
  if (items.length > FEW) {
    items.sort((v, w) => acrossOf(vertices, v) - acrossOf(vertices, w));
    return;
  }
  for (let k = 1; k < items.length; k++) {
    const v = items[k]!;
    const across = acrossOf(vertices, v);
    let m = k - 1;
    for (; m >= 0 && acrossOf(vertices, items[m]!) > across; m--) items[m + 1] = items[m]!;
    items[m + 1] = v;
  }
}
