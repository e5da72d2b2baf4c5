import type { Picture } from './api.ts';

/** A picture at half its size, each pixel the mean of the four (at odd edges two or one) that it stands for. */
export function halvedPicture({ width, height, data }: Picture): Picture {
  const wide = Math.max(1, Math.ceil(width / 2));
  const tall = Math.max(1, Math.ceil(height / 2));
  const half = new Uint8ClampedArray(4 * wide * tall);
  for (let y = 0; y < tall; y++) {
    const upper = 2 * y * width;
    const lower = Math.min(2 * y + 1, height - 1) * width;
    for (let x = 0; x < wide; x++) {
      const left = 2 * x;
      const right = Math.min(2 * x + 1, width - 1);
      const a = 4 * (upper + left);
      const b = 4 * (upper + right);
      const c = 4 * (lower + left);
      const d = 4 * (lower + right);
      const to = 4 * (y * wide + x);
      for (let k = 0; k < 4; k++)
        half[to + k] = (data[a + k]! + data[b + k]! + data[c + k]! + data[d + k]! + 2) >> 2;
    }
  }
  return { width: wide, height: tall, data: half };
}

/** The picture and its halves, down to one pixel or `most` of them. */
export function picturePyramid(picture: Picture, most = Infinity): readonly Picture[] {
  const levels = [picture];
  for (let last = picture; levels.length < most && Math.max(last.width, last.height) > 1; ) {
    last = halvedPicture(last);
    levels.push(last);
  }
  return levels;
}
