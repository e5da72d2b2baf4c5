import { Buffer } from 'node:buffer';
import { PNG } from 'pngjs';
import { expect } from 'vitest';
import { beginDesign, test } from './support/app.ts';

test('an outline drawn by clicks and by typed points, closed where it began, becomes a design like any other', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await page.goto(`${app.address}#/own-shape`);
  await page.locator('.own-drawing .ground').waitFor();
  const point = async (across: string, up: string): Promise<void> => {
    for (const [label, text] of [
      ['Across', across],
      ['Up', up],
    ] as const) {
      await page.getByLabel(label, { exact: true }).fill(text);
      await page.getByLabel(label, { exact: true }).press('Enter');
    }
    await page.getByRole('button', { name: 'Add the point' }).click();
  };
  await point('100 mm', '50 mm');
  await point('180 mm', '50 mm');
  await page.getByRole('radio', { name: 'Arc' }).check();
  await point('150 mm', '350 mm');
  await point('200 mm', '650 mm');
  await page.getByRole('radio', { name: 'Line' }).check();
  // A click near the level of the last point is held to it.
  const box = (await page.locator('.own-drawing .ground').boundingBox())!;
  const zoom = box.height / 900;
  await page.mouse.click(box.x + 100 * zoom, box.y + box.height - 653 * zoom);
  await page.getByRole('button', { name: 'Close it' }).click();
  await page.getByText('1 closed outline.').waitFor();
  await page.getByRole('button', { name: 'Make it a form' }).click();
  await page.getByLabel('Length', { exact: true }).waitFor();
  expect(await page.getByLabel('Length', { exact: true }).inputValue()).toBe('600 mm');
  expect(await page.getByLabel('Width', { exact: true }).inputValue()).toBe('100 mm');
  expect(troubles).toEqual([]);
  await context.close();
});

test('a photograph is made true from the corners of a sheet, says how true, and outlives the page', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await page.goto(`${app.address}#/own-shape`);
  const png = new PNG({ width: 800, height: 600 });
  png.data.fill(220);
  await page
    .locator('input[accept="image/*"]')
    .setInputFiles({ name: 'leg.png', mimeType: 'image/png', buffer: Buffer.from(PNG.sync.write(png)) });
  await page.getByText('Mark the corners of the sheet, clockwise from the upper left one.').waitFor();
  const box = (await page.locator('.own-drawing .ground').boundingBox())!;
  const corners = [
    [300, 120],
    [510, 125],
    [530, 430],
    [280, 420],
  ] as const;
  for (const [at, [x, y]] of corners.entries()) {
    await page.mouse.click(box.x + (x * box.width) / 800, box.y + (y * box.height) / 600);
    if (at < 3) await page.getByText(`${at + 1} of 4 corners marked.`).waitFor();
  }
  await page.getByText(/^True to about [\d.]+ mm at the sheet/).waitFor();
  expect(await page.locator('.underlay').evaluate((image) => getComputedStyle(image).transform)).toMatch(
    /^matrix3d/,
  );
  // Picture and corners are there again when the page is, and what was drawn over it.
  await page.getByRole('button', { name: 'Add the point' }).click();
  await page.locator('.own-drawing circle').first().waitFor();
  await page.reload();
  await page.getByText(/^True to about [\d.]+ mm at the sheet/).waitFor();
  await page.locator('.own-drawing circle').first().waitFor();
  expect(await page.locator('.underlay').count()).toBe(1);
  expect(troubles).toEqual([]);
  await context.close();
});

test('the outline of an SVG file is taken in; a file without one is told', async ({ app }) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await page.goto(`${app.address}#/own-shape`);
  const take = (text: string) =>
    page
      .locator('input[accept=".svg,image/svg+xml"]')
      .setInputFiles({ name: 'leg.svg', mimeType: 'image/svg+xml', buffer: Buffer.from(text) });
  await take('<svg xmlns="http://www.w3.org/2000/svg" width="90mm" height="9mm" viewBox="0 0 90 9"></svg>');
  await page.getByText('The drawing has no closed outline.').waitFor();
  await take(
    '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="200mm" viewBox="0 0 100 200"><path fill-rule="evenodd" d="M0 0H80V180H0Z M20 20H60V60H20Z"/></svg>',
  );
  await page.getByText('1 outline with 1 opening.').waitFor();
  await page.getByRole('button', { name: 'Make it a form' }).click();
  await page.getByLabel('Length', { exact: true }).waitFor();
  expect(await page.getByLabel('Length', { exact: true }).inputValue()).toBe('180 mm');
  expect(troubles).toEqual([]);
  await context.close();
});
