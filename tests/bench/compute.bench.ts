/**
 * From a changed parameter to what a screen shows of a base: front view, findings and how many sheets, the grid of each pattern sought anew. Each base
 * form at its defaults, its overall height changed by a few millimetres.
 */
import { afterAll, bench, describe } from 'vitest';
import { compute, type Design, lookAtDesign, type Memo } from '../../src/design/index.ts';
import { sampleDesign } from '../design/sample-design.ts';
import { BASE_FORMS } from '../forms/forms.ts';

/** Pseudo-random, the same at every run. */
function randomly(): () => number {
  let state = 20260309;
  return () => {
    state = (state * 1103515245 + 12345) % 2 ** 31;
    return state / 2 ** 31;
  };
}

const found: Record<string, Record<string, readonly number[]>> = {};

/** ms of processor time, so that other work on the machine does not count. */
function taken(step: () => void): number {
  const before = process.cpuUsage();
  step();
  const { user, system } = process.cpuUsage(before);
  return (user + system) / 1000;
}

/** Keeps what each run of a step took: the bench itself counts other work on the machine too, and only repeats it. */
function timed(form: string, what: string, step: () => void, iterations: number): void {
  const times: number[] = [];
  found[form] = { ...found[form], [what]: times };
  bench(what, () => void times.push(taken(step)), {
    time: 0,
    warmupTime: 0,
    iterations,
    warmupIterations: 0,
  });
}

/** The median and, in brackets, the least, once a third of the runs had warmed it up. */
function said(times: readonly number[]): string {
  const settled = times.slice(Math.floor(times.length / 3)).sort((a, b) => a - b);
  const [middle, least] = [settled[settled.length >> 1], settled[0]];
  return `${middle?.toFixed(1)} (${least?.toFixed(1)}) ms`;
}

const wanted = { standing: false } as const;

for (const { name } of BASE_FORMS) {
  const bare = sampleDesign(name, []);
  const first = compute(bare, { wanted: { patterns: [] } });
  if (!first.ok) throw new Error(`${name} cannot be computed at its defaults`);
  const patterns = first.value.parts.map(({ part }) => ({
    part: part.name,
    view: 'all' as const,
    mirrored: false,
  }));
  const whole: Design = { ...bare, patterns };
  const height = Number.parseFloat(String(whole.parameters.overall_height));
  const high = (by: number): Design => ({
    ...whole,
    parameters: { ...whole.parameters, overall_height: `${(height + by).toFixed(2)} mm` },
  });
  const shown = (design: Design, memo: Memo, asked: Parameters<typeof compute>[1] = {}): void => {
    const looked = lookAtDesign(design, ['front'], memo);
    const computed = compute(design, { memo, wanted, ...asked });
    if (!looked.ok || looked.value.views.length === 0) throw new Error('nothing is seen');
    if (!computed.ok) throw new Error(computed.problems.map(({ message }) => message).join('\n'));
    if (
      computed.value.findings.length + computed.value.patterns.flatMap(({ plan }) => plan.sheets).length ===
      0
    )
      throw new Error('nothing was found');
  };

  describe(name, () => {
    timed(name, 'cold', () => shown(whole, new Map()), 6);
    const known: Memo = new Map();
    let turn = 0;
    timed(name, 'back and forth', () => shown(high((turn++ % 2) * 3), known), 60);
    const random = randomly();
    const memo: Memo = new Map();
    timed(name, 'random', () => shown(high(10 * random() - 5), memo), 60);
    const alone: Memo = new Map();
    const bareWanted = { patterns: [], standing: false } as const;
    timed(
      name,
      'random, without sheets',
      () => shown(high(10 * random() - 5), alone, { wanted: bareWanted }),
      60,
    );
  });
}

afterAll(() => {
  for (const [form, figures] of Object.entries(found)) {
    const words = Object.entries(figures).map(([what, times]) => `${what} ${said(times)}`);
    process.stdout.write(`${form.padEnd(20)} ${words.join(' · ')}\n`);
  }
});
