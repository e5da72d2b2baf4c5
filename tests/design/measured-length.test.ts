import { describe, expect, it } from 'vitest';
import { type Computed, compute, type Design, lengthDrivers } from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const bench: Design = { ...sampleDesign('bench-base', []), patterns: [] };

function computed(design: Design): Computed {
  const outcome = compute(design, { wanted: { patterns: [], standing: false } });
  if (!outcome.ok) throw new Error(outcome.problems.map(({ message }) => message).join('\n'));
  return outcome.value;
}

/** As the cut list says it, mm. */
const lengthOf = ({ base }: Computed, part: string): number =>
  base!.list.find((line) => line.part === part)!.finished.length;

const problemOf = (design: Design): string => {
  const outcome = compute(design, { wanted: { patterns: [], standing: false } });
  return outcome.ok ? '' : outcome.problems.map(({ path, message }) => `${path}: ${message}`).join('\n');
};

const withLength = (part: string, length: string, by: string, design: Design = bench): Design => ({
  ...design,
  measured: { ...design.measured, length: { ...design.measured.length, [part]: { length, by } } },
});

describe('a length as measured', () => {
  const before = computed(bench);
  const rail = lengthOf(before, 'rail');
  const short = withLength('rail', `${rail - 2} mm`, 'end_inset');

  it('is what the part then has; what hangs on the same parameter follows, and nothing else', () => {
    const after = computed(short);
    expect(lengthOf(after, 'rail')).toBeCloseTo(rail - 2, 4);
    // Both ends of the base move in by the same: the stretcher loses as much, the panels nothing.
    expect(lengthOf(after, 'stretcher')).toBeCloseTo(lengthOf(before, 'stretcher') - 2, 4);
    expect(lengthOf(after, 'panel')).toBeCloseTo(lengthOf(before, 'panel'), 9);
  });

  it('stays so whatever is decided later', () => {
    const later = { ...short, parameters: { ...short.parameters, top_length: '1280 mm' } };
    expect(lengthOf(computed(later), 'rail')).toBeCloseTo(rail - 2, 4);
  });

  it('is that of a part that is cut as well, which then fits', () => {
    const { parameters, measured, revision } = bench;
    const cut = { rail: { revision: revision.index, parameters, measured } };
    const after = computed({ ...short, cut });
    expect(lengthOf(after, 'rail')).toBeCloseTo(rail - 2, 4);
    expect(after.findings.filter(({ code }) => code.startsWith('base.cut'))).toEqual([]);
    // Without the measure the rail that was cut no longer fits a base that has become longer.
    const longer = { ...bench, cut, parameters: { ...parameters, end_inset: '70 mm' } };
    expect(computed(longer).findings.map(({ code }) => code)).toContain('base.cut-too-short');
  });

  it('gives way first by what changes least, and not by what is cut, measured or given away already', () => {
    const names = (design: Design, part: string) => {
      const found = lengthDrivers(design, part);
      return found.ok
        ? found.value.map(({ parameter }) => parameter)
        : found.problems.map(({ message }) => message);
    };
    expect(names(bench, 'rail')[0]).toBe('end_inset');
    expect(names(bench, 'rail')).toContain('top_length');
    expect(names(bench, 'panel')[0]).toBe('overall_height');
    const measured = { ...bench, measured: { parameters: { end_inset: '90 mm' } } };
    expect(names(measured, 'rail')[0]).toBe('top_length');
    expect(names(short, 'stretcher')).not.toContain('end_inset');
    expect(names(bench, 'wing')).toEqual([expect.stringMatching(/no part called "wing".*one of: panel/)]);
  });

  it.each([
    ['rail', '0', 'end_inset', /measured\.length\.rail: 0 is 0 mm; possible is from 10 mm to 10000 mm/],
    ['rail', 'long', 'end_inset', /measured\.length\.rail: cannot read "long"/],
    [
      'rail',
      '9 m',
      'end_inset',
      /rail is 9000\.0 mm long as measured; expected from \d+\.\d mm to \d+\.\d mm, as far as end_inset reaches/,
    ],
    [
      'rail',
      '1 m',
      'rail_thickness',
      /expected another parameter that gives way: rail_thickness does not bring it there/,
    ],
    ['rail', '1 m', 'splay', /rail\.by: found "splay", expected a length of the form, one of: .*end_inset/],
    ['wing', '1 m', 'end_inset', /no part called "wing"/],
  ])('is refused by its place: %s of %s by %s', (part, length, by, words) => {
    expect(problemOf(withLength(part, length, by))).toMatch(words);
  });

  it('is refused beside another one that cannot be true with it', () => {
    const both = withLength(
      'stretcher',
      `${(lengthOf(before, 'stretcher') + 30).toFixed(1)} mm`,
      'top_length',
      short,
    );
    expect(problemOf(both)).toMatch(/measured\.length\.(rail|stretcher): .*expected/);
    expect(problemOf(withLength('stretcher', '900 mm', 'end_inset', short))).toMatch(
      /stretcher\.by: found "end_inset", expected a parameter that is not itself measured/,
    );
  });
});
