import type { Cuts } from './cuts.ts';
import type { Pieces } from './pieces.ts';
import { joinVertices } from './vertex-union.ts';

/**
 * Joins vertices nearer to each other than the snap, wherever pieces are cut: three pieces through one place give three
 * crossings that rounding sets apart. `offsets` tells which pieces are cut.
 */
export function joinNearVertices(pieces: Pieces, cuts: Cuts, offsets: Int32Array): void {
  if (cuts.count === 0) return;
  const { ends, vertices } = pieces;
  const near = new Int32Array(cuts.count + 2 * pieces.count);
  near.set(cuts.vertex.subarray(0, cuts.count));
  let count = cuts.count;
  for (let i = 0; i < pieces.count; i++) {
    if (offsets[i] === offsets[i + 1]) continue;
    near[count++] = ends[2 * i]!;
    near[count++] = ends[2 * i + 1]!;
  }
  const order = sortByX(near.subarray(0, count), vertices);
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

function sortByX(items: Int32Array, vertices: Float64Array): Int32Array {
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
