import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { test } from './support/app.ts';

const SOUND = readFileSync('demo/bench-leg.json', 'utf8');

/** Ten ways in which a file comes to grief, each with a word that the message must have. */
const DAMAGED: readonly { readonly name: string; readonly bytes: Buffer; readonly says: RegExp }[] = [
  { name: 'empty.json', bytes: Buffer.alloc(0), says: /not a design file.*empty/ },
  { name: 'half.json', bytes: Buffer.from(SOUND.slice(0, SOUND.length / 2)), says: /ends too soon/ },
  {
    name: 'picture.json',
    bytes: readFileSync('src/web/public/icon-192.png'),
    says: /not a design file.*no text/,
  },
  {
    name: 'newer.json',
    bytes: Buffer.from(SOUND.replace('"legwright": 1', '"legwright": 7')),
    says: /7|newer/,
  },
  { name: 'older.json', bytes: Buffer.from(SOUND.replace('"legwright": 1', '"legwright": 0')), says: /0/ },
  { name: 'other.json', bytes: Buffer.from('{"some": "other file"}'), says: /legwright/ },
  { name: 'list.json', bytes: Buffer.from('[1, 2, 3]'), says: /expected/ },
  { name: 'no-form.json', bytes: Buffer.from(SOUND.replace('"form":', '"farm":')), says: /farm/ },
  {
    name: 'wrong-kind.json',
    bytes: Buffer.from(SOUND.replace(/"patterns": \[/, '"patterns": "all", "more": [')),
    says: /patterns/,
  },
  { name: 'twice.json', bytes: Buffer.from(SOUND + SOUND), says: /end|JSON/i },
];

const choose = (page: Page, name: string, buffer: Buffer): Promise<void> =>
  page.locator('input[type=file]').setInputFiles({ name, mimeType: 'application/json', buffer });

test('damaged, older and newer files are refused in words that name what is wrong, and are kept as they came', async ({
  app,
}) => {
  const { page, context, troubles } = await app.visitor();
  await page.goto(`${app.address}#/designs`);
  for (const { name, bytes, says } of DAMAGED) {
    await choose(page, name, bytes);
    const refused = page.locator('.refused');
    await refused.getByText(`${name} cannot be used as it is`).waitFor();
    expect(await refused.locator('li').allTextContents(), name).toEqual(
      expect.arrayContaining([expect.stringMatching(says)]),
    );
    const kept = page.locator('.kept-files li', { hasText: name });
    await kept.waitFor();
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      kept.getByRole('button', { name: 'Save it again' }).click(),
    ]);
    expect(readFileSync(await download.path()).equals(bytes), name).toBe(true);
  }
  // Nothing of them has become a design.
  expect(await page.locator('.card').count()).toBe(0);
  // A sound file is taken in, and is saved as it came.
  await choose(page, 'bench-leg.json', Buffer.from(SOUND));
  await page.locator('.board .scene').waitFor();
  await page.goto(`${app.address}#/designs`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page
      .locator('.card')
      .getByRole('button', { name: /^Save as a file:/ })
      .click(),
  ]);
  expect(readFileSync(await download.path(), 'utf8')).toBe(SOUND);
  expect(troubles).toEqual([]);
  await context.close();
});

test('designs are renamed, copied, deleted and brought back', async ({ app }) => {
  const { page, context, troubles } = await app.visitor();
  await page.goto(`${app.address}#/designs`);
  await choose(page, 'bench-leg.json', Buffer.from(SOUND));
  await page.locator('.board .scene').waitFor();
  await page.goto(`${app.address}#/designs`);
  const card = page.locator('.card');
  await card.getByRole('button', { name: 'Rename' }).click();
  await page.getByLabel('Name of the design').fill('Leg of the long bench');
  await page.getByLabel('Name of the design').press('Enter');
  await page.locator('.card', { hasText: 'Leg of the long bench' }).waitFor();
  await card.getByRole('button', { name: 'Copy' }).click();
  const copy = page.locator('.card', { hasText: 'Leg of the long bench, copy' });
  await copy.waitFor();
  await copy.getByRole('button', { name: 'Delete' }).click();
  await page.getByText('Leg of the long bench, copy is deleted.').waitFor();
  expect(await card.count()).toBe(1);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await copy.waitFor();
  // A name is part of the design: it can be taken back like any other change.
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.locator('.design-name .name', { hasText: JSON.parse(SOUND).name as string }).waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});
