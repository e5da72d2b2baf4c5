import { spawn } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = fileURLToPath(new URL('../../', import.meta.url));
// Two folders below the project, as the bundle is that makers run: its forms and fonts are found from there.
const bundle = join(root, 'dist', `test-${process.pid}`);
let folder = '';

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'legwright-bundle-'));
  await build({ root, logLevel: 'error', build: { outDir: bundle, sourcemap: false } });
}, 120_000);
afterAll(() => {
  rmSync(folder, { recursive: true, force: true });
  rmSync(bundle, { recursive: true, force: true });
});

/** Runs the bundle in the folder; killed so many milliseconds after it begins to write, if given. */
function legwright(args: readonly string[], killAfter?: number) {
  const child = spawn(process.execPath, [join(bundle, 'main.js'), ...args], { cwd: folder });
  const watch =
    killAfter === undefined
      ? undefined
      : setInterval(() => {
          if (leftovers().length === 0) return;
          clearInterval(watch);
          setTimeout(() => child.kill('SIGKILL'), killAfter);
        }, 1);
  let out = '';
  let err = '';
  child.stdout.on('data', (chunk) => (out += chunk));
  child.stderr.on('data', (chunk) => (err += chunk));
  return new Promise<{ code: number | null; out: string; err: string }>((resolve) => {
    child.on('close', (code) => {
      clearInterval(watch);
      resolve({ code, out, err });
    });
  });
}

/** What a run puts beside its files while it writes them. */
function leftovers(): readonly string[] {
  return readdirSync(folder, { recursive: true })
    .map(String)
    .filter((name) => name.includes('.legwright-'));
}

/** Every file that is not a leftover of a killed run, by name. */
function pack(): readonly string[] {
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !entry.name.startsWith('.'))
    .map((entry) => join(entry.parentPath, entry.name));
}

function isWhole(path: string): boolean {
  const text = readFileSync(path, 'latin1');
  if (path.endsWith('.pdf')) return text.startsWith('%PDF-') && text.trimEnd().endsWith('%%EOF');
  if (path.endsWith('.svg')) return text.trimEnd().endsWith('</svg>');
  if (path.endsWith('.json')) return typeof JSON.parse(text) === 'object';
  return text.length > 0;
}

describe('the bundled program', () => {
  it('finds its forms and fonts, and takes a design from start to sheets', async () => {
    expect((await legwright(['forms'])).out).toContain('splayed-leg');
    expect((await legwright(['start', 'splayed-leg', '-o', 'desk.json'])).code).toBe(0);
    expect((await legwright(['make', 'desk.json', '-o', 'out'])).code).toBe(0);
    expect(pack().every(isWhole)).toBe(true);
    expect(pack().length).toBeGreaterThan(8);
  });

  it('speaks to the right streams, with the exit codes of the help', async () => {
    writeFileSync(join(folder, 'bad.json'), '{"legwright": 1,, }');
    expect(await legwright(['check', 'bad.json'])).toMatchObject({
      code: 2,
      out: '',
      err: 'bad.json:1:17: Found ,, expected a name in double quotes.\n',
    });
    expect(await legwright(['forms', '--nonsense'])).toMatchObject({ code: 2, out: '' });
  });

  it('killed while it writes, leaves whole files only, and takes its leftovers away the next time', async () => {
    rmSync(join(folder, 'bad.json'), { force: true });
    for (const after of [0, 2, 5, 12]) {
      await legwright(['set', 'desk.json', `splay=${4 + after / 4}°`]);
      await legwright(['make', 'desk.json', '-o', 'out'], after);
      expect(pack().filter((path) => !isWhole(path))).toEqual([]);
    }
    expect((await legwright(['make', 'desk.json', '-o', 'out'])).code).toBe(0);
    expect(leftovers()).toEqual([]);
  });
});
