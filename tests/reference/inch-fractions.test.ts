import { describe, expect, it } from 'vitest';
import { formatLength, parseLength } from '../../src/measure/index.ts';

/**
 * Decimal equivalents of inch fractions in millimetres to four decimals, as printed on shop charts (read on a published chart
 * of 64ths; charts round a final 5 either way). They rest on 1 in = 25.4 mm exactly: NIST Handbook 44, Appendix C.
 */
const CHART: readonly (readonly [string, number])[] = [
  ['1/64', 0.3969],
  ['1/32', 0.7938],
  ['3/64', 1.1906],
  ['1/16', 1.5875],
  ['5/64', 1.9844],
  ['3/32', 2.3812],
  ['7/64', 2.7781],
  ['1/8', 3.175],
  ['9/64', 3.5719],
  ['5/32', 3.9688],
  ['11/64', 4.3656],
  ['3/16', 4.7625],
  ['13/64', 5.1594],
  ['7/32', 5.5562],
  ['15/64', 5.9531],
  ['1/4', 6.35],
  ['17/64', 6.7469],
  ['9/32', 7.1437],
  ['19/64', 7.5406],
  ['5/16', 7.9375],
  ['21/64', 8.3344],
  ['11/32', 8.7312],
  ['23/64', 9.1281],
  ['3/8', 9.525],
  ['25/64', 9.9219],
  ['13/32', 10.3187],
  ['27/64', 10.7156],
  ['7/16', 11.1125],
  ['29/64', 11.5094],
  ['15/32', 11.9063],
  ['31/64', 12.3031],
  ['1/2', 12.7],
  ['33/64', 13.0969],
  ['17/32', 13.4937],
  ['35/64', 13.8906],
  ['9/16', 14.2875],
  ['37/64', 14.6844],
  ['19/32', 15.0812],
  ['39/64', 15.4781],
  ['5/8', 15.875],
  ['41/64', 16.2719],
  ['21/32', 16.6687],
  ['43/64', 17.0656],
  ['11/16', 17.4625],
  ['45/64', 17.8594],
  ['23/32', 18.2562],
  ['47/64', 18.6531],
  ['3/4', 19.05],
  ['49/64', 19.4469],
  ['25/32', 19.8438],
  ['51/64', 20.2406],
  ['13/16', 20.6375],
  ['53/64', 21.0344],
];

const HALF_A_DIGIT = 0.5e-4 + 1e-9;

describe('inch fractions against a published chart', () => {
  it.each(CHART)('%s in is %f mm', (fraction, mm) => {
    const parsed = parseLength(`${fraction} in`, { unit: 'mm' });
    expect(Math.abs((parsed.ok ? parsed.value : Number.NaN) - mm)).toBeLessThanOrEqual(HALF_A_DIGIT);
    expect(formatLength(mm, { unit: 'in', denominator: 64 })).toBe(`${fraction} in`);
  });

  it('starts at 1/64 in = 0.396875 mm, and the foot is 304.8 mm, exactly', () => {
    expect(parseLength('1/64 in', { unit: 'mm' })).toEqual({ ok: true, value: 0.396875 });
    // NIST Handbook 44, Appendix C: 1 foot = 0.304 8 meter exactly.
    expect(parseLength('1 ft', { unit: 'mm' })).toEqual({ ok: true, value: 304.8 });
  });
});
