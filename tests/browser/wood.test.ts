import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { type TakenPhotograph, takeWoodPhotograph } from '../support/take-wood-photograph.ts';
import { test, type Visitor } from './support/app.ts';

/** Of the long table's board A, mm. */
const BOARD = { length: 2150, width: 235 };

async function openLongTable({ page }: Visitor, address: string): Promise<void> {
  await page.goto(`${address}#/designs`);
  await page
    .locator('input[type=file]')
    .first()
    .setInputFiles({
      name: 'long-table.json',
      mimeType: 'application/json',
      buffer: readFileSync('demo/long-table.json'),
    });
  await page.locator('.top-strip, header').getByText('Reading room: long table').first().waitFor();
  await page.goto(`${address}#/wood`);
  await page.locator('.board-bench').waitFor();
}

/** Pulls the four known points onto the corners of the board. */
async function markCorners(page: Page, { corners }: TakenPhotograph): Promise<void> {
  for (const [k, [x, y]] of corners.entries()) {
    const from = (await page.locator('.pin-ring').nth(k).boundingBox())!;
    const to = await page.evaluate(
      ([px, py]) => {
        const svg = document.querySelector<SVGSVGElement>('.marking svg')!;
        const place = new DOMPoint(px, py).matrixTransform(svg.getScreenCTM()!);
        return { x: place.x, y: place.y };
      },
      [x, y] as const,
    );
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x, to.y, { steps: 3 });
    await page.mouse.up();
    await page.locator('.pin.held').waitFor({ state: 'detached' });
    // What follows is said above the picture and may move it: the next point is looked for where it then is.
    await page.locator('.notes.whole').waitFor();
  }
}

/** Sums of the colours in rows of the sheet of figures; none before it is painted. */
const coloursOfPieces = (page: Page): Promise<readonly number[]> =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.figure-sheet canvas');
    if (canvas === null || canvas.width * canvas.height === 0) return [];
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    const sums: number[] = [];
    for (let y = 0; y < canvas.height; y += 4) {
      let sum = 0;
      for (let x = 0; x < canvas.width; x++) sum += data[4 * (y * canvas.width + x)]!;
      sums.push(sum);
    }
    return sums;
  });

/** How many rows of the board's picture are seen down its middle, and how many of them are the bench it lay on. */
const edgesOfBoard = (page: Page): Promise<{ readonly rows: number; readonly dark: number }> =>
  page.evaluate(() => {
    const canvas = document.querySelector<HTMLCanvasElement>('.board-bench canvas')!;
    const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
    const wood = Array.from({ length: canvas.height }, (_, y) => y).filter((y) => {
      const at = 4 * (y * canvas.width + Math.round(canvas.width / 2));
      return data[at + 3]! > 200;
    });
    const bench = wood.filter((y) => data[4 * (y * canvas.width + Math.round(canvas.width / 2))]! < 90);
    return { rows: wood.length, dark: bench.length };
  });

