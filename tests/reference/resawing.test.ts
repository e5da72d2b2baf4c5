import { describe, expect, it, test } from 'vitest';
import { parseQuarters } from '../../src/measure/index.ts';
import { backingNeeded, mostLeaves, type ResawPlan, resawStack, roughNeeded } from '../../src/wood/index.ts';

const INCH = 25.4;

/** Nothing but the saw and the plane: no flattening, no cup, nothing glued. */
const BARE: ResawPlan = {
  name: 'leaves',
  rough: INCH,
  flattening: 0,
  kerf: 1,
  leaves: 1,
  planing: { sawn: 0, outer: 0 },
  drying: 0,
  backing: 0,
  glued: 1,
  lastPlaning: { show: 0, back: 0 },
  drift: 0,
  finished: 9,
};

/*
 * Leaves of a board: n = floor((T + k) / (t + 2p + k)) with the flattened thickness T, the kerf k, leaves t thick and p planed off each
 * face (the trade's count, computed); the last row is a woodworking magazine's statement that a 1 in board gives two 3/8 in leaves (read).
 */
describe('leaves of a board', () => {
  test.each([
    [44.5, 1.0, 3.0, 0.5, 9],
    [44.5, 1.0, 6.0, 0.8, 5],
    [22.2, 1.0, 9.5, 0.8, 1],
    [47.6, 1.6, 3.2, 0.4, 8],
    [25.4, 1.0, 9.5, 0.8, 2],
    [25.4, 1.3, 9.525, 0.8, 2],
  ])('of %f mm, a kerf of %f, leaves of %f, %f planed off each face, are %i', (T, k, t, p, n) => {
    const plan = { ...BARE, rough: T, kerf: k, finished: t, planing: { sawn: p, outer: p } };
    expect(mostLeaves(plan, 'as planned')).toBe(n);
    expect(Math.floor((T + k) / (t + 2 * p + k))).toBe(n);
  });
});

/*
 * Common practice: an inch-and-a-half board resawn in half gives two leaves of about three-quarters of an inch, each less half the kerf and
 * its planing, so that two leaves glued back fall short of the first thickness and a backing is needed.
 */
describe('an inch-and-a-half board resawn in half', () => {
  const read = parseQuarters('6/4', { unit: 'in' });
  if (!read.ok) throw new Error('6/4 is a thickness');
  const kerf = INCH / 16;
  const planing = { sawn: INCH / 32, outer: 0 };
  const plan: ResawPlan = {
    ...BARE,
    rough: read.value,
    leaves: 2,
    kerf,
    planing,
    glued: 2,
    finished: read.value,
  };
  const stack = resawStack(plan);

  it('gives two leaves of three-quarters, each less half the kerf and its planing', () => {
    for (const { thickness } of stack.leaves)
      expect(thickness).toBeCloseTo(0.75 * INCH - kerf / 2 - planing.sawn, 9);
  });

  it('falls short by the kerf and both planings when the leaves are glued back, and a backing makes that up', () => {
    const short = kerf + 2 * planing.sawn;
    expect(plan.finished - stack.reaches).toBeCloseTo(short, 9);
    expect(backingNeeded(plan)).toBeCloseTo(short, 9);
    expect(resawStack({ ...plan, backing: short }).reaches).toBeCloseTo(plan.finished, 9);
  });

  it('would have had to be thicker by as much', () => {
    expect(roughNeeded(plan) - plan.rough).toBeCloseTo(kerf + 2 * planing.sawn, 9);
  });
});
