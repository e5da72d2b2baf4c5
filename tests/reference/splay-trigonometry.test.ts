import { describe, expect, test } from 'vitest';
import { distance } from '../../src/geometry/index.ts';
import { DEGREE, edgesCalled, heightsOf, partOf, sketchOf, standing } from '../forms/forms.ts';

/*
 * Natural cosines and tangents to four places, as printed in school tables, among them "Logarithmic and Trigonometric
 * Tables", E. J. Wilczynski and H. E. Slaught (Allyn and Bacon), four-place table of natural functions. Entered from memory.
 */
const FOUR_PLACES: readonly (readonly [degrees: number, cosine: number, tangent: number])[] = [
  [1, 0.9998, 0.0175],
  [2, 0.9994, 0.0349],
  [3, 0.9986, 0.0524],
  [5, 0.9962, 0.0875],
  [6, 0.9945, 0.1051],
  [8, 0.9903, 0.1405],
  [10, 0.9848, 0.1763],
  [12, 0.9781, 0.2126],
  [15, 0.9659, 0.2679],
];
/** Half a unit of the last place printed. */
const LAST_PLACE = 0.00005;

const LEGS = [
  ['splayed-leg', 'foot_outer', 'head_outer'],
  ['knee-leg', 'foot_outer', 'knee'],
  ['curved-leg', 'foot_outer', 'head_outer'],
  ['panel-leg', 'foot_outer', 'head_outer'],
] as const;

describe.each(LEGS)('%s against a printed table', (form, foot, head) => {
  test.each(FOUR_PLACES)('at %i° from plumb', (degrees, cosine, tangent) => {
    // At 15° a panel has no room for its window.
    const values = { splay: degrees * DEGREE, ...(form === 'panel-leg' ? { window: false } : {}) };
    const { highest: height } = heightsOf(standing(partOf(form, values)));
    const { points } = sketchOf(form, values);
    const length = distance(points[foot]!, points[head]!);
    // A leg that leans one way: length × cos = height, and the foot stands height × tan outside the head.
    expect(Math.abs(height / length - cosine)).toBeLessThan(LAST_PLACE * 1.01);
    expect(Math.abs(Math.sqrt(length ** 2 - height ** 2) / height - tangent)).toBeLessThan(LAST_PLACE * 1.01);
  });
});

/*
 * Legs that lean by rake and splay are as long as height × √(1 + tan² rake + tan² splay) (elementary; the rule behind the
 * tables of rake, splay and resultant that chairmakers print). With no rake it is the length of these legs.
 */
test('the rule for rake and splay, with no rake, gives the length of a splayed leg', () => {
  for (const degrees of [2, 6.5, 12]) {
    const splay = degrees * DEGREE;
    const { points } = sketchOf('splayed-leg', { splay, taper: 'none' });
    const byRule = 710 * Math.sqrt(1 + Math.tan(0) ** 2 + Math.tan(splay) ** 2);
    expect(distance(points.foot_outer!, points.head_outer!)).toBeCloseTo(byRule, 9);
    expect(distance(points.foot_inner!, points.head_inner!)).toBeCloseTo(byRule, 9);
  }
});

test('every corner of a straight leg lies where rise and run put it', () => {
  // 1 in 10: a leg that runs 70 mm on a height of 700 mm.
  const splay = Math.atan(1 / 10);
  const leg = standing(partOf('splayed-leg', { overall_height: 725, splay, taper: 'none', rail: false }));
  const [outer] = edgesCalled(leg, 'outer');
  const [high, low] = [outer!.from, outer!.to];
  expect(high.y - low.y).toBeCloseTo(700, 9);
  expect(high.x - low.x).toBeCloseTo(70, 9);
});
