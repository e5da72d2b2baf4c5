import { type Region, transformRegion } from '../../src/geometry/index.ts';
import type { Random } from '../cases/outlines/random.ts';
import { fuzzCase } from './fuzz.ts';
import { boxOf } from './oracle.ts';

/** The same regions moved so that edges coincide, touch, or cross; or another outline of the same size. */
export function partnerOf(a: readonly Region[], seed: number, r: Random): Region[] {
  const { minX, minY, maxX, maxY } = boxOf(a);
  const w = maxX - minX;
  const h = maxY - minY;
  const move = (turn: number, x: number, y: number, mirrored = false): Region[] =>
    a.map((region) => transformRegion(region, { turn, shift: { x, y }, scale: 1, mirrored }));
  switch (r.whole(0, 8)) {
    case 0:
      return [...a];
    case 1:
      return move(0, w, 0);
    case 2:
      return move(0, 0, r.pick([h, h / 2, 1]));
    case 3:
      return move(0, r.between(-w, w), r.pick([0, 0, r.between(-h, h)]));
    case 4:
      return move(r.between(0, 6.3), r.between(-w, w) / 2, r.between(-h, h) / 2);
    case 5:
      return move(0, minX + maxX, 0, true);
    case 6:
      return move(r.ratio(1e-11, 1e-3), r.ratio(1e-11, 1e-3), 0);
    case 7:
      return move(r.pick([1, 2, 3]) * (Math.PI / 2), 0, 0);
    default: {
      for (let k = 1; k < 20; k++) {
        const other = fuzzCase(seed + 1000003 * k);
        if (other === undefined) continue;
        const box = boxOf(other.regions);
        const shift = {
          x: minX - box.minX + r.between(-0.3, 0.3) * w,
          y: minY - box.minY + r.between(-0.3, 0.3) * h,
        };
        return other.regions.map((region) =>
          transformRegion(region, { turn: 0, shift, scale: 1, mirrored: false }),
        );
      }
      return [...a];
    }
  }
}
