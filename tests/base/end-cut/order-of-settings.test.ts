import { describe, expect, it } from 'vitest';
import { orderOfSettings } from '../../../src/base/end-cut/index.ts';
import { DEGREE } from './parts.ts';

const cut = (id: string, swing: number, tilt: number) => ({
  id,
  setting: { swing: swing * DEGREE, tilt: tilt * DEGREE },
});

describe('the order of settings', () => {
  it('gathers cuts within 0.05° at the figure most of them want', () => {
    const { groups } = orderOfSettings([
      cut('a', 10.04, 0),
      cut('b', 10, 0),
      cut('c', 10, 0.03),
      cut('d', 10.06, 0),
    ]);
    expect(groups.map(({ ids }) => ids)).toEqual([['a', 'b', 'c'], ['d']]);
    expect(groups[0]?.setting).toEqual({ swing: 10 * DEGREE, tilt: 0 });
  });

  it('keeps one figure while the other changes', () => {
    const order = orderOfSettings([cut('a', 10, 5), cut('b', 20, 0), cut('c', 20, 5), cut('d', 10, 0)]);
    expect(order.swingChanges + order.tiltChanges).toBe(4);
    expect(order.exact).toBe(true);
  });

  it('begins from the setting that stands', () => {
    const cuts = [cut('a', 0, 0), cut('b', 12, 0)];
    expect(orderOfSettings(cuts).groups[0]?.ids).toEqual(['a']);
    const from12 = orderOfSettings(cuts, { swing: 12 * DEGREE, tilt: 0 });
    expect(from12.groups[0]?.ids).toEqual(['b']);
    expect(from12.swingChanges).toBe(1);
  });

  it('of nothing is nothing', () => {
    expect(orderOfSettings([])).toEqual({ groups: [], swingChanges: 0, tiltChanges: 0, exact: true });
  });

  it('of a full grid of figures changes one of them at a time', () => {
    const grid = [0, 5, 10, 15].flatMap((s) => [0, 5, 10, 15].map((t) => cut(`${s}/${t}`, s, t)));
    const order = orderOfSettings(grid);
    expect(order.exact).toBe(false);
    expect(order.swingChanges + order.tiltChanges).toBeLessThanOrEqual(17);
  });
});
