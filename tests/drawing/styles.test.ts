import { expect, test } from 'vitest';
import { LINE_STYLES, type LineRole } from '../../src/drawing/index.ts';

/** ISO 128-2 widths (mm), as republished in drawing handbooks. */
const ISO_WIDTHS = [0.13, 0.18, 0.25, 0.35, 0.5, 0.7, 1, 1.4, 2];

test('every line has a width of the ISO 128-2 series, thin enough to show which side is meant', () => {
  for (const [role, style] of Object.entries(LINE_STYLES)) {
    expect(ISO_WIDTHS).toContain(style.width);
    // The frame of a sheet, 0.7 mm by ISO 5457 (from memory), bounds nothing that is measured.
    if (role === 'border') continue;
    expect(style.width).toBeGreaterThanOrEqual(0.18);
    expect(style.width).toBeLessThanOrEqual(0.35);
  }
});

test('outlines that lie side by side are told apart without their colour', () => {
  const roles: readonly LineRole[] = ['part', 'template', 'as-routed', 'saw-line', 'centre'];
  const looks = roles.map((role) => {
    const { width, dash } = LINE_STYLES[role];
    return dash.map((length) => (length / width).toFixed(1)).join(' ');
  });
  expect(new Set(looks).size).toBe(roles.length);
});

test('dashes drawn with round caps show 12 widths of dash and 3 of gap (ISO 128-2, from memory)', () => {
  const { width, dash } = LINE_STYLES['as-routed'];
  expect(dash).toHaveLength(2);
  expect(dash[0]! + width).toBeCloseTo(12 * width, 9);
  expect(dash[1]! - width).toBeCloseTo(3 * width, 9);
});

test('a dot is no longer than its line is wide', () => {
  const { dash } = LINE_STYLES.template;
  expect(dash).toHaveLength(6);
  expect(dash[2]).toBeLessThan(0.05);
  expect(dash[2]).toBeGreaterThan(0);
});
