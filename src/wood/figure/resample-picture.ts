import { norm, type Projection } from '../../geometry/index.ts';
import type { Picture } from './api.ts';

/**
 * A picture as seen through a projection: `toSource` takes the pixels of the new picture to those of the old. Where the new one is smaller,
 * each of its pixels is taken from the half, quarter … of the old in which neighbours lie no farther apart than a pixel, so that fine
 * figure is averaged and not skipped; in between four neighbours are weighed by distance (bilinear), and two levels likewise.
 * Beyond the old picture's edge and beyond the horizon it is clear. `levels`: the old picture and its halves, from picturePyramid.
 */
export function resamplePicture(
  levels: readonly Picture[],
  toSource: Projection,
  width: number,
  height: number,
): Picture {
  const data = new Uint8ClampedArray(4 * width * height);
  const [a, b, c, d, e, f, g, h, i] = toSource;
  const full = levels[0]!;
  const sample = [0, 0, 0, 0];
  const coarser = [0, 0, 0, 0];
  // Millions of pixels: the same as `project` and `stretchAt` say, without an object for each.
  for (let row = 0; row < height; row++) {
    const y = row + 0.5;
    for (let column = 0; column < width; column++) {
      const x = column + 0.5;
      const w = g * x + h * y + i;
      if (!(w > 0)) continue;
      const u = (a * x + b * y + c) / w;
      const v = (d * x + e * y + f) / w;
      if (!(u >= 0 && v >= 0 && u <= full.width && v <= full.height)) continue;
      const xx = a - g * u;
      const xy = b - h * u;
      const yx = d - g * v;
      const yy = e - h * v;
      const most = (norm(xx + yy, yx - xy) + norm(xx - yy, yx + xy)) / (2 * w);
      const level = most > 1 ? Math.min(levels.length - 1, Math.log2(most)) : 0;
      const fine = Math.floor(level);
      const share = level - fine;
      takeSample(levels[fine]!, 2 ** -fine, u, v, sample);
      if (share > 0) takeSample(levels[fine + 1]!, 2 ** (-fine - 1), u, v, coarser);
      const to = 4 * (row * width + column);
      for (let k = 0; k < 4; k++) {
        data[to + k] = share > 0 ? sample[k]! + share * (coarser[k]! - sample[k]!) : sample[k]!;
      }
    }
  }
  return { width, height, data };
}

/** The four nearest pixels of one level, weighed by distance; at the edge its own pixel goes on. */
function takeSample(
  { width, height, data }: Picture,
  size: number,
  x: number,
  y: number,
  to: number[],
): void {
  const u = x * size - 0.5;
  const v = y * size - 0.5;
  const left = Math.floor(u);
  const top = Math.floor(v);
  const x0 = Math.min(width - 1, Math.max(0, left));
  const x1 = Math.min(width - 1, Math.max(0, left + 1));
  const y0 = Math.min(height - 1, Math.max(0, top));
  const y1 = Math.min(height - 1, Math.max(0, top + 1));
  const a = 4 * (y0 * width + x0);
  const b = 4 * (y0 * width + x1);
  const c = 4 * (y1 * width + x0);
  const d = 4 * (y1 * width + x1);
  const s = u - left;
  const t = v - top;
  for (let k = 0; k < 4; k++) {
    const upper = data[a + k]! + s * (data[b + k]! - data[a + k]!);
    const lower = data[c + k]! + s * (data[d + k]! - data[c + k]!);
    to[k] = upper + t * (lower - upper);
  }
}
