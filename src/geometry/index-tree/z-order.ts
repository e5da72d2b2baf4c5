import { unfilled } from '../memory/lists.ts';
import { orderByKey } from '../memory/order-by-key.ts';

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
  const keys = unfilled(count);
  for (let i = 0; i < count; i++) {
    const x = spread(kx * (items[4 * i]! + items[4 * i + 2]! - 2 * minX));
    const y = spread(ky * (items[4 * i + 1]! + items[4 * i + 3]! - 2 * minY));
    keys[i] = x + 2 * y;
  }
  return orderByKey(keys);
}

/** The 15 bits of a whole number with a zero between each two. */
function spread(value: number): number {
  let v = value | 0;
  v = (v | (v << 8)) & 0x00ff00ff;
  v = (v | (v << 4)) & 0x0f0f0f0f;
  v = (v | (v << 2)) & 0x33333333;
  return (v | (v << 1)) & 0x55555555;
}
