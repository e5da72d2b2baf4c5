import type { Page } from 'playwright-core';
import { expect } from 'vitest';
import { beginDesign, fieldOf, settled, test } from './support/app.ts';

async function type(page: Page, label: string, text: string): Promise<void> {
  await fieldOf(page, label).fill(text);
  await fieldOf(page, label).press('Enter');
}

const shows = (page: Page, label: string) => expect.poll(() => fieldOf(page, label).inputValue());

test('a page that is killed loses nothing: the last change and the whole of undo are there again', async ({
  app,
}) => {
  const { page, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await type(page, 'Overall height', '700 mm');
  await type(page, 'Overall height', '705 mm');
  await type(page, 'Overall height', '27 3/4 in');
  // As a crash of the tab does it: no handler of the page runs any more.
  const session = await context.newCDPSession(page);
  const killed = page.waitForEvent('crash');
  session.send('Page.crash').catch(() => undefined);
  await killed;
  const again = await context.newPage();
  await again.goto(app.address);
  await shows(again, 'Overall height').toBe('27 3/4 in');
  const undo = again.getByRole('button', { name: 'Undo' });
  await undo.click();
  await shows(again, 'Overall height').toBe('705 mm');
  await undo.click();
  await undo.click();
  expect(await undo.isDisabled()).toBe(true);
  await again.reload();
  // What was taken back can be made again, after a reload as well.
  await again.getByRole('button', { name: 'Redo' }).click();
  await shows(again, 'Overall height').toBe('700 mm');
  await context.close();
});

test('two tabs on one design keep the changes of both, and each sees those of the other', async ({ app }) => {
  const { page: one, context, troubles } = await app.visitor();
  await beginDesign(one, app.address, 'Splayed leg');
  const other = await context.newPage();
  await other.goto(app.address);
  await other.locator('.board .scene').waitFor();
  await type(one, 'Overall height', '702 mm');
  await shows(other, 'Overall height').toBe('702 mm');
  // At the same moment.
  await fieldOf(one, 'Overall height').fill('703 mm');
  await fieldOf(other, 'Splay').fill('9°');
  await Promise.all([fieldOf(one, 'Overall height').press('Enter'), fieldOf(other, 'Splay').press('Enter')]);
  for (const page of [one, other]) {
    await shows(page, 'Overall height').toBe('703 mm');
    await shows(page, 'Splay').toBe('9°');
  }
  await other.getByRole('button', { name: 'Undo' }).click();
  await other.getByRole('button', { name: 'Undo' }).click();
  await shows(one, 'Overall height').toBe('702 mm');
  expect(await fieldOf(one, 'Splay').inputValue()).not.toBe('9°');
  expect(troubles).toEqual([]);
  await context.close();
});

test('where the browser has no room left the page says so, goes on, and keeps what waited once there is room', async ({
  app,
}) => {
  const { page, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await settled(page);
  // As the browser refuses it, and only this: every write to the log.
  await page.evaluate(() => {
    const add = IDBObjectStore.prototype.add;
    Object.assign(globalThis, { restore: () => Object.assign(IDBObjectStore.prototype, { add }) });
    IDBObjectStore.prototype.add = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  });
  await type(page, 'Overall height', '711 mm');
  await page.getByRole('alert').getByText('no room left').waitFor();
  await type(page, 'Overall height', '712 mm');
  await shows(page, 'Overall height').toBe('712 mm');
  await page.evaluate(() => (globalThis as unknown as { restore: () => void }).restore());
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByRole('alert').waitFor({ state: 'detached' });
  await page.reload();
  await shows(page, 'Overall height').toBe('712 mm');
  await page.getByRole('button', { name: 'Undo' }).click();
  await shows(page, 'Overall height').toBe('711 mm');
  await context.close();
});

test('once opened it works without a network: another form is begun, drawn and kept', async ({ app }) => {
  const { page, context } = await app.visitor();
  await page.goto(app.address);
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  await context.setOffline(true);
  await page.reload();
  await beginDesign(page, app.address, 'Knee leg');
  await type(page, 'Overall height', '720 mm');
  await settled(page);
  await page.reload();
  await shows(page, 'Overall height').toBe('720 mm');
  await context.close();
});

test('a design that is deleted, brought back and opened again is drawn again', async ({ app }) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Stool base');
  await page.locator('.notes.whole').waitFor();
  await page.goto(`${app.address}#/designs`);
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.getByRole('button', { name: /back/i }).first().click();
  // Listed again: the form of that name stands below.
  await page.getByRole('button', { name: 'Save as a file: Stool base' }).waitFor();
  await page
    .getByRole('button', { name: /^Stool base/ })
    .first()
    .click();
  // Nothing of it has changed, but the page had let go of its drawing.
  await page.locator('.board .scene').waitFor();
  expect(troubles).toEqual([]);
  await context.close();
});

test('a deleted design gives its room back once it is let go for good, which is asked twice; others stay', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await beginDesign(page, app.address, 'Splayed leg');
  await type(page, 'Overall height', '711 mm');
  await beginDesign(page, app.address, 'Stool base');
  await type(page, 'Overall height', '450 mm');
  await page.goto(`${app.address}#/designs`);
  // A photograph as the wood screen keeps it.
  const keepPhotograph = (): Promise<void> =>
    new Promise((done) => {
      const opening = indexedDB.open('legwright');
      opening.onsuccess = () => {
        const transaction = opening.result.transaction(['designs', 'things'], 'readwrite');
        transaction.objectStore('designs').getAll().onsuccess = ({ target }) => {
          const kept = (target as IDBRequest<{ id: string; name: string }[]>).result;
          for (const { id } of kept)
            transaction.objectStore('things').put(new Blob(['x']), `photograph ${id} a.jpg`);
        };
        transaction.oncomplete = () => done(opening.result.close());
      };
    });
  await page.evaluate(keepPhotograph);
  const kept = (): Promise<readonly number[]> =>
    page.evaluate(
      () =>
        new Promise((done) => {
          const opening = indexedDB.open('legwright');
          opening.onsuccess = () => {
            const transaction = opening.result.transaction(['designs', 'changes', 'things']);
            const counts = [
              transaction.objectStore('designs').count(),
              transaction.objectStore('changes').count(),
              transaction.objectStore('things').count(IDBKeyRange.bound('photograph', 'photograph~')),
            ];
            transaction.oncomplete = () => {
              opening.result.close();
              done(counts.map(({ result }) => result));
            };
          };
        }),
    );
  expect(await kept()).toEqual([2, 2, 2]);
  const card = page.locator('.card', { hasText: 'Splayed leg' });
  await card.getByRole('button', { name: 'Delete' }).click();
  const letGo = page.getByRole('button', { name: 'Let it go for good: Splayed leg' });
  await letGo.click();
  await page.getByRole('button', { name: 'No, leave it' }).click();
  expect(await kept()).toEqual([2, 2, 2]);
  await letGo.click();
  await page.getByRole('button', { name: 'Let it go: Splayed leg' }).click();
  await letGo.waitFor({ state: 'detached' });
  await expect.poll(kept).toEqual([1, 1, 1]);
  await page.goto(`${app.address}#/shape`);
  await shows(page, 'Overall height').toBe('450 mm');
  expect(troubles).toEqual([]);
  await context.close();
});
