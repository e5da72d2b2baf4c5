import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  compute,
  type Design,
  type Memo,
  placeProblems,
  readDesign,
  writeDesign,
} from '../../src/design/index.ts';
import { sampleDesign } from './sample-design.ts';

const leg = sampleDesign('splayed-leg', ['leg']);

function sound(design: Design, memo?: Memo) {
  const computed = compute(design, memo ? { memo } : {});
  if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
  return computed.value;
}

const STAGES = ['form', 'sketch', 'routing', 'findings', 'drawing', 'sheets', 'digests'];

/** Which stages a computation ran that the memo did not know, digests asked for as well. */
function stagesAdded(memo: Memo, design: Design): readonly string[] {
  const kept = () =>
    STAGES.map(
      (stage) => [...memo].filter(([of]) => of.split(' ')[0] === stage).flatMap(([, all]) => all).length,
    );
  const before = kept();
  for (const { digests } of sound(design, memo).patterns) expect(digests.length).toBeGreaterThan(0);
  const after = kept();
  return STAGES.filter((_, at) => after[at]! > before[at]!).sort();
}

/** One change that a maker may make, by a number so that it can be repeated. */
const changes: readonly ((design: Design, by: number) => Design)[] = [
  (design, by) => ({
    ...design,
    parameters: { ...design.parameters, overall_height: `${700 + 5 * by} mm` },
  }),
  (design, by) => ({ ...design, parameters: { ...design.parameters, splay: `${by}°` } }),
  (design, by) => ({ ...design, parameters: { ...design.parameters, rail: by % 2 === 0 } }),
  (design, by) => ({
    ...design,
    tooling: { ...design.tooling, cutter: { diameter: 10 + by, cuttingLength: '2 in' } },
  }),
  (design, by) => ({ ...design, paper: { ...design.paper, size: by % 2 === 0 ? 'A4' : 'A3' } }),
  (design, by) => ({ ...design, revision: { ...design.revision, index: 'ABCDEFGH'[by]! } }),
  (design, by) => ({
    ...design,
    patterns: [{ part: 'leg', view: by % 2 === 0 ? 'part' : 'template', mirrored: by % 3 === 0 }],
  }),
  (design, by) => ({
    ...design,
    units: by % 2 === 0 ? { length: 'mm', decimals: 1 } : { length: 'in', nearest: '1/32' },
  }),
];

describe('a form that the design calls otherwise than its own text', () => {
  it.each([
    ['name', 'knee-leg', '"splayed-leg"'],
    ['version', 99, String(leg.form.version)],
  ] as const)('is refused: its %s', (key, stated, own) => {
    const computed = compute({ ...leg, form: { ...leg.form, [key]: stated } });
    expect(computed.ok ? [] : computed.problems).toMatchObject([
      { code: 'design.form-differs', path: `form.${key}`, expected: expect.stringContaining(own) },
    ]);
  });
});

