import { expect, test } from 'vitest';
import { topFixings } from '../../../src/base/index.ts';
import { cornersInWorld } from '../../../src/base/whole/corners-in-world.ts';
import { boundsOfRegions, locate } from '../../../src/geometry/index.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import { BASE_FORMS } from '../../forms/forms.ts';
import { standingOf } from '../../forms/standing-bases.ts';

test.each(BASE_FORMS.map(({ name }) => name))(
  '%s: fixings lie on the upper faces of their parts, where those stand under the top',
  (form) => {
    const base = standingOf(form);
    const { points } = topFixings(base, woodCalled('white oak')!);
    expect(points.length).toBeGreaterThan(3);
    for (const { part: id, at, footprint } of points) {
      expect(locate(footprint, at), `${form}, ${id}`).toBe('inside');
      // The face seen from above reaches as far as the part's own corners do at the height of the top, each way.
      const part = base.parts.find((each) => each.id === id)!;
      const high = cornersInWorld(part).filter(({ z }) => Math.abs(z - base.top.level) < 0.05);
      const { minX, maxX, minY, maxY } = boundsOfRegions(footprint);
      for (const { x, y } of high) {
        expect(x, `${form}, ${id}`).toBeGreaterThan(minX - 0.01);
        expect(x, `${form}, ${id}`).toBeLessThan(maxX + 0.01);
        expect(y, `${form}, ${id}`).toBeGreaterThan(minY - 0.01);
        expect(y, `${form}, ${id}`).toBeLessThan(maxY + 0.01);
      }
      expect(high.length, `${form}, ${id}`).toBeGreaterThan(1);
    }
  },
);
