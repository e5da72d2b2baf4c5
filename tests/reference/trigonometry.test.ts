import { describe, expect, it } from 'vitest';
import { lengthOf } from '../sketch/form-text.ts';

const number = (expression: string): number => lengthOf(`(${expression}) * 1 mm`);

/** Tangent, sine and cosine as printed in a school table (a published course's table of ratios), to the digits it gives. */
const TABLE: readonly (readonly [number, string, string, string])[] = [
  [5, '0.09', '0.09', '0.996'],
  [10, '0.18', '0.17', '0.98'],
  [15, '0.27', '0.26', '0.97'],
  [20, '0.36', '0.34', '0.94'],
  [25, '0.47', '0.42', '0.91'],
  [30, '0.58', '0.5', '0.87'],
  [35, '0.70', '0.57', '0.82'],
  [40, '0.84', '0.64', '0.77'],
  [50, '1.19', '0.77', '0.64'],
  [55, '1.43', '0.82', '0.57'],
  [60, '1.73', '0.87', '0.5'],
  [65, '2.14', '0.91', '0.42'],
  [70, '2.75', '0.94', '0.34'],
  [75, '3.73', '0.97', '0.26'],
  [80, '5.67', '0.98', '0.17'],
  [85, '11.43', '0.996', '0.09'],
];

describe('trigonometry in forms', () => {
  it.each(TABLE)('agrees with a published table at %i°', (degrees, tangent, sine, cosine) => {
    for (const [name, printed] of [
      ['tan', tangent],
      ['sin', sine],
      ['cos', cosine],
    ] as const) {
      const digits = printed.split('.')[1]!.length;
      const off = Math.abs(number(`${name}(${degrees} deg)`) - Number(printed));
      expect(off, `${name} ${degrees}°`).toBeLessThanOrEqual(0.5 * 10 ** -digits + 1e-12);
    }
  });

  it('agrees with the closed forms of geometry', () => {
    // Exact values by constructible angles (Ptolemy's chords of 36° and 60° and their differences).
    expect(number('sin(15 deg)')).toBeCloseTo((Math.sqrt(6) - Math.sqrt(2)) / 4, 15);
    expect(number('sin(18 deg)')).toBeCloseTo((Math.sqrt(5) - 1) / 4, 15);
    expect(number('cos(36 deg)')).toBeCloseTo((Math.sqrt(5) + 1) / 4, 15);
    expect(number('tan(15 deg)')).toBeCloseTo(2 - Math.sqrt(3), 15);
    expect(number('tan(22.5 deg)')).toBeCloseTo(Math.SQRT2 - 1, 15);
    expect(number('atan(2 - 3 / 3) / 1 deg')).toBeCloseTo(45, 13);
  });

  it('moves the foot of a 700 mm leg by 6.1 mm for half a degree on the saw', () => {
    // Common practice: half a degree on a saw setting moves the foot of a 700 mm leg by 6.1 mm.
    expect(lengthOf('700 mm * tan(0.5 deg)')).toBeCloseTo(6.1, 1);
  });
});
