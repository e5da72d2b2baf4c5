import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { beginDesign, settled, test } from './support/app.ts';

const SCREENS = ['shape', 'joints', 'wood', 'routing', 'sheets', 'book', 'study', 'own-shape', 'designs'];

/** What axe-core finds against WCAG 2.2 A and AA, a line each. */
async function violations(page: Page): Promise<readonly string[]> {
  const found = await page.evaluate(async () => {
    const run = (globalThis as unknown as { axe: typeof axe }).axe;
    const { violations: all } = await run.run(document, {
      runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'],
    });
    return all.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' · ')}`);
  });
  return found;
}

for (const colorScheme of ['light', 'dark'] as const) {
  test(`nothing on any screen keeps anybody out, by axe-core, ${colorScheme}`, async ({ app }) => {
    // The page's policy lets no other script in: the test brings axe-core past it.
    const { page, context, troubles } = await app.visitor({ colorScheme, bypassCSP: true });
    await beginDesign(page, app.address, 'Shallow V trestle');
    await settled(page);
    await page.addScriptTag({ content: axe.source });
    const found: string[] = [];
    for (const screen of SCREENS) {
      await page.evaluate((name) => {
        location.hash = `#/${name}`;
      }, screen);
      await page.locator(`.page-${screen} main > :not(.waiting, h1)`).first().waitFor();
      await page.waitForTimeout(300);
      for (const each of await violations(page)) found.push(`${screen}: ${each}`);
    }
    expect(found).toEqual([]);
    expect(troubles).toEqual([]);
    await context.close();
  });
}

test('on a phone, and with text twice as large, nothing is cut off sideways', async ({ app }) => {
  const { page, context } = await app.visitor({ viewport: { width: 390, height: 844 } });
  await beginDesign(page, app.address, 'Splayed leg');
  await settled(page);
  const tooWide = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  for (const size of ['100%', '200%']) {
    await page.evaluate((to) => {
      document.documentElement.style.fontSize = to;
    }, size);
    for (const screen of ['shape', 'designs']) {
      await page.evaluate((name) => {
        location.hash = `#/${name}`;
      }, screen);
      await page.locator(`.page-${screen}`).waitFor();
      expect(await tooWide(), `${screen} at ${size}`).toBeLessThanOrEqual(0);
    }
  }
  await context.close();
});

test('with the keyboard alone one begins a form, changes a figure and goes through the views', async ({
  app,
}) => {
  const { page, context } = await app.visitor();
  await page.goto(`${app.address}#/designs`);
  await page.locator('.forms button').first().waitFor();
  await page.locator('.forms button').first().focus();
  await page.keyboard.press('Enter');
  await page.locator('.board .scene').waitFor();
  // The new drawing has the focus; what can be done with it comes next.
  await page.keyboard.press('Tab');
  expect(await page.evaluate(() => document.activeElement?.getAttribute('role'))).toBe('tab');
  await page.keyboard.press('ArrowRight');
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('From the left');
  await page.locator('.board .scene > svg').waitFor();
  // What is not drawn yet cannot be reached.
  await page.locator('.scene > svg[aria-label="From the left"]').waitFor();
  const isDrawing = () => page.evaluate(() => document.activeElement?.matches('.scene > svg') === true);
  for (let i = 0; i < 6 && !(await isDrawing()); i++) await page.keyboard.press('Tab');
  expect(await isDrawing()).toBe(true);
  await page.keyboard.press('+');
  await page.keyboard.press('0');
  await context.close();
});