test('a photograph is marked, lies true under the layout, and the pieces carry its figure as the board is moved', async ({
  app,
}) => {
  const visitor = await app.visitor();
  const { page, troubles, context } = visitor;
  const photo = await takeWoodPhotograph(page, { width: 1500, board: BOARD, seed: 7 });
  await openLongTable(visitor, app.address);
  await page.getByText('Give a board a photograph and mark its known points').waitFor();
  await page.getByLabel('A photograph of A').setInputFiles(photo);
  await page.locator('.pin').first().waitFor();
  await markCorners(page, photo);
  await page.getByText(/^True and to scale: a pixel is [12]\.\d+ mm/).waitFor();
  await page.getByRole('button', { name: 'Done' }).click();
  await page.locator('.board-bench.over-figure').waitFor();
  await page.getByText('making the photograph true').waitFor({ state: 'detached' });
  // True: where the photograph says that the board ends, its picture is wood to the very edge.
  await expect.poll(async () => (await edgesOfBoard(page)).dark).toBeLessThanOrEqual(2);
  expect((await edgesOfBoard(page)).rows).toBeGreaterThan(20);
  await expect.poll(async () => Math.max(0, ...(await coloursOfPieces(page)))).toBeGreaterThan(0);
  const before = await coloursOfPieces(page);
  // By the pointer, and while it is held the pieces follow.
  const body = (await page.locator('.thing-body').first().boundingBox())!;
  await page.mouse.move(body.x + body.width / 2, body.y + body.height / 2);
  await page.mouse.down();
  await page.mouse.move(body.x + body.width / 2 + 60, body.y + body.height / 2, { steps: 4 });
  await expect.poll(() => coloursOfPieces(page)).not.toEqual(before);
  await page.mouse.up();
  await page.locator('.thing.held').waitFor({ state: 'detached' });
  const told = /^leg BL, FL, FR, BR: ([\d.]+) mm along/;
  const along = async (): Promise<number> =>
    Number(told.exec((await page.locator('.thing-tools span').textContent()) ?? '')![1]);
  await expect.poll(along).toBeGreaterThan(250);
  // By keys, and back.
  const now = await along();
  await page.locator('.thing-body').first().focus();
  await page.keyboard.press('Shift+ArrowRight');
  await expect.poll(along).toBeCloseTo(now + 10, 1);
  await page.getByRole('button', { name: /^Undo/ }).click();
  await expect.poll(along).toBeCloseTo(now, 1);
  // A reload loses nothing; the design's own file holds no picture.
  await page.reload();
  await page.locator('.board-bench.over-figure').waitFor();
  await page.goto(`${app.address}#/shape`);
  await page.getByRole('tab', { name: 'From the left' }).click();
  await page.locator('.board-drawing .figure-canvas canvas').waitFor();
  await expect
    .poll(() =>
      page.evaluate(() => {
        const canvas = document.querySelector<HTMLCanvasElement>('.board-drawing .figure-canvas canvas')!;
        const { data } = canvas.getContext('2d')!.getImageData(0, 0, canvas.width, canvas.height);
        return data.some((value, at) => at % 4 === 3 && value > 200);
      }),
    )
    .toBe(true);
  expect(troubles).toEqual([]);
  await context.close();
});

test('a plug is moved over its board, and a field refuses what it cannot hold', async ({ app }) => {
  const visitor = await app.visitor();
  const { page, troubles, context } = visitor;
  await openLongTable(visitor, app.address);
  await page.getByRole('tab', { name: 'Mending' }).click();
  await page.getByRole('button', { name: 'Add a patch' }).click();
  const plug = page.getByRole('button', { name: 'patch 1: move and turn the plug on the board' });
  await plug.waitFor();
  await page.getByText(/Collar that fits: 14\.29 mm/).waitFor();
  await page.getByText('The plug lies in sound wood.').waitFor();
  // Onto the leg that is laid there, from the middle of the board at 1075 mm.
  await plug.focus();
  for (let k = 0; k < 40; k++) await page.keyboard.press('Shift+ArrowLeft');
  for (let k = 0; k < 4; k++) await page.keyboard.press('Shift+ArrowDown');
  await page.getByText('The plug runs into what is laid there, or off the board.').waitFor();
  const price = page.getByLabel('Price per board foot').first();
  await price.fill('cheap');
  await page.getByText('A sum of money is expected, such as 7.80.').waitFor();
  await price.press('Escape');
  expect(await price.inputValue()).toBe('7.8');
  const name = page.getByLabel('Name', { exact: true }).first();
  await name.fill('B');
  await page.getByText('Another board is called B.').waitFor();
  await name.fill('crotch');
  await name.press('Enter');
  await page.getByRole('tab', { name: 'Boards' }).click();
  // What lay on it lies on it still, under its new name.
  await page.getByRole('radio', { name: 'crotch', exact: true }).waitFor();
  await page.locator('.thing-body').first().waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});
