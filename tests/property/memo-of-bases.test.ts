/**
 * Whoever goes on changing a base is shown what a computation from nothing finds: nothing known from before comes in where it does not hold. Walks over
 * random changes, there and back and by very little, since what is nearly known is what could be taken for it.
 */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compute, type Design, lookAtDesign, type Memo } from '../../src/design/index.ts';
import { sampleDesign } from '../design/sample-design.ts';

const FORMS = { 'shallow-v-trestle': 'leg', 'raked-table': 'leg', 'crossed-base': 'rail' } as const;

type Change = (design: Design, by: number) => Design;

const withParameter = (design: Design, name: string, value: string | number): Design => ({
  ...design,
  parameters: { ...design.parameters, [name]: value },
});

/** Each by a number: the same number makes the same change. */
const CHANGES: readonly Change[] = [
  (design, by) =>
    withParameter(design, 'overall_height', `${(730 + 3 * (by % 3) + 0.001 * (by % 2)).toFixed(3)} mm`),
  (design, by) => withParameter(design, 'top_thickness', `${26 + (by % 3)} mm`),
  (design, by) => ({
    ...design,
    base: { ...design.base!, dowels: by % 2 === 0 ? [] : [{ diameter: '8 mm', length: '40 mm' }] },
  }),
  (design, by) => ({
    ...design,
    tooling: { ...design.tooling, cutter: { diameter: `${10 + 2 * (by % 2)} mm`, cuttingLength: '50 mm' } },
  }),
  (design, by) => ({ ...design, paper: { ...design.paper, size: by % 2 === 0 ? 'A4' : 'A3' } }),
  (design, by) => ({
    ...design,
    units: by % 2 === 0 ? { length: 'mm', decimals: 1 } : { length: 'in', nearest: '1/32' },
  }),
  (design, by) => {
    const [{ part }] = design.patterns as readonly [Design['patterns'][number]];
    return by % 2 === 0
      ? { ...design, measured: { ...design.measured, thickness: {} } }
      : { ...design, measured: { ...design.measured, thickness: { [part]: `${30 + (by % 3)} mm` } } };
  },
];

/** All that is shown of a base, printed or said of it; problems where it cannot be made. */
function told(design: Design, memo?: Memo): string {
  const looked = lookAtDesign(design, ['front', 'plan'], memo);
  const wanted = { standing: false };
  const computed = compute(design, { wanted, ...(memo === undefined ? {} : { memo }) });
  if (!computed.ok) return JSON.stringify(computed.problems);
  const { base, findings, patterns, grids } = computed.value;
  return JSON.stringify({
    joints: base!.joints.joints.map(({ id, sides, glue, loose }) => ({ id, sides, glue, loose })),
    made: base!.made,
    list: base!.list,
    glue: base!.glue,
    views: looked.ok && looked.value.views,
    findings,
    grids,
    patterns: patterns.map(({ plan, digests, pattern: { scene, checks } }) => ({
      plan,
      digests,
      scene,
      checks,
    })),
  });
}

test.each(Object.entries(FORMS))('%s', (form, part) => {
  // Every kind of change, in any order.
  const kinds = CHANGES.map((_, at) => at);
  const whole = { minLength: kinds.length, maxLength: kinds.length };
  const steps = fc
    .tuple(fc.shuffledSubarray(kinds, whole), fc.array(fc.nat(5), whole))
    .map(([order, by]) => order.map((which, at) => [which, by[at]!] as const));
  fc.assert(
    fc.property(steps, (taken) => {
      const memo: Memo = new Map();
      const begun = sampleDesign(form, [part]);
      let design = begun;
      for (const [which, by] of taken) {
        design = CHANGES[which]!(design, by);
        // As text: compared value by value it would take longer than it is computed.
        expect(
          told(design, memo) === told(design),
          `${JSON.stringify([which, by])} of ${JSON.stringify(taken)}`,
        ).toBe(true);
      }
      expect(told(begun, memo) === told(begun)).toBe(true);
    }),
    { numRuns: 1 },
  );
});
