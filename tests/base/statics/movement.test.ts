import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  combineErrors,
  errorsOfJoint,
  fixingSlot,
  movementByCoefficient,
  movementByShrinkage,
  rockFromLegLengths,
  seasonalMovement,
} from '../../../src/base/statics/index.ts';
import { equilibriumMoisture, LINEAR_MOISTURE, WOODS, woodCalled } from '../../../src/materials/index.ts';

const HEATED = { celsius: 21, humidity: 0.32 };
const SUMMER = { celsius: 24, humidity: 0.65 };
const WINTER_HALL = { celsius: 20, humidity: 0.15 };

describe('movement of a wide part', () => {
  const oak = woodCalled('white oak')!;
  const top = { width: 900, wood: oak, sawn: 'flat', made: 8, dry: HEATED, damp: SUMMER } as const;

  test('is from the moisture it was made at to the driest and the dampest of the year', () => {
    const found = seasonalMovement(top);
    expect(found.method).toBe('coefficient');
    expect(found.driest).toBe(equilibriumMoisture(21, 0.32));
    expect(found.shrinks).toBeCloseTo(900 * 0.00365 * (8 - found.driest), 9);
    expect(found.swells).toBeCloseTo(900 * 0.00365 * (found.dampest - 8), 9);
    expect(found.range).toBeCloseTo(found.shrinks + found.swells, 9);
  });

  test('quarter-sawn moves less; what is made drier than all the year only swells', () => {
    expect(seasonalMovement({ ...top, sawn: 'quarter' }).range).toBeLessThan(seasonalMovement(top).range);
    expect(seasonalMovement({ ...top, made: 6 }).shrinks).toBe(0);
  });

  test('goes by the shrinkage where the coefficient does not hold', () => {
    const found = seasonalMovement({ ...top, dry: WINTER_HALL });
    expect(found.driest).toBeLessThan(LINEAR_MOISTURE.least);
    expect(found.method).toBe('shrinkage');
    expect(found.shrinks).toBeCloseTo(-movementByShrinkage(900, 0.105, 8, found.driest), 9);
  });

  test('the two ways agree between 6 and 14 % for every wood whose coefficient is its own', () => {
    const averaged = [
      'white oak',
      'northern red oak',
      'mahogany',
      'teak',
      'mockernut hickory',
      'shagbark hickory',
    ];
    const own = WOODS.filter(({ name }) => !averaged.includes(name));
    fc.assert(
      fc.property(
        fc.constantFrom(...own),
        fc.double({ min: 6, max: 14, noNaN: true }),
        fc.double({ min: 6, max: 14, noNaN: true }),
        ({ change, shrinkage }, from, to) => {
          const a = movementByCoefficient(1000, change.tangential, from, to);
          const b = movementByShrinkage(1000, shrinkage.tangential, from, to);
          // The coefficient takes the size at 10 %: 4 points away it is off by 4 C, under 2 %.
          expect(Math.abs(a - b)).toBeLessThanOrEqual(0.02 * Math.abs(a) + 0.02);
        },
      ),
    );
  });

  test('there and back by the shrinkage is nothing, and wet wood does not move', () => {
    const grown = movementByShrinkage(500, 0.09, 7, 18);
    expect(movementByShrinkage(500 + grown, 0.09, 18, 7)).toBeCloseTo(-grown, 9);
    expect(movementByShrinkage(500, 0.09, 32, 60)).toBe(0);
  });

  test('a slot has room for both, in proportion to its distance from the line held still', () => {
    const slot = fixingSlot(300, 900, { shrinks: 6, swells: 9 }, 5.5);
    expect(slot).toEqual({ length: 5.5 + 2.5 + 3.5, width: 5.5, inwards: 2.5, outwards: 3.5 });
    expect(fixingSlot(-300, 900, { shrinks: 6, swells: 9 }, 5.5)).toEqual(slot);
  });
});

describe('errors', () => {
  test('likely is never more than worst, and equal for one error alone', () => {
    const each = fc.record({
      name: fc.constant('x'),
      each: fc.double({ min: -2, max: 2, noNaN: true }),
      count: fc.integer({ min: 1, max: 8 }),
    });
    fc.assert(
      fc.property(fc.array(each), (contributions) => {
        const { worst, likely } = combineErrors(contributions);
        expect(likely).toBeLessThanOrEqual(worst + 1e-12);
      }),
    );
    expect(combineErrors([{ name: 'seam', each: 0.5, count: 3 }])).toMatchObject({
      worst: 1.5,
      likely: Math.sqrt(0.75),
    });
  });

  test('a joint names what each error does to it', () => {
    const { gap, foot } = errorsOfJoint(60, 700);
    expect(gap.contributions.map(({ name }) => name)).toEqual(['saw', 'template']);
    expect(foot.contributions[0]!.each).toBeCloseTo(6.1, 1);
    expect(foot.worst).toBeCloseTo(6.1086 + 0.5 + 0.2, 3);
    expect(foot.likely).toBeCloseTo(Math.hypot(6.1086, 0.5, 0.2), 3);
  });

  test('three feet in one line fix no plane', () => {
    const at = (x: number, y: number) => ({ x, y });
    expect(rockFromLegLengths([at(0, 0), at(1, 0), at(2, 0), at(1, 1)], 0.5)).toBeUndefined();
  });
});
