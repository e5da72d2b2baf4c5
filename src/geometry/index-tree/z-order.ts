import { reals, unfilled } from '../memory/lists.ts';

/** Numbers of the boxes in the order in which a Z-order curve passes their middles. */
export function zOrder(items: ArrayLike<number>, count: number): Int32Array {
  let minX = Infinity;
  let minY = Infinity;
  let maxX = -Infinity;
  let maxY = -Infinity;
  for (let i = 0; i < 4 * count; i += 4) {
    minX = Math.min(minX, items[i]!);
    minY = Math.min(minY, items[i + 1]!);
    maxX = Math.max(maxX, items[i + 2]!);
    maxY = Math.max(maxY, items[i + 3]!);
  }
  const kx = 32767 / (2 * (maxX - minX) || 1);
  const ky = 32767 / (2 * (maxY - minY) || 1);
  // The curve's place in the high part and the box's number in the low part of one double sort as numbers do.
  const keys = reals(count);
  for (let i = 0; i < count; i++) {
    const x = spread(kx * (items[4 * i]! + items[4 * i + 2]! - 2 * minX));
    const y = spread(ky * (items[4 * i + 1]! + items[4 * i + 3]! - 2 * minY));
    keys[i] = (x + 2 * y) * 4194304 + i;
  }
  keys.sort();
  const order = unfilled(count);
  for (let i = 0; i < count; i++) order[i] = keys[i]! % 4194304;
  return order;
}

/** The 15 bits of a whole number with a zero between each two. */
function spread(value: number): number {
  let v = value | 0;
  v = (v | (v << 8)) & 0x00ff00ff;
  v = (v | (v << 4)) & 0x0f0f0f0f;
  v = (v | (v << 2)) & 0x33333333;
  return (v | (v << 1)) & 0x55555555;
}
