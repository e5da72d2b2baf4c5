import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lengthWords } from '../../src/routing/index.ts';
import {
  backingNeeded,
  boardNeeded,
  mostDrift,
  mostLeaves,
  type ResawPlan,
  resawFindings,
  resawStack,
  roughNeeded,
} from '../../src/wood/index.ts';

const PLAN: ResawPlan = {
  name: 'legs',
  rough: 38.1,
  flattening: 3.1,
  kerf: 1.2,
  leaves: 2,
  planing: { sawn: 0.8, outer: 0.4 },
  drying: 1,
  backing: 18,
  glued: 1,
  lastPlaning: { show: 0.5, back: 0.5 },
  drift: 0.5,
  finished: 30,
};

const size = fc.double({ min: 0, max: 4, noNaN: true });
const plans: fc.Arbitrary<ResawPlan> = fc.record({
  name: fc.constant('legs'),
  rough: fc.double({ min: 20, max: 110, noNaN: true }),
  flattening: size,
  kerf: size,
  leaves: fc.integer({ min: 1, max: 6 }),
  planing: fc.record({ sawn: size, outer: size }),
  drying: size,
  backing: fc.double({ min: 0, max: 30, noNaN: true }),
  glued: fc.constantFrom(1 as const, 2 as const),
  lastPlaning: fc.record({ show: size, back: size }),
  drift: size,
  finished: fc.double({ min: 15, max: 60, noNaN: true }),
});

describe('resawing', () => {
  it('takes the same off by hand: 38.1 flattened to 35, a kerf of 1.2, two leaves of 16.9', () => {
    const stack = resawStack(PLAN);
    expect(stack.flat).toBeCloseTo(35, 9);
    expect(stack.asSawn).toBeCloseTo((35 - 1.2) / 2, 9);
    // One sawn face, one outer face, and the cup: 16.9 − 0.8 − 0.4 − 1.
    expect(stack.leaves.map(({ thickness }) => thickness)).toEqual([
      expect.closeTo(14.7, 9),
      expect.closeTo(14.7, 9),
    ]);
    expect(stack.reaches).toBeCloseTo(18 + 14.7 - 1, 9);
    expect(stack.leastReaches).toBeCloseTo(18 + 14.2 - 1, 9);
  });

  it('counts two sawn faces on a middle leaf, and finds the thinnest there', () => {
    const stack = resawStack({ ...PLAN, rough: 60, leaves: 3 });
    const [first, middle, last] = stack.leaves;
    expect([first, middle, last].map((leaf) => leaf!.sawnFaces)).toEqual([1, 2, 1]);
    expect(first!.thickness - middle!.thickness).toBeCloseTo(0.8 - 0.4, 9);
    expect(stack.thinnest).toBe(middle!.thickness);
  });

  it('loses nothing out of sight: layers follow one another from face to face', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const { layers, asSawn } = resawStack(plan);
        fc.pre(asSawn > plan.drying + 2 * Math.max(plan.planing.sawn, plan.planing.outer));
        expect(layers[0]!.from).toBe(0);
        expect(layers.at(-1)!.to).toBeCloseTo(plan.rough, 9);
        for (const [at, layer] of layers.slice(1).entries())
          expect(layer.from).toBeCloseTo(layers[at]!.to, 9);
        const kerfs = layers.filter(({ kind }) => kind === 'kerf');
        const sum = kerfs.reduce((all, { from, to }) => all + to - from, 0);
        expect(sum).toBeCloseTo((plan.leaves - 1) * plan.kerf, 9);
      }),
    );
  });

  it('needs exactly the board that it says: a hundredth thinner falls short', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const rough = roughNeeded(plan);
        expect(resawStack({ ...plan, rough }).leastReaches).toBeGreaterThanOrEqual(plan.finished - 1e-6);
        const thinner = resawStack({ ...plan, rough: rough - 0.01 * plan.leaves });
        // Where the backing alone suffices, leaves of no thickness are wanted.
        const isShort = thinner.leastReaches < plan.finished || thinner.leastThinnest < 0;
        expect(isShort).toBe(true);
      }),
    );
  });

  it('gives as many leaves as it says, and not one more', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const leaves = mostLeaves(plan, 'drifts');
        const holds = (count: number): boolean => {
          const stack = resawStack({ ...plan, leaves: count });
          return stack.leastReaches >= plan.finished - 1e-6 && stack.leastThinnest >= -1e-6;
        };
        if (leaves > 0) expect(holds(leaves)).toBe(true);
        // Nobody is told of more than 50.
        fc.pre(leaves < 50);
        const more = resawStack({ ...plan, leaves: leaves + 1 });
        expect(more.leastReaches < plan.finished + 1e-6 || more.leastThinnest < 1e-6).toBe(true);
      }),
    );
  });

  it('names the backing and the drift at which the piece just reaches', () => {
    fc.assert(
      fc.property(plans, (plan) => {
        const backing = backingNeeded(plan);
        const least = resawStack({ ...plan, backing }).leastReaches;
        expect(backing === 0 ? least >= plan.finished - 1e-6 : Math.abs(least - plan.finished) < 1e-6).toBe(
          true,
        );
        const drift = mostDrift(plan);
        if (drift > 0 && Number.isFinite(drift))
          expect(resawStack({ ...plan, drift }).leastReaches).toBeCloseTo(plan.finished, 6);
      }),
    );
  });

  it('asks for the next board that is sold', () => {
    expect(boardNeeded(PLAN)?.quarters).toBe(6);
    expect(boardNeeded({ ...PLAN, finished: 33 })?.quarters).toBe(8);
    expect(boardNeeded({ ...PLAN, finished: 90, backing: 0 })).toBeUndefined();
  });
});

describe('findings of a resaw plan', () => {
  const say = lengthWords();
  const codes = (plan: ResawPlan): readonly string[] => resawFindings(plan, say).map(({ code }) => code);
  const ENOUGH = { ...PLAN, drying: 1.6 };

  it('are none where the board suffices, also when the saw drifts', () => {
    expect(codes(ENOUGH)).toEqual([]);
  });

  it('tell a board that is too thin from a saw that must not drift, and their cures cure', () => {
    const thin = { ...ENOUGH, finished: 33 };
    const [stop] = resawFindings(thin, say);
    expect(stop).toMatchObject({ code: 'wood.board-too-thin', severity: 'stop' });
    expect(stop!.cure).toContain('8/4');
    expect(codes({ ...thin, rough: 50.8 })).toEqual([]);
    expect(codes({ ...thin, backing: backingNeeded(thin) })).toEqual([]);
    const tight = { ...ENOUGH, finished: 30.9, drift: 0.3 };
    expect(codes(tight)).toEqual(['wood.saw-drifts']);
    expect(codes({ ...tight, drift: mostDrift(tight) })).toEqual([]);
  });

  it('name a leaf that is planed away, faces that come not clean, and leaves that stay in wind', () => {
    expect(codes({ ...ENOUGH, leaves: 12, backing: 40 })).toContain('wood.leaf-planed-away');
    expect(codes({ ...ENOUGH, planing: { sawn: 0.2, outer: 0.4 } })).toEqual(['wood.planing-thin']);
    expect(codes({ ...ENOUGH, drying: 0.5 })).toEqual(['wood.drying-thin']);
    expect(codes({ ...ENOUGH, kerf: 0.2 })).toEqual(['wood.kerf-unusual']);
  });
});