describe('a computation', () => {
  it('from a memo equals one from nothing, whatever was changed in between', () => {
    const steps = fc.array(fc.tuple(fc.nat(changes.length - 1), fc.nat(7)), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(steps, (taken) => {
        const memo: Memo = new Map();
        let design = leg;
        for (const [which, by] of taken) {
          design = changes[which]!(design, by);
          // As text: comparing drawings mark by mark takes longer than drawing them.
          expect(JSON.stringify(sound(design, memo)) === JSON.stringify(sound(design))).toBe(true);
        }
      }),
      { numRuns: 4 },
    );
  });

  it('runs again only what follows from a change', () => {
    const memo: Memo = new Map();
    expect(stagesAdded(memo, leg)).toEqual([...STAGES].sort());
    expect(stagesAdded(memo, leg)).toEqual([]);
    expect(stagesAdded(memo, changes[4]!(leg, 1))).toEqual(['digests', 'sheets']);
    expect(stagesAdded(memo, changes[5]!(leg, 1))).toEqual(['digests', 'drawing', 'sheets']);
    expect(stagesAdded(memo, changes[3]!(leg, 1))).toEqual([
      'digests',
      'drawing',
      'findings',
      'routing',
      'sheets',
    ]);
    // Findings speak in the design's unit.
    expect(stagesAdded(memo, changes[7]!(leg, 1))).toContain('findings');
    // A change back is known already.
    expect(stagesAdded(memo, leg)).toEqual([]);
  });

  it('keeps the grid that a design pins, though the part grows', () => {
    const first = sound(leg);
    const pinned: Design = { ...leg, grids: first.grids };
    const grown = sound(changes[1]!(pinned, 7));
    const [before, after] = [first.patterns[0]!, grown.patterns[0]!];
    expect(after.plan.grid).toEqual(before.plan.grid);
    expect(grown.grids).toEqual(first.grids);
    expect(after.digests).not.toEqual(before.digests);
  });

  it('is alike from a pinned design and from the one that chose the grid', () => {
    const first = sound(leg);
    const again = sound({ ...leg, grids: first.grids });
    expect(again.patterns).toEqual(first.patterns);
  });

  it('chooses a grid anew on another paper, and keeps the one for the paper before', () => {
    const first = sound(leg);
    const letter = sound({ ...leg, grids: first.grids, paper: { ...leg.paper, size: 'Letter' } });
    expect(letter.grids.leg).toHaveLength(2);
    expect(letter.grids.leg).toContainEqual(first.grids.leg![0]);
  });

  it('announces every step before it is taken', () => {
    const steps: [number, number][] = [];
    compute(leg, { onStep: (done, total) => steps.push([done, total]) });
    expect(steps.map(([done]) => done)).toEqual(steps.map((_, at) => at));
    expect(new Set(steps.map(([, total]) => total))).toEqual(new Set([steps.length]));
  });

  it('orders findings by gravity', () => {
    const thick = { ...leg, tooling: { ...leg.tooling, cutter: { diameter: 12, cuttingLength: 5 } } };
    const severities = sound(thick).findings.map(({ severity }) => severity);
    expect(severities).toEqual(
      ['stop', 'caution', 'note'].flatMap((each) => severities.filter((s) => s === each)),
    );
    expect(severities[0]).toBe('stop');
  });
});

describe('what a design asks in vain', () => {
  const shown = (design: Design) => {
    const read = readDesign(writeDesign(design), 'desk.json');
    if (!read.ok) throw new Error('expected a readable design');
    const computed = compute(read.value.design);
    if (computed.ok) throw new Error('expected problems');
    return placeProblems(read.value.source, computed.problems);
  };
  const lineOf = (design: Design, piece: string) =>
    writeDesign(design)
      .split('\n')
      .findIndex((line) => line.includes(piece)) + 1;

  it.each([
    [
      'a parameter beyond its range',
      { ...leg, parameters: { ...leg.parameters, splay: '85°' } },
      '"splay": "85°"',
    ],
    [
      'a length that is none',
      { ...leg, parameters: { ...leg.parameters, stock: 'thick' } },
      '"stock": "thick"',
    ],
    ['a parameter that there is not', { ...leg, parameters: { ...leg.parameters, lean: '8°' } }, '"lean"'],
    [
      'a part that there is not',
      { ...leg, patterns: [{ part: 'arm', view: 'all', mirrored: false } as const] },
      '"part": "arm"',
    ],
    ['a paper that there is not', { ...leg, paper: { ...leg.paper, size: 'A44' } }, '"size": "A44"'],
    [
      'a bit that is none',
      { ...leg, tooling: { ...leg.tooling, cutter: { diameter: 'half', cuttingLength: 20 } } },
      '"diameter": "half"',
    ],
    [
      'a correction that no printer needs',
      { ...leg, paper: { ...leg.paper, calibration: { long: 1.05, short: 1, date: '2026-03-09' } } },
      '"long": 1.05',
    ],
    [
      'a negative thickness',
      { ...leg, tooling: { ...leg.tooling, templateThickness: '-6 mm' } },
      '"templateThickness"',
    ],
  ])('is shown where it stands: %s', (_, design, piece) => {
    const problems = shown(design);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ file: 'desk.json', line: lineOf(design, piece) });
  });

  it('is shown in the form’s own text, when the fault is there', () => {
    const text = leg.form.text.map((line) =>
      line.replace('overall_height - top_thickness', 'overal_height - top_thickness'),
    );
    const design = { ...leg, form: { ...leg.form, text } };
    expect(text).not.toEqual(leg.form.text);
    expect(shown(design)[0]).toMatchObject({ file: 'desk.json', line: lineOf(design, 'overal_height -') });
  });

  it('shows faults in parameters, tooling and paper together', () => {
    const design = {
      ...leg,
      parameters: { ...leg.parameters, splay: '85°' },
      paper: { ...leg.paper, overlap: 'wide' },
      tooling: { ...leg.tooling, runOn: 'long' },
    };
    expect(shown(design).map(({ path }) => path)).toEqual([
      'parameters.splay',
      'tooling.runOn',
      'paper.overlap',
    ]);
  });
});
