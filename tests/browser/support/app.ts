import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import {
  type Browser,
  type BrowserContext,
  type BrowserContextOptions,
  chromium,
  type Page,
} from 'playwright-core';
import { test as bare, vi } from 'vitest';
import { serveApp } from '../../../src/cli/app/serve-app.ts';

/** How long a test of the browser may take where others run beside it, ms. */
export const PATIENCE = 300_000;
vi.setConfig({ testTimeout: PATIENCE, hookTimeout: PATIENCE });

/** Where Debian and its kin put Chromium; CHROMIUM names another. */
const PLACES = [
  process.env.CHROMIUM,
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
];

const ARGUMENTS = [
  '--headless',
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];

export interface OpenedApp {
  readonly address: string;
  readonly browser: Browser;
  /** A browser that has never been here: its own store, its own offline files. What goes wrong in its pages is gathered. */
  readonly visitor: (options?: BrowserContextOptions) => Promise<Visitor>;
  readonly close: () => Promise<void>;
}

export interface Visitor {
  readonly context: BrowserContext;
  readonly page: Page;
  /** Faults and refusals that pages of this visitor told of: errors, requests that left the page or failed. */
  readonly troubles: readonly string[];
}

/** The built app on loopback and a browser to look at it with. */
export async function openApp(): Promise<OpenedApp> {
  const served = await serveApp(0);
  if (!served.ok) throw new Error(served.problems[0]!.message);
  const executablePath = PLACES.find((place) => place !== undefined && existsSync(place));
  if (executablePath === undefined)
    throw new Error(`no Chromium: run ${resolve('tests/system-packages.sh')}`);
  const browser = await chromium.launch({ executablePath, args: ARGUMENTS });
  const { address, close } = served.value;
  return {
    address,
    browser,
    visitor: async (options = {}) => {
      const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, ...options });
      context.setDefaultTimeout(60_000);
      const troubles: string[] = [];
      context.on('page', (page) => {
        page.on('pageerror', (error) => troubles.push(error.message));
        page.on('console', (message) => {
          if (message.type() === 'error') troubles.push(message.text());
        });
        page.on('request', (request) => {
          const url = new URL(request.url());
          if (!['blob:', 'data:'].includes(url.protocol) && url.origin !== new URL(address).origin) {
            troubles.push(`a request left the page: ${request.url()}`);
          }
        });
      });
      return { context, page: await context.newPage(), troubles };
    },
    close: async () => {
      await browser.close();
      close();
    },
  };
}

/** A test with the app before it, opened once for all tests of a file. */
export const test = bare.extend<{ readonly app: OpenedApp }>({
  app: [
    // biome-ignore lint/correctness/noEmptyPattern: a fixture names what it needs in a pattern, this one nothing
    async ({}, use) => {
      const app = await openApp();
      await use(app);
      await app.close();
    },
    { scope: 'file' },
  ],
});

/** Opens the app and begins a design of a form by its title; comes back once its drawing is there. */
export async function beginDesign(page: Page, address: string, title: string): Promise<void> {
  await page.goto(`${address}#/designs`);
  await page
    .locator('.forms')
    .getByRole('button', { name: new RegExp(`^${title}`) })
    .click();
  await page.locator('.board .scene').waitFor();
}

/** Waits until all that follows from the last change is shown; weights and standing may come later. */
export async function settled(page: Page): Promise<void> {
  await page.locator('.notes:is(.settled, .whole)').waitFor();
}

/** The field of a parameter by its label. */
export const fieldOf = (page: Page, label: string) =>
  page.locator('.figures').getByLabel(label, { exact: true });

/** The figures that the drawing shows, in its own order. */
export async function figuresShown(page: Page): Promise<readonly string[]> {
  return page.locator('.figures-drawn .figure').allTextContents();
}
