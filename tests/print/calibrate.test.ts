import { describe, expect, test } from 'vitest';
import { calibrate } from '../../src/print/calibrate.ts';

describe('a bar that reads short is printed longer next time', () => {
  test('nominal over measured', () => {
    const corrected = calibrate(250, 249, 1, 'long');
    expect(corrected).toMatchObject({ ok: true, value: { findings: [] } });
    if (corrected.ok) expect(corrected.value.factor).toBeCloseTo(250 / 249, 12);
  });

  test('on top of the factor it was printed with', () => {
    const corrected = calibrate(100, 100.1, 1.003, 'short');
    if (corrected.ok) expect(corrected.value.factor).toBeCloseTo(1.003 / 1.001, 12);
    expect(corrected.ok).toBe(true);
  });

  test('measured right, nothing changes', () => {
    expect(calibrate(170, 170, 0.9987, 'short')).toEqual({
      ok: true,
      value: { factor: 0.9987, findings: [] },
    });
  });
});

describe('limits', () => {
  test('half a percent passes without a word, a little more with a caution', () => {
    expect(calibrate(100.5, 100, 1, 'long')).toMatchObject({ ok: true, value: { findings: [] } });
    expect(calibrate(100.6, 100, 1, 'long')).toMatchObject({
      ok: true,
      value: { findings: [{ code: 'calibrate.large', severity: 'caution' }] },
    });
  });

  test('1.5 % is the most', () => {
    expect(calibrate(101.5, 100, 1, 'long').ok).toBe(true);
    expect(calibrate(101.6, 100, 1, 'long').ok).toBe(false);
    expect(calibrate(98.4, 100, 1, 'long').ok).toBe(false);
  });

  test('corrections that add up beyond the limit are refused', () => {
    const corrected = calibrate(101, 100, 1.01, 'long');
    expect(corrected).toMatchObject({ ok: false, problems: [{ code: 'calibrate.refused' }] });
    if (!corrected.ok) expect(corrected.problems[0]!.message).toContain('2.01 %');
  });

  test('no length is refused', () => {
    for (const measured of [0, -3, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(calibrate(100, measured, 1, 'long').ok).toBe(false);
    }
  });
});

/** Ratios of the sizes themselves (ISO 216 A4, US Letter): 11 in / 297 mm and 210 mm / 8.5 in. */
describe('a page fitted to the wrong paper is told apart from a printer that is out', () => {
  test('A4 fitted on Letter comes out 5.9 % short', () => {
    const share = (11 * 25.4) / 297;
    expect(1 - share).toBeCloseTo(0.059, 3);
    const corrected = calibrate(250, 250 * share, 1, 'long');
    if (corrected.ok) throw new Error('accepted');
    expect(corrected.problems[0]!.message).toContain('5.93 % too short');
    expect(corrected.problems[0]!.message).toContain('a page made for A4 printed on Letter');
  });

  test('Letter fitted on A4 comes out 2.7 % short', () => {
    const share = 210 / (8.5 * 25.4);
    expect(1 - share).toBeCloseTo(0.027, 3);
    const corrected = calibrate(100, 100 * share, 1, 'short');
    if (corrected.ok) throw new Error('accepted');
    expect(corrected.problems[0]!.message).toContain('a page made for Letter printed on A4');
  });
});
