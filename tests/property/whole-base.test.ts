import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolids, type SolidKernel } from '../../src/base/index.ts';
import type { Finding } from '../../src/core/index.ts';
import { compute, type Design, type Memo } from '../../src/design/index.ts';
import { type DescribedParameter, describeForm } from '../../src/sketch/index.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { sampleDesign } from '../design/sample-design.ts';
import { BASE_FORMS, formCalled } from '../forms/forms.ts';

/** How many settings of each form are made: LEGWRIGHT_FUZZ, or a few. Of the ends of its parameters as many. */
const RUNS = Math.min(2000, Number(process.env.LEGWRIGHT_FUZZ ?? 4));
const SEED = Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 1);
/** Of so many settings one may be stopped. */
const STOPPED = 0.05;

let solids: SolidKernel;
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

/** What stops a design; nothing where its form refuses the setting, with a reason of its own. */
function stopsOf(design: Design, memo?: Memo): readonly Finding[] | undefined {
  const computed = compute(design, {
    solids,
    wanted: { patterns: [] },
    ...(memo === undefined ? {} : { memo }),
  });
  const seen = `${design.form.name} at ${JSON.stringify(design.parameters)}`;
  if (!computed.ok) {
    for (const { code, message } of computed.problems) expect(code, `${seen}: ${message}`).toBe('form.check');
    return undefined;
  }
  const stops = computed.value.findings.filter(({ severity }) => severity === 'stop');
  for (const { message, cure } of stops) expect(cure, `${seen}: ${message}`).toMatch(/\w/);
  return stops;
}

/** Settings that are stopped, of those that the form accepts. */
function tally(designs: readonly Design[]): {
  readonly accepted: number;
  readonly stopped: readonly string[];
} {
  const memo: Memo = new Map();
  const outcomes = designs.map((design) => ({ design, stops: stopsOf(design, memo) }));
  return {
    accepted: outcomes.filter(({ stops }) => stops !== undefined).length,
    stopped: outcomes.flatMap(({ design, stops = [] }) =>
      stops.length === 0
        ? []
        : [`${stops.map(({ message }) => message).join(' ')} at ${JSON.stringify(design.parameters)}`],
    ),
  };
}

describe.each(BASE_FORMS.map(({ name }) => name))('%s', (form) => {
  const design: Design = { ...sampleDesign(form, []), patterns: [] };
  const random = () => randomFrom((SEED * 10_007 + form.length) * 7919);

  test('is stopped at no end of its parameters', { timeout: 1_200_000 }, () => {
    const at = random();
    const ends = endsOf(form, design.parameters)
      .map((parameters) => ({ parameters, rank: at.next() }))
      .toSorted((a, b) => a.rank - b.rank)
      .slice(0, RUNS);
    const { accepted, stopped } = tally(ends.map(({ parameters }) => ({ ...design, parameters })));
    expect(stopped).toEqual([]);
    expect(accepted).toBeGreaterThanOrEqual(Math.floor(ends.length * (1 - STOPPED)));
  });

  test('is stopped at hardly any setting, and never without a cure', { timeout: 1_200_000 }, () => {
    const at = random();
    const designs = Array.from({ length: RUNS }, () => ({ ...design, parameters: anySetting(form, at) }));
    const { accepted, stopped } = tally(designs);
    expect(accepted).toBeGreaterThan(0);
    expect(stopped.length / accepted, stopped.slice(0, 5).join('\n')).toBeLessThanOrEqual(STOPPED);
  });
});
