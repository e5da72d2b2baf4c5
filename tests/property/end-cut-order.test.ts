import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CutToSet, orderOfSettings } from '../../src/base/end-cut/index.ts';
import { DEGREE } from './end-cut-bench.ts';

const few = fc.constantFrom(-20, -10, 0, 10, 20);
const cuts = (most: number): fc.Arbitrary<readonly CutToSet[]> =>
  fc.array(fc.tuple(few, few), { minLength: 1, maxLength: most }).map((all) =>
    all.map(([swing, tilt], i) => ({
      id: `${i}`,
      setting: { swing: swing * DEGREE, tilt: tilt * DEGREE },
    })),
  );

function changes(order: readonly CutToSet['setting'][]): number {
  return order.reduce((sum, { swing, tilt }, i) => {
    const before = i === 0 ? { swing: 0, tilt: 0 } : order[i - 1]!;
    return sum + Number(swing !== before.swing) + Number(tilt !== before.tilt);
  }, 0);
}

function* orders<T>(all: readonly T[]): Generator<readonly T[]> {
  if (all.length === 0) yield [];
  for (const [i, first] of all.entries()) {
    for (const rest of orders([...all.slice(0, i), ...all.slice(i + 1)])) yield [first, ...rest];
  }
}

describe('the order of settings', () => {
  it('needs as few changes as the best of all orders', () => {
    fc.assert(
      fc.property(cuts(6), (all) => {
        const order = orderOfSettings(all);
        const found = order.swingChanges + order.tiltChanges;
        expect(changes(order.groups.map(({ setting }) => setting))).toBe(found);
        let least = Number.POSITIVE_INFINITY;
        for (const each of orders(order.groups.map(({ setting }) => setting)))
          least = Math.min(least, changes(each));
        expect(found).toBe(least);
        expect(order.exact).toBe(true);
      }),
      { numRuns: 60 },
    );
  });

  it('loses no cut, repeats no setting, and never beats one change a new figure', () => {
    fc.assert(
      fc.property(cuts(40), (all) => {
        const { groups, swingChanges, tiltChanges } = orderOfSettings(all);
        expect(groups.flatMap(({ ids }) => ids).sort()).toEqual(all.map(({ id }) => id).sort());
        const keys = groups.map(({ setting }) => `${setting.swing} ${setting.tilt}`);
        expect(new Set(keys).size).toBe(keys.length);
        const swings = new Set(all.map(({ setting }) => setting.swing)).add(0).size - 1;
        const tilts = new Set(all.map(({ setting }) => setting.tilt)).add(0).size - 1;
        expect(swingChanges).toBeGreaterThanOrEqual(swings);
        expect(tiltChanges).toBeGreaterThanOrEqual(tilts);
        // Every group but a first square one costs a change at least; in a grid of figures little more is needed.
        const least = Math.max(groups.length - 1, swings + tilts);
        expect(swingChanges + tiltChanges).toBeLessThanOrEqual(Math.ceil(1.5 * least) + 2);
      }),
      { numRuns: 60 },
    );
  });
});
