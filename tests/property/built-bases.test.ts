import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolids, type SolidKernel } from '../../src/base/solids/index.ts';
import { type BuildOptions, buildBase } from '../../src/base/whole/build-base.ts';
import type { Finding } from '../../src/core/index.ts';
import { woodCalled } from '../../src/materials/index.ts';
import { describeForm, evaluateForm, type Form, type ParameterValue } from '../../src/sketch/index.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';
import { BASE_FORMS } from '../forms/forms.ts';

/** How many settings of each form are built: LEGWRIGHT_FUZZ, or a few. */
const RUNS = Math.min(2000, Number(process.env.LEGWRIGHT_FUZZ ?? 4));
const SEED = Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 1);

let solids: SolidKernel;
beforeAll(async () => {
  solids = await loadSolids();
});

function settingOf(form: Form, random: Random): Readonly<Record<string, ParameterValue>> {
  return Object.fromEntries(
    describeForm(form).parameters.map((parameter): [string, ParameterValue] => {
      switch (parameter.kind) {
        case 'choice': {
          const keys = Object.keys(parameter.options);
          return [parameter.name, keys[random.whole(0, keys.length - 1)]!];
        }
        case 'yes-no':
          return [parameter.name, random.next() < 0.5];
        case 'count':
          return [parameter.name, random.whole(parameter.least, parameter.most)];
        default:
          return [parameter.name, parameter.least + (parameter.most - parameter.least) * random.next()];
      }
    }),
  );
}

function stopsAt(
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
): readonly Finding[] | undefined {
  const sketch = evaluateForm(form, values);
  if (!sketch.ok) return undefined;
  const options: BuildOptions = {
    wood: woodCalled('white ash')!,
    woods: {},
    saw: { swing: { left: 0.8, right: 0.8 }, tilt: { left: 0.8, right: 0 } },
    cutter: 12,
    allowance: { edge: 2, end: 25, thickness: 3 },
    lengths: { unit: 'mm', decimals: 1 },
    solids,
  };
  const built = buildBase(sketch.value, options);
  expect(built.ok, `${form.name} at ${JSON.stringify(values)}`).toBe(true);
  return built.ok ? built.value.findings.filter(({ severity }) => severity === 'stop') : [];
}

describe.each(BASE_FORMS.map((form) => [form.name, form] as const))('%s', (_, form) => {
  test('is built at any setting that it accepts: no stop but of a joint for which the wood is too small, and every stop with a cure', {
    timeout: 1_200_000,
  }, () => {
    let accepted = 0;
    for (let run = 0; run < RUNS; run++) {
      const values = settingOf(form, randomFrom((SEED * 10_007 + run) * 7919));
      const stops = stopsAt(form, values);
      if (stops === undefined) continue;
      accepted++;
      for (const { code, message, cure } of stops) {
        expect(code, `${message} at ${JSON.stringify(values)}`).toMatch(/^joint\./);
        expect(cure, message).toMatch(/[a-z]{3}/);
      }
    }
    expect(accepted).toBeGreaterThan(0);
  });
});
