import { expect } from 'vitest';
import { beginDesign, PATIENCE, test } from './support/app.ts';

test('the bit stands where the pointer is, and a bit too large for a hollow is seen not to reach into it', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Panel leg');
  await page.goto(`${app.address}#/routing`);
  await page.locator('.tool-ground').waitFor();
  await page.getByText('The bit leaves the part as it is drawn.').waitFor();

  const box = (await page.locator('.tool-ground').boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.getByText(/: the bit comes to the line\.$/).waitFor();
  await page.locator('.tool-lens .cutter').waitFor();
  const stood = await page.locator('.tool .cutter').getAttribute('cy');
  // By keys as well: the slider moves the bit along its path.
  await page.getByLabel('Move the bit along its path').focus();
  for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
  await expect.poll(() => page.locator('.tool .cutter').getAttribute('cy')).not.toBe(stood);

  await page.getByLabel('Diameter of the bit').fill('80 mm');
  await page.getByLabel('Diameter of the bit').press('Enter');
  await page.getByLabel('Diameter of the bearing').fill('80 mm');
  await page.getByLabel('Diameter of the bearing').press('Enter');
  const left = page.getByRole('button', { name: /stays to be pared$/ });
  await left.first().waitFor();
  await left.first().click();
  await page.getByText(/of wood stays that the bit does not reach/).waitFor();
  await page.locator('.tool-lens .gap').waitFor();

  await page.getByLabel('feed', { exact: true }).uncheck();
  expect(await page.locator('.feed-arrows').count()).toBe(0);
  expect(troubles).toEqual([]);
  await context.close();
});

test('the base stands in space, turned by keys, or the page says that it cannot draw there', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Stool base');
  await page.getByRole('tab', { name: 'In space' }).click();
  const canvas = page.locator('.space canvas');
  const missing = page.getByText('This browser cannot draw in space.');
  await canvas.or(missing).first().waitFor();
  if (!(await missing.isVisible())) {
    await page.locator('.space > .waiting').waitFor({ state: 'detached', timeout: PATIENCE });
    const shot = async () => (await canvas.screenshot()).toString('base64');
    const before = await shot();
    await canvas.focus();
    for (let i = 0; i < 3; i++) await page.keyboard.press('ArrowRight');
    await expect.poll(shot).not.toBe(before);
  }
  expect(troubles).toEqual([]);
  await context.close();
});
