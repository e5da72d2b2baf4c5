import { describe, expect, test } from 'vitest';
import { describeForm } from '../../src/sketch/index.ts';
import { defaultOf, FORMS, heightsOf, partOf, standing } from '../forms/forms.ts';

/*
 * Dining tables stand 28 to 30 in high, 71 to 76 cm ("What Is the Normal Height of a Dining Room Table", engineerfix.com,
 * read). Fixed desks stand 740 ± 20 mm (EN 527-1 as quoted in secondary sources and from memory; the standard was not read).
 */
const DINING = { least: 710, most: 760 };
const DESK = { least: 720, most: 760 };
/* Other heights that makers ask for, same page and its companions: coffee table 16 to 18 in, bar 40 to 43 in (read). */
const COFFEE = 16 * 25.4;
const BAR = 43 * 25.4;

describe.each(FORMS.map((form) => [form.name, form] as const))('%s', (name, form) => {
  test('is by default for a table and a desk of usual height', () => {
    const height = defaultOf(name, 'overall_height');
    for (const { least, most } of [DINING, DESK]) {
      expect(height).toBeGreaterThanOrEqual(least);
      expect(height).toBeLessThanOrEqual(most);
    }
  });

  test('can be asked for from coffee table to bar', () => {
    const found = describeForm(form).parameters.find((parameter) => parameter.name === 'overall_height');
    if (found?.kind !== 'length') throw new Error('an overall height is a length');
    expect(found.least).toBeLessThanOrEqual(COFFEE);
    expect(found.most).toBeGreaterThanOrEqual(BAR);
  });
});

// Common practice: splay 2 to 5 degrees looks refined, 8 to 12 degrees wide; past 15 degrees grain runs short and toes catch.
test.each(FORMS.map(({ name }) => name))('%s leans by default as legs usually do', (name) => {
  const degrees = (defaultOf(name, 'splay') * 180) / Math.PI;
  expect(degrees).toBeGreaterThanOrEqual(2);
  expect(degrees).toBeLessThanOrEqual(12);
});

// Common practice: a leg is a sixteenth to a twelfth of its height, or 2 to 2 3/4 in at the joint of a dining table; its foot may be half of that.
test('a splayed leg is by default as wide at the joint as a dining leg, and not less than half of it at the foot', () => {
  const { lowest, highest } = heightsOf(standing(partOf('splayed-leg')));
  const width = defaultOf('splayed-leg', 'head_width');
  expect(width).toBeGreaterThanOrEqual((highest - lowest) / 16);
  expect(width).toBeLessThanOrEqual(2.75 * 25.4);
  expect(defaultOf('splayed-leg', 'foot_width')).toBeGreaterThanOrEqual(width / 2);
});
