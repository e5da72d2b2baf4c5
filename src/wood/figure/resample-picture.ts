import { type Projection, project, stretchAt } from '../../geometry/index.ts';
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
  const sample = [0, 0, 0, 0];
  const coarser = [0, 0, 0, 0];
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) {
      const middle = { x: x + 0.5, y: y + 0.5 };
      const from = project(middle, toSource);
      if (from === undefined || !isOn(from.x, from.y, levels[0]!)) continue;
      const level = Math.min(levels.length - 1, Math.max(0, Math.log2(stretchAt(middle, toSource)!.most)));
      const fine = Math.floor(level);
      const share = level - fine;
      takeSample(levels, fine, from.x, from.y, sample);
      if (share > 0) takeSample(levels, fine + 1, from.x, from.y, coarser);
      const to = 4 * (y * width + x);
      for (let k = 0; k < 4; k++) {
        data[to + k] = share > 0 ? sample[k]! + share * (coarser[k]! - sample[k]!) : sample[k]!;
      }
    }
  }
  return { width, height, data };
}

function isOn(x: number, y: number, { width, height }: Picture): boolean {
  return x >= 0 && y >= 0 && x <= width && y <= height;
}

/** The four nearest pixels of one level, weighed by distance; at the edge its own pixel goes on. */
function takeSample(levels: readonly Picture[], level: number, x: number, y: number, to: number[]): void {
  const { width, height, data } = levels[level]!;
  const u = x / 2 ** level - 0.5;
  const v = y / 2 ** level - 0.5;
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
