import { readFileSync } from 'node:fs';
import { expect } from 'vitest';
import { compute, readDesign, writeDesign } from '../../src/design/index.ts';
import { sampleDesign } from '../design/sample-design.ts';
import { beginDesign, fieldOf, figuresShown, settled, test } from './support/app.ts';

test('who is new begins with a form, types a figure where it stands, takes it back, and saves the file that the command line reads', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await page.goto(app.address);
  // Nothing is in hand yet: the forms are shown.
  await page.locator('.forms button').first().waitFor();
  await beginDesign(page, app.address, 'Shallow V trestle');
  expect(await figuresShown(page)).toContain('735');

  // A dimension is clicked and typed where it stands, in another unit: the parameter follows, and all that hangs on it.
  await page.getByRole('button', { name: /^overall height: 735/ }).click();
  const editor = page.locator('.figure-editor');
  await editor.getByLabel('overall height').fill('29 in');
  // The field is taken once it is known what the figure follows.
  await editor.locator('.hint').waitFor({ state: 'detached' });
  await editor.getByLabel('overall height').press('Enter');
  await expect.poll(() => figuresShown(page)).toContain('736.6');
  expect(await fieldOf(page, 'Overall height').inputValue()).toBe('29 in');

  // A figure that no parameter is by itself: the underside follows the height or the thickness, whichever is chosen.
  await page.getByRole('button', { name: /^underside of the top: 708.6/ }).click();
  await editor.getByRole('combobox').selectOption('Thickness of the top');
  await editor.getByLabel('underside of the top').fill('706,6');
  await editor.getByLabel('underside of the top').press('Enter');
  await expect.poll(() => fieldOf(page, 'Thickness of the top').inputValue()).toBe('30 mm');

  // What cannot be read is refused in words, and changes nothing.
  await fieldOf(page, 'Stock thickness').fill('thick');
  await page.locator('.figures .problem').first().waitFor();
  await fieldOf(page, 'Stock thickness').press('Escape');
  expect(await fieldOf(page, 'Stock thickness').inputValue()).toBe('36 mm');

  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('button', { name: 'Undo' }).click();
  expect(await fieldOf(page, 'Overall height').inputValue()).toBe('735 mm');
  await page.getByRole('button', { name: 'Redo' }).click();
  await expect.poll(() => figuresShown(page)).toContain('736.6');
  await settled(page);

  // The sheets counted here are those that the command line makes of the file.
  const shown = await page.locator('.title-block dd').last().textContent();
  await page.goto(`${app.address}#/designs`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Save as a file: Shallow V trestle' }).click(),
  ]);
  const read = readDesign(readFileSync(await download.path(), 'utf8'), 'saved.json');
  expect(read.ok).toBe(true);
  if (!read.ok) return;
  expect(read.value.design.parameters.overall_height).toBe('29 in');
  const computed = compute(read.value.design);
  expect(computed.ok).toBe(true);
  if (!computed.ok) return;
  const sheets = computed.value.patterns.reduce((sum, { plan }) => sum + plan.sheets.length, 0);
  expect(shown).toContain(String(sheets));
  expect(troubles).toEqual([]);
  await context.close();
});

test('a point of the form is pulled with the arrow keys and with the pointer; what follows is one step to take back', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Shallow V trestle');
  const handle = page.getByRole('button', { name: /^Underside of the top: pull/ });
  await handle.focus();
  await page.keyboard.press('ArrowUp');
  await expect.poll(() => fieldOf(page, 'Overall height').inputValue()).toBe('736 mm');
  await page.keyboard.press('Shift+ArrowDown');
  await expect.poll(() => fieldOf(page, 'Overall height').inputValue()).toBe('726 mm');

  const box = (await handle.locator('.handle-dot').boundingBox())!;
  const at = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  await page.mouse.move(at.x, at.y);
  await page.mouse.down();
  await page.mouse.move(at.x, at.y - 4, { steps: 2 });
  await page.mouse.move(at.x, at.y - 9, { steps: 2 });
  // While it is held the figures move, but nothing is kept.
  await page.locator('.readout.pulling').waitFor();
  await page.mouse.up();
  await page.locator('.readout.pulling').waitFor({ state: 'detached' });
  const pulled = await expect
    .poll(() => fieldOf(page, 'Overall height').inputValue())
    .not.toBe('726 mm')
    .then(() => fieldOf(page, 'Overall height').inputValue());
  expect(Number.parseFloat(pulled)).toBeGreaterThan(728);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => fieldOf(page, 'Overall height').inputValue()).toBe('726 mm');
  expect(troubles).toEqual([]);
  await context.close();
});

