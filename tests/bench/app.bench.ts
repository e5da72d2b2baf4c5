/**
 * The built app in the browser (`npm run build` first): from a figure taken (typed key by key, or put in at once), or a point pulled, to the drawn page in the front view; and a design
 * opened from a link by a browser that has never been here. Every base form at its defaults, by the clock: other work on the machine counts. Frames of
 * 60 Hz are 16.7 ms.
 */
import type { Page } from 'playwright-core';
import { afterAll, bench, describe } from 'vitest';
import { compute, designLink } from '../../src/design/index.ts';
import { beginDesign, fieldOf, openApp } from '../browser/support/app.ts';
import { sampleDesign } from '../design/sample-design.ts';
import { BASE_FORMS } from '../forms/forms.ts';
import { middleAndTail } from './middle-and-tail.ts';
import { type Shown, watchNextInput } from './watch-page.ts';

/** Changes of each kind that count, and those before them that let the browser compile what it runs: of the largest base, and of the others. */
const CHANGES = { largest: 20, other: 8 };
const BEFORE = { largest: 10, other: 4 };
const LARGEST = 'shallow-v-trestle';
const OPENED = 5;
/** ms that a maker looks at a new drawing before the first change, time in which the engine rehearses. */
const LOOKED_AT = 8000;
/** ms from key to key of somebody who types quickly (sixty words a minute are 200), and from the last one to Enter. */
const KEY_TO_KEY = 90;
/** ms that nothing takes. */
const PATIENCE = 120_000;
const app = await openApp();
const table: string[] = [];

/** Follows one key: comes back with ms from it to what the page shows. */
async function shownAfter(page: Page, key: string): Promise<Shown> {
  await page.evaluate(watchNextInput);
  await page.keyboard.press(key);
  const late = new Promise<never>((_, refuse) =>
    setTimeout(() => refuse(new Error(`nothing follows from ${key}`)), PATIENCE).unref(),
  );
  return Promise.race([
    page.evaluate(() => (globalThis as unknown as { watched: Promise<Shown> }).watched),
    late,
  ]);
}

async function changes(form: string, change: (turn: number) => Promise<Shown>): Promise<readonly Shown[]> {
  const size = form === LARGEST ? 'largest' : 'other';
  const shown: Shown[] = [];
  for (let turn = 0; turn < BEFORE[size] + CHANGES[size]; turn++) {
    const after = await change(turn);
    if (turn >= BEFORE[size]) shown.push(after);
  }
  return shown;
}

function row(form: string, what: string, shown: readonly Shown[]): void {
  const of = (name: keyof Shown): string => middleAndTail(shown.map((each) => each[name]));
  table.push(`${form.padEnd(20)} ${what.padEnd(8)} ${of('drawn')}   ${of('ready')}   ${of('settled')}`);
}

for (const { name, data } of BASE_FORMS) {
  describe(`${name} in the browser`, () => {
    bench(
      'taken and pulled',
      async () => {
        const { page, context } = await app.visitor();
        await beginDesign(page, app.address, data.title);
        await page.locator('.notes.whole').waitFor({ timeout: PATIENCE });
        await page.waitForTimeout(LOOKED_AT);
        const field = fieldOf(page, 'Overall height');
        const height = Number.parseFloat(await field.inputValue());
        // No figure twice: nothing of it is known from before.
        const figure = (turn: number, step: number): string =>
          `${(height + (turn % 2 === 0 ? 1 : -1) * step * (turn + 1)).toFixed(2)} mm`;
        row(
          name,
          'at once',
          await changes(name, async (turn) => {
            await field.fill(figure(turn, 0.13));
            return shownAfter(page, 'Enter');
          }),
        );
        row(
          name,
          'typed',
          await changes(name, async (turn) => {
            await field.fill('');
            await field.pressSequentially(figure(turn, 0.17), { delay: KEY_TO_KEY });
            await page.waitForTimeout(KEY_TO_KEY);
            return shownAfter(page, 'Enter');
          }),
        );
        const handle = page.locator('.handles [role=button]').first();
        if ((await handle.count()) > 0) {
          // Up first, so that there is way to go down, a millimetre at a time.
          for (let turn = 0; turn < 3; turn++) {
            await handle.focus();
            await shownAfter(page, 'Shift+ArrowUp');
          }
          row(
            name,
            'pulled',
            await changes(name, async () => {
              await handle.focus();
              return shownAfter(page, 'ArrowDown');
            }),
          );
        }
        await context.close();
      },
      { iterations: 1, time: 0, warmupTime: 0, warmupIterations: 0, throws: true },
    );
  });
}

describe('opened cold', () => {
  const bare = sampleDesign(LARGEST, []);
  const first = compute(bare, { wanted: { patterns: [] } });
  if (!first.ok) throw new Error('the form cannot be computed at its defaults');
  const parts = first.value.parts.map(({ part }) => part.name);
  const link = designLink(sampleDesign(LARGEST, parts), app.address);
  const times: Record<string, number[]> = { 'forms shown': [], 'drawing shown': [] };
  /** ms from the begin of the load to the first of what is sought. */
  const opened = async (address: string, sought: string): Promise<void> => {
    const { page, context } = await app.visitor({ serviceWorkers: 'block' });
    await page.goto(address);
    await page.locator(sought).first().waitFor();
    times[sought.includes('forms') ? 'forms shown' : 'drawing shown']!.push(
      await page.evaluate(() => performance.now()),
    );
    await context.close();
  };
  bench(
    'a design in a link, the list of forms',
    async () => {
      for (let turn = 0; turn < OPENED; turn++) {
        await opened(link, '.board .scene');
        await opened(app.address, '.forms button');
      }
      for (const [what, each] of Object.entries(times)) table.push(`cold, ${what}: ${middleAndTail(each)}`);
    },
    { iterations: 1, time: 0, warmupTime: 0, warmupIterations: 0, throws: true },
  );
});

afterAll(async () => {
  process.stdout.write(
    `\nms, p50 / p95: drawing out, page up to date, frame with all of it out\n${table.join('\n')}\n`,
  );
  await app.close();
});
