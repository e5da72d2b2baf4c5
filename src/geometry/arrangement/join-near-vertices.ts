import type { Cuts } from './cuts.ts';
import type { Pieces } from './pieces.ts';
import { joinVertices } from './vertex-union.ts';

/**
 * Joins vertices nearer to each other than the snap, wherever pieces are cut: three pieces through one place give three
 * crossings that rounding sets apart. `offsets` tells which pieces are cut.
 */
export function joinNearVertices(pieces: Pieces, cuts: Cuts, offsets: readonly number[]): void {
  if (cuts.count === 0) return;
  const { ends, vertices } = pieces;
  const near = cuts.vertex.slice();
  for (let i = 0; i < pieces.count; i++) {
    if (offsets[i] === offsets[i + 1]) continue;
    near.push(ends[2 * i]!, ends[2 * i + 1]!);
  }
  const order = sortByX(near, vertices);
  const count = order.length;
  for (let k = 0; k < count; k++) {
    const v = order[k]!;
    const x = vertices[2 * v]!;
    const y = vertices[2 * v + 1]!;
    for (let m = k + 1; m < count; m++) {
      const w = order[m]!;
      const dx = vertices[2 * w]! - x;
      if (dx > cuts.snap) break;
      const dy = vertices[2 * w + 1]! - y;
      if (w !== v && dx * dx + dy * dy <= cuts.snap * cuts.snap) joinVertices(cuts.union, v, w);
    }
  }
}

function sortByX(items: number[], vertices: Float64Array): number[] {
  if (items.length > 40) return items.sort((v, w) => vertices[2 * v]! - vertices[2 * w]!);
  for (let k = 1; k < items.length; k++) {
    const v = items[k]!;
    const x = vertices[2 * v]!;
    let m = k - 1;
    for (; m >= 0 && vertices[2 * items[m]!]! > x; m--) items[m + 1] = items[m]!;
    items[m + 1] = v;
  }
  return items;
}
