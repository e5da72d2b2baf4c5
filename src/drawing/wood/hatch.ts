import { type Vec, vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { pathMark } from '../layout/drawing.ts';
import { strokes } from '../layout/strokes.ts';

/** mm between the lines, along the band. */
const PITCH = 2.2;

/** Lines at 45° over a level band, leaning to the right (1) or to the left (−1). */
export function hatchBand(
  {
    x,
    width,
    top,
    bottom,
  }: { readonly x: number; readonly width: number; readonly top: number; readonly bottom: number },
  lean: 1 | -1,
): readonly Mark[] {
  const rise = top - bottom;
  const marks: Mark[] = [];
  for (let at = -rise; at < width; at += PITCH) {
    // From the lower edge to the upper one at 45°, cut off at the ends.
    const start = Math.max(0, at);
    const end = Math.min(width, at + rise);
    if (end - start < 1e-6) continue;
    const [low, high] = [bottom + (start - at), bottom + (end - at)];
    const ends: readonly [Vec, Vec] =
      lean === 1
        ? [vec(x + start, low), vec(x + end, high)]
        : [vec(x + width - start, low), vec(x + width - end, high)];
    marks.push(pathMark('hatch', strokes(ends)));
  }
  return marks;
}
