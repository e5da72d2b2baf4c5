import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolids, type Solids } from '../../src/base/index.ts';
import { withSolids } from '../../src/base/solids/index.ts';
import type { FigureToSet, Result } from '../../src/core/index.ts';
import { keyOfFinding, keyOfProblem } from '../../src/design/cures/key-of-finding.ts';
import {
  applyFigure,
  type Computed,
  compute,
  computeWithCures,
  type Design,
  type Memo,
} from '../../src/design/index.ts';
import { type DescribedParameter, describeForm } from '../../src/sketch/index.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { sampleDesign } from '../design/sample-design.ts';
import { BASE_FORMS, formCalled } from '../forms/forms.ts';

/** How many settings of each form are made: LEGWRIGHT_FUZZ, or a few. Of the ends of its parameters as many. */
const RUNS = Math.min(2000, Number(process.env.LEGWRIGHT_FUZZ ?? 2));
const SEED = Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 1);
/** Of so many settings one may be stopped, by a finding or by a check of its form. */
const STOPPED = 0.05;
/** So many cures one after the other make a setting clean: more than one thing may be wrong with it. */
const MOST_CURES = 6;
/** mm³: what two solids that touch may share for their rounded corners. */
const TOUCH = 1;

let solids: Solids;
beforeAll(async () => {
  solids = await loadSolids();
});

type Parameters = Design['parameters'];

/** A value of a parameter as a maker types it: at this share of its range. */
function valueAt(parameter: DescribedParameter, share: number): Parameters[string] {
  switch (parameter.kind) {
    case 'choice': {
      const keys = Object.keys(parameter.options);
      return keys[Math.min(keys.length - 1, Math.floor(share * keys.length))]!;
    }
    case 'yes-no':
      return share < 0.5;
    default: {
      const value = parameter.least + (parameter.most - parameter.least) * share;
      if (parameter.kind === 'length') return `${value.toFixed(2)} mm`;
      if (parameter.kind === 'angle') return `${((value * 180) / Math.PI).toFixed(3)}°`;
      return parameter.kind === 'count' ? Math.round(value) : Number(value.toFixed(4));
    }
  }
}

/** Everything at its default but one parameter, which stands at an end of its range or at one of its choices. */
function endsOf(form: string, defaults: Parameters): readonly Parameters[] {
  return describeForm(formCalled(form)).parameters.flatMap((parameter) => {
    const shares =
      parameter.kind === 'choice'
        ? Object.keys(parameter.options).map((_, at, all) => (at + 0.5) / all.length)
        : [0, 1];
    return shares.map((share) => ({ ...defaults, [parameter.name]: valueAt(parameter, share) }));
  });
}

function anySetting(form: string, random: Random): Parameters {
  return Object.fromEntries(
    describeForm(formCalled(form)).parameters.map((parameter) => [
      parameter.name,
      valueAt(parameter, random.next()),
    ]),
  );
}

/** What is wrong with a design: by key, with the figure that would cure it. */
type Troubles = ReadonlyMap<string, FigureToSet | undefined>;

function troublesOf(computed: Result<Computed>, seen: string): Troubles {
  if (!computed.ok) {
    for (const { code, message } of computed.problems) expect(code, `${seen}: ${message}`).toBe('form.check');
    return new Map(computed.problems.map((problem) => [keyOfProblem(problem), problem.set]));
  }
  const stops = computed.value.findings.filter(({ severity }) => severity === 'stop');
  for (const { message, cure } of stops) expect(cure, `${seen}: ${message}`).toMatch(/\w/);
  return new Map(stops.map((finding) => [keyOfFinding(finding), finding.set]));
}

/** Sets one cure after the other: each clears what it was given for and brings no stop; in the end there is none. */
function expectCured(design: Design, memo: Memo): void {
  const options = { solids, memo, wanted: { patterns: [] } };
  let now = design;
  for (let step = 0; step < MOST_CURES; step++) {
    const seen = `${now.form.name} at ${JSON.stringify(now.parameters)}`;
    const troubles = troublesOf(computeWithCures(now, options), seen);
    if (troubles.size === 0) return;
    const [key, set] = [...troubles].find(([, each]) => each !== undefined) ?? [...troubles][0]!;
    expect(set, `${seen}: no cure of ${key.replaceAll('\0', ' ')}`).toBeDefined();
    expect(set!.words, seen).toMatch(/^[A-Z].*: ./);
    const next = applyFigure(now, set!);
    const cured = compute(next, options);
    const left = troublesOf(cured, seen);
    expect([...left.keys()], `${seen}: ${set!.words}`).not.toContain(key);
    // A check of the form hides what stops the base; otherwise nothing may come that was not there.
    if (cured.ok)
      expect(
        [...left.keys()].filter((each) => !troubles.has(each)),
        `${seen}: ${set!.words}`,
      ).toEqual([]);
    now = next;
  }
  throw new Error(`${MOST_CURES} cures do not do for ${JSON.stringify(design.parameters)}`);
}

