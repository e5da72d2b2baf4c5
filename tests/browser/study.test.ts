import { expect } from 'vitest';
import { beginDesign, test } from './support/app.ts';

test('a wall of bases across the ranges of two figures; a click takes one, and undo takes it back', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await page.goto(`${app.address}#/study`);
  const tiles = page.locator('.study-tile');
  await page.locator('.study-tile.made').first().waitFor();
  expect(await tiles.count()).toBe(5);
  const one = page.getByRole('button', { name: /^Take Splay 11°: \d caution/ });
  await one.waitFor();
  await one.click();
  const splay = page.getByLabel('Splay', { exact: true });
  await splay.waitFor();
  expect(await splay.inputValue()).toBe('11°');
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(() => splay.inputValue()).not.toBe('11°');
  await page.goto(`${app.address}#/study`);
  const down = page.getByRole('group', { name: 'Down' });
  await down.getByLabel('Figure').selectOption({ label: 'Width at the head' });
  await expect.poll(() => tiles.count()).toBe(25);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a link made on one visit opens the same design on another, and a cut one says so', async ({ app }) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Curved leg');
  await page.goto(`${app.address}#/designs`);
  await page.getByRole('button', { name: /^Link to/ }).click();
  await page.getByLabel('The link').waitFor();
  const link = await page.getByLabel('The link').inputValue();
  expect(link.startsWith(`${app.address}#design=1.`)).toBe(true);
  await page.getByLabel(/^From a link/).fill(link.slice(0, -9));
  await page.getByRole('button', { name: 'Open it' }).click();
  await page.getByText(/The link is cut short/).waitFor();
  expect(troubles).toEqual([]);
  await context.close();
  const other = await app.visitor();
  await other.page.goto(link);
  await other.page.getByLabel('Width at the belly').waitFor();
  expect(new URL(other.page.url()).hash).toBe('#/shape');
  expect(other.troubles).toEqual([]);
  await other.context.close();
});
