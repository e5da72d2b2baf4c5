import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { readFonts } from '../../src/cli/package-files.ts';
import { compute, printPattern, readDesign } from '../../src/design/index.ts';
import { readPages } from '../print/support/read-pdf.ts';
import { beginDesign, PATIENCE, test } from './support/app.ts';

/** Points in 0.0001 mm. */
const CLOSE = (0.0001 * 72) / 25.4;

async function openSheets(page: Page): Promise<void> {
  await page.goto(new URL('#/sheets', page.url()).href);
  await page.locator('.lay-ground').waitFor();
}

async function pressed(page: Page, name: string): Promise<Uint8Array> {
  const [download] = await Promise.all([
    page.waitForEvent('download', { timeout: PATIENCE }),
    page.getByRole('button', { name }).click(),
  ]);
  return new Uint8Array(readFileSync(await download.path()));
}

const countOf = async (page: Page): Promise<string> =>
  (await page.locator('.sheets-screen .count').textContent()) ?? '';

test('the PDF made in the page has the numbers of the one that the command line makes, to 0.0001 mm', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Curved leg');
  await openSheets(page);
  const own = await readPages(await pressed(page, 'Make the PDF'));

  await page.goto(`${app.address}#/designs`);
  const saved = await pressed(page, 'Save as a file: Curved leg');
  const read = readDesign(new TextDecoder().decode(saved), 'saved.json');
  if (!read.ok) throw new Error(read.problems[0]!.message);
  const computed = compute(read.value.design);
  if (!computed.ok) throw new Error(computed.problems[0]!.message);
  // Printing has pinned the sheets where they lay, in the design itself.
  const name = computed.value.patterns[0]!.pattern.name;
  expect(Object.keys(read.value.design.grids)).toEqual([name]);
  const theirs = await readPages(await printPattern(computed.value, name, readFonts()));

  expect(own.length).toBeGreaterThan(computed.value.patterns[0]!.plan.sheets.length);
  expect(own.map(({ label }) => label)).toEqual(theirs.map(({ label }) => label));
  for (const [i, mine] of own.entries()) {
    const other = theirs[i]!;
    expect(mine.texts.map(({ text }) => text)).toEqual(other.texts.map(({ text }) => text));
    expect(mine.paths.length).toBe(other.paths.length);
    const numbers = (paged: typeof mine) => [
      ...paged.texts.flatMap(({ at }) => [at.x, at.y]),
      ...paged.paths.flatMap(({ lines }) => lines.flat().flatMap(({ x, y }) => [x, y])),
    ];
    const [a, b] = [numbers(mine), numbers(other)];
    expect(a.length).toBe(b.length);
    expect(Math.max(...a.map((value, at) => Math.abs(value - b[at]!)))).toBeLessThan(CLOSE);
  }
  expect(troubles).toEqual([]);
  await context.close();
});

test('a pattern is dragged on its sheets and turned, taken back, and left to the search again', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await openSheets(page);
  const found = await countOf(page);
  const laid = await page.locator('.laid-pattern').getAttribute('transform');
  const search = page.getByRole('button', { name: 'Let the search lay it' });
  expect(await search.isDisabled()).toBe(true);

  const box = (await page.locator('.lay-ground').boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width / 2 + 30, box.y + box.height / 2 + 12, { steps: 4 });
  await page.mouse.up();
  await expect.poll(() => search.isDisabled()).toBe(false);
  await expect.poll(() => page.locator('.laid-pattern').getAttribute('transform')).not.toBe(laid);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.locator('.laid-pattern').getAttribute('transform')).toBe(laid);

  await page.locator('.lay-ground').press('Shift+ArrowRight');
  await expect.poll(() => search.isDisabled()).toBe(false);
  await page.getByRole('button', { name: '+90°' }).click();
  const turned = await page.getByLabel('Turn, degrees').inputValue();
  expect(Number(turned) % 90).not.toBeNaN();
  await expect.poll(() => search.isDisabled()).toBe(false);
  await search.click();
  await expect.poll(() => page.locator('.laid-pattern').getAttribute('transform')).toBe(laid);
  expect(await countOf(page)).toBe(found);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a printer is measured once and kept for other designs; what no printer explains is refused', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await openSheets(page);
  await page.getByLabel('Name of the printer').fill('studio');
  await page.getByLabel('Long bar measures').fill('200');
  await page.getByLabel('Long bar measures').press('Enter');
  await page.getByRole('button', { name: 'Take these readings' }).click();
  await page.locator('.panel .problem[role=alert]').waitFor();

  const said = await page.getByText(/measure its bars:/).textContent();
  const long = Number(/: (\d+) mm along/.exec(said!)![1]);
  await page.getByLabel('Long bar measures').fill(String(long - 0.5));
  await page.getByLabel('Long bar measures').press('Enter');
  await page.getByRole('button', { name: 'Take these readings' }).click();
  const factor = ((100 * long) / (long - 0.5)).toFixed(3);
  await page.getByText(`Printed ${factor} % along`).waitFor();

  await beginDesign(page, app.address, 'Straight stretcher');
  await openSheets(page);
  await page.getByLabel('Kept printers').selectOption('studio');
  await page.getByText(`Printed ${factor} % along`).waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});