test('a finding leads to its place, and a figure that cannot be is told from one that can', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Shallow V trestle');
  await settled(page);
  await page.locator('.finding.caution button').first().click();
  await page.locator('.scene .line.chosen').first().waitFor({ state: 'attached' });
  // What cannot be is said at its field, which does not take it; the design stays as it was.
  await fieldOf(page, 'Overall height').fill('5 m');
  await fieldOf(page, 'Overall height').press('Enter');
  const problem = page.locator('.figures .problem');
  await problem.filter({ hasText: /660 mm to 780 mm/ }).waitFor();
  expect(await page.locator('.finding.stop').count()).toBe(0);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);
  await fieldOf(page, 'Overall height').press('Escape');
  await problem.waitFor({ state: 'detached' });
  expect(troubles).toEqual([]);
  await context.close();
});

test('a batten is bent by its nail with the comb beside it; in inches every length stays what it is', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Curved leg');
  await page.getByLabel('Curvature comb').check();
  const comb = page.locator('.comb path').first();
  const before = await comb.getAttribute('d');
  await page.getByRole('button', { name: /^Belly, outer edge: pull/ }).focus();
  await page.keyboard.press('Shift+ArrowLeft');
  await expect.poll(() => comb.getAttribute('d')).not.toBe(before);

  const height = await fieldOf(page, 'Overall height').inputValue();
  await page.getByLabel('Unit of lengths').selectOption('in');
  await expect.poll(() => figuresShown(page).then((all) => all.join(' '))).toMatch(/″/);
  expect(await fieldOf(page, 'Overall height').inputValue()).toBe(height);
  await fieldOf(page, 'Overall height').fill('28 3/4');
  await fieldOf(page, 'Overall height').press('Enter');
  // In millimetres again what was typed bare says what it meant.
  await page.getByLabel('Unit of lengths').selectOption('mm');
  await expect.poll(() => fieldOf(page, 'Overall height').inputValue()).toBe('28 3/4 in');
  expect(troubles).toEqual([]);
  await context.close();
});

test('what stops a design has a button with the figure that cures it: the end of a range, or what a check of the form asks for', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  // A file may hold what no field would take: the end of the range is offered.
  const low = sampleDesign('raked-table', ['leg']);
  const file = { ...low, parameters: { ...low.parameters, apron_depth: '10 mm' } };
  await page.goto(`${app.address}#/designs`);
  await page.locator('input[type=file]').setInputFiles({
    name: 'low.json',
    mimeType: 'application/json',
    buffer: Buffer.from(writeDesign(file)),
  });
  const type = async (label: string, text: string): Promise<void> => {
    await fieldOf(page, label).fill(text);
    await fieldOf(page, label).press('Enter');
  };
  await page.getByRole('button', { name: /^Set Depth of the aprons: / }).click();
  await expect.poll(() => fieldOf(page, 'Depth of the aprons').inputValue()).toMatch(/^5\d mm$/);
  await type('Rise of the arch', '28 mm');
  await page.getByRole('button', { name: /^Set Rise of the arch: / }).click();
  await expect.poll(() => fieldOf(page, 'Rise of the arch').inputValue()).not.toBe('28 mm');
  await settled(page);
  expect(await page.locator('.finding.stop').count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});

test('what only weights and standing tell stays in view while it is reckoned anew', async ({ app }) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Shallow V trestle');
  await page.locator('.notes.whole').waitFor();
  const before = await page.locator('.finding').count();
  // Every number of findings that is shown from here on.
  await page.evaluate(() => {
    const counts: number[] = [];
    (globalThis as unknown as { counts: number[] }).counts = counts;
    const list = document.querySelector('.findings')!;
    new MutationObserver(() => counts.push(list.children.length)).observe(list, { childList: true });
  });
  await fieldOf(page, 'Thickness of the top').fill('29 mm');
  await fieldOf(page, 'Thickness of the top').press('Enter');
  await page.locator('.notes:not(.whole)').waitFor();
  await page.locator('.notes.whole').waitFor();
  const counts = await page.evaluate(() => (globalThis as unknown as { counts: number[] }).counts);
  expect(Math.min(...counts, before)).toBe(before);
  expect(troubles).toEqual([]);
  await context.close();
});