/** Settings that something stops, each of which its cures make clean. */
function stopped(designs: readonly Design[]): readonly string[] {
  return designs.flatMap((design) => {
    const memo: Memo = new Map();
    const seen = JSON.stringify(design.parameters);
    const troubles = troublesOf(compute(design, { solids, memo, wanted: { patterns: [] } }), seen);
    if (troubles.size === 0) return [];
    expectCured(design, memo);
    return [`${[...troubles.keys()].join('; ').replaceAll('\0', ' ')} at ${seen}`];
  });
}

/** The form with one place cut by the floor and the top alone, so that it runs on into what it would have met. */
function withoutTrims(design: Design, at: number): Design {
  const lines = design.form.text.flatMap((line, index) => (/trims: .*against/.test(line) ? [index] : []));
  const chosen = lines[at % lines.length];
  const text = design.form.text.map((line, index) =>
    index === chosen ? line.replaceAll(/\{ against: [^}]*\},? ?/g, '') : line,
  );
  return { ...design, form: { ...design.form, text } };
}

describe.each(BASE_FORMS.map(({ name }) => name))('%s', (form) => {
  const design: Design = { ...sampleDesign(form, []), patterns: [] };
  const random = () => randomFrom((SEED * 10_007 + form.length) * 7919);

  test('has nothing that stops it at its defaults', () => {
    expect(stopped([design])).toEqual([]);
  });

  test('has nothing that stops it at an end of any range', { timeout: 3_600_000 }, () => {
    const at = random();
    const ends = endsOf(form, design.parameters)
      .map((parameters) => ({ parameters, rank: at.next() }))
      .toSorted((a, b) => a.rank - b.rank)
      .slice(0, RUNS);
    const found = stopped(ends.map(({ parameters }) => ({ ...design, parameters })));
    expect(found.length, found.join('\n')).toBeLessThanOrEqual(ends.length * STOPPED);
  });

  test('is stopped at hardly any setting, and then its cures clear it', { timeout: 3_600_000 }, () => {
    const at = random();
    const designs = Array.from({ length: RUNS }, () => ({ ...design, parameters: anySetting(form, at) }));
    const found = stopped(designs);
    // Of a few settings one may be the one in twenty.
    const most = Math.max(1, RUNS * STOPPED);
    expect(found.length, found.slice(0, 5).join('\n')).toBeLessThanOrEqual(most);
  });

  test('names every two parts that run into each other', { timeout: 3_600_000 }, () => {
    const at = random();
    let collided = 0;
    for (let run = 0; run < Math.max(1, RUNS / 20); run++) {
      const parameters = run === 0 ? design.parameters : anySetting(form, at);
      const computed = compute(withoutTrims({ ...design, parameters }, run), {
        solids,
        wanted: { patterns: [] },
      });
      if (!computed.ok) continue;
      const { base, findings } = computed.value;
      const { parts } = base!.base;
      const pocketsOf = (part: { readonly id: string }) =>
        base!.joints.joints
          .flatMap(({ sides }) => sides)
          .filter((side) => side.part === part.id)
          .flatMap(({ work }) => work.filter((each) => each.kind === 'pocket'));
      const shared = withSolids(
        solids,
        parts,
        (bodies) =>
          bodies.flatMap((a, i) =>
            bodies.slice(i + 1).flatMap((b) => {
              const common = a.body.intersect(b.body);
              const volume = common.volume();
              common.delete();
              return volume > TOUCH ? [[a.part, b.part] as const] : [];
            }),
          ),
        pocketsOf,
      );
      const said = findings.filter(({ code }) => code === 'base.collision').map(({ message }) => message);
      for (const [a, b] of shared) {
        const named = said.some((message) =>
          [a, b].every(({ label, mark }) => message.includes(`${label} ${mark}`.trim())),
        );
        expect(named, `${form}: ${a.id} and ${b.id} at ${JSON.stringify(parameters)}`).toBe(true);
      }
      collided += shared.length;
    }
    expect(collided).toBeGreaterThan(0);
  });
});
