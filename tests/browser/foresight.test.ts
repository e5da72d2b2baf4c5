import { expect } from 'vitest';
import { beginDesign, fieldOf, figuresShown, settled, test } from './support/app.ts';

/** Watches in the page what its engine foresees; later its questions can be kept from the engine. */
function watchEngine(): void {
  const watch = { foreseen: 0, isDeaf: false };
  Object.assign(globalThis, { watch });
  const Heard = Worker;
  globalThis.Worker = class extends Heard {
    readonly #isEngine: boolean;
    constructor(address: string | URL, options?: WorkerOptions) {
      super(address, options);
      this.#isEngine = options?.name === 'engine';
      this.addEventListener('message', ({ data }) => {
        if (this.#isEngine && data.kind === 'foreseen') watch.foreseen += 1;
      });
    }
    override postMessage(message: { readonly kind?: string }): void {
      if (!(this.#isEngine && watch.isDeaf && message.kind === 'ask')) super.postMessage(message);
    }
  };
}

interface Watched {
  readonly watch: { foreseen: number; isDeaf: boolean };
}

test('what a figure will change is computed while it is typed: shown when it is taken, never before, never where it is not', async ({
  app,
}) => {
  const { page, troubles, context } = await app.visitor();
  await page.addInitScript(watchEngine);
  await beginDesign(page, app.address, 'Stool base');
  await settled(page);
  const before = await figuresShown(page);
  const height = fieldOf(page, 'Overall height');
  const foreseen = () => page.evaluate(() => (globalThis as unknown as Watched).watch.foreseen);
  const typeAndWait = async (typed: string): Promise<void> => {
    const known = await foreseen();
    await height.fill(typed);
    await expect.poll(foreseen).toBeGreaterThan(known);
  };

  await typeAndWait('461 mm');
  expect(await figuresShown(page)).toEqual(before);
  await height.press('Escape');
  expect(await figuresShown(page)).toEqual(before);
  expect(await page.getByRole('button', { name: 'Undo' }).isDisabled()).toBe(true);

  // From here on the engine hears no question: what is shown is what was foreseen.
  await typeAndWait('463 mm');
  await page.evaluate(() => {
    (globalThis as unknown as Watched).watch.isDeaf = true;
  });
  await height.press('Enter');
  await expect.poll(() => figuresShown(page)).toContain('463');
  await page.locator('.notes:is(.settled, .whole)').waitFor();
  // Another one than was foreseen waits for the engine.
  await height.fill('464 mm');
  await height.press('Enter');
  await page.locator('.notes.reckoning').waitFor();
  expect(await figuresShown(page)).toContain('463');
  expect(troubles).toEqual([]);
  await context.close();
});
