import { beforeAll, describe, expect, it } from 'vitest';
import { loadSolids, type Solids } from '../../src/base/index.ts';
import { applyFigure, compute, computeWithCures, type Design } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const wanted = { patterns: [], standing: false } as const;
const designOf = (form: string, change: Partial<Design>): Design => {
  const design = sampleDesign(form, []);
  return { ...design, patterns: [], ...change, parameters: { ...design.parameters, ...change.parameters } };
};

const stopsOf = (design: Design) => {
  const outcome = computeWithCures(design, { wanted });
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
  return outcome.value.findings.filter(({ severity }) => severity === 'stop');
};

let solids: Solids;
beforeAll(async () => {
  solids = await loadSolids();
});

describe('a figure to set', () => {
  it('is a loose tenon made to measure where none of the list fits, beside those of the list', () => {
    const base = { looseTenons: [{ name: 'the only one', thickness: '1/2 in', width: 40, length: '90 mm' }] };
    const design = designOf('bench-base', { base });
    const [stop] = stopsOf(design);
    expect(stop).toMatchObject({ code: 'joint.none-fits', set: { path: 'base.looseTenons' } });
    const list = stop!.set!.value as readonly object[];
    expect(list[0]).toEqual(base.looseTenons[0]);
    expect(list[1]).toEqual({
      thickness: expect.stringMatching(/^[\d.]+ mm$/),
      width: expect.stringMatching(/^[\d.]+ mm$/),
      length: expect.stringMatching(/^[\d.]+ mm$/),
    });
    expect(stopsOf(applyFigure(design, stop!.set!)).map(({ joint }) => joint)).not.toContain(stop!.joint);
  });

  it('is the nearest value of the parameter that a failed check of the form asks about', () => {
    const design = designOf('raked-table', { parameters: { apron_depth: '56 mm', arch_rise: '28 mm' } });
    const outcome = computeWithCures(design, { wanted });
    if (outcome.ok) throw new Error('an arch of half its apron is not refused');
    const [{ code, set }] = outcome.problems as [(typeof outcome.problems)[0]];
    expect({ code, set }).toMatchObject({ code: 'form.check', set: { path: 'parameters.arch_rise' } });
    expect(set!.words).toBe(`Rise of the arch: ${set!.value}`);
    expect(compute(applyFigure(design, set!), { wanted }).ok).toBe(true);
    // As near as may be: a millimetre or two further, and the form refuses it again.
    const further = `${Number.parseFloat(String(set!.value)) + 2} mm`;
    expect(compute(applyFigure(design, { ...set!, value: further }), { wanted }).ok).toBe(false);
  });

  it('is the end of its range that a parameter ran past, in the unit of the design', () => {
    const cureOf = (parameters: Design['parameters'], change: Partial<Design> = {}) => {
      const outcome = computeWithCures(designOf('raked-table', { parameters, ...change }), { wanted });
      if (outcome.ok) throw new Error('a figure out of its range is not refused');
      return outcome.problems.map(({ set }) => set);
    };
    expect(cureOf({ splay: '40°' })).toEqual([
      {
        path: 'parameters.splay',
        value: expect.stringMatching(/^\d+°$/),
        words: expect.stringMatching(/^Splay: \d+°$/),
      },
    ]);
    const [low] = cureOf({ apron_depth: '1 mm' });
    expect(compute(applyFigure(designOf('raked-table', {}), low!), { wanted }).ok).toBe(true);
    expect(Number.parseFloat(`${low!.value}`)).toBeLessThan(100);
    expect(cureOf({}, { measured: { parameters: { apron_depth: '1 mm' } } })).toEqual([undefined]);
  });

  it('is not one that was measured on the wood', () => {
    const parameters = { apron_depth: '56 mm', arch_rise: '28 mm' };
    const design = designOf('raked-table', { parameters, measured: { parameters: { arch_rise: '28 mm' } } });
    const outcome = computeWithCures(design, { wanted });
    if (outcome.ok) throw new Error('an arch of half its apron is not refused');
    expect(outcome.problems[0]!.set?.path).toBe('parameters.apron_depth');
  });

  it.each([
    ['stool-base', {}, 'joint.wall-thin'],
    ['bench-base', { top_length: '1800 mm', rail_depth: '40 mm' }, 'base.sag'],
    ['raked-table', { apron_depth: '120 mm' }, 'base.knees'],
  ])(
    'is given to a caution of %s at %o where that is asked for: it is gone, and no other comes',
    (form, parameters, code) => {
      const design = designOf(form, { parameters });
      const standing = { solids, wanted: { patterns: [] } };
      const outcome = computeWithCures(design, { ...standing, cautions: true });
      if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
      const { findings } = outcome.value;
      expect(findings.map(({ severity }) => severity)).not.toContain('stop');
      const said = findings.filter((finding) => finding.code.startsWith(code));
      expect(said.length).toBeGreaterThan(0);
      const cautionsAt = (at: Design) => {
        const computed = compute(at, standing);
        if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
        return computed.value.findings.filter(({ severity }) => severity !== 'note');
      };
      const before = cautionsAt(design).map(({ code: each, part }) => `${each} ${part}`);
      for (const finding of said) {
        const { set, message } = finding;
        expect(set, message).toBeDefined();
        const after = cautionsAt(applyFigure(design, set!));
        expect(after.filter(({ severity }) => severity === 'stop')).toEqual([]);
        expect(
          after.filter(
            ({ code: each, joint, part }) =>
              each === finding.code && joint === finding.joint && part === finding.part,
          ),
        ).toEqual([]);
        expect(before).toEqual(
          expect.arrayContaining(after.map(({ code: each, part }) => `${each} ${part}`)),
        );
      }
      // Not asked for, none is given.
      const plain = computeWithCures(design, standing);
      expect(plain.ok && plain.value.findings.filter(({ set }) => set !== undefined)).toEqual([]);
    },
  );

  it('is given to stops alone, and changes nothing else of what is computed', () => {
    const design = designOf('bench-base', {});
    const [plain, cured] = [compute(design, { wanted }), computeWithCures(design, { wanted })];
    if (!plain.ok || !cured.ok) throw new Error('the bench cannot be computed');
    expect(cured.value.findings).toEqual(plain.value.findings);
  });
});
