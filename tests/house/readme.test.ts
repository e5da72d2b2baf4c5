import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import packageJson from '../../package.json';
import { openWorkbench, type Workbench } from '../cli/workbench.ts';

const readme = readFileSync('README.md', 'utf8');
const commands = [...readme.matchAll(/^\s+npx legwright (.+)$/gm)].map((found) => found[1] ?? '');

let bench: Workbench;
beforeAll(() => {
  bench = openWorkbench();
  const workshop = /```json\n([\s\S]*?)```/.exec(readme)?.[1] ?? '';
  writeFileSync(bench.path('workshop.json'), workshop);
});
afterAll(() => bench.clear());

/** The words of a command line, double quotes taken as a shell takes them. */
function wordsOf(line: string): string[] {
  return (line.match(/(?:[^\s"]|"[^"]*")+/g) ?? []).map((word) => word.replaceAll('"', ''));
}

describe('the README', () => {
  it('walks through a design, command by command', () => {
    expect(commands.length).toBeGreaterThanOrEqual(9);
  });

  for (const command of commands) {
    it(`works as written: legwright ${command}`, async () => {
      const { code, err } = await bench.run(...wordsOf(command));
      expect(err).toBe('');
      expect(code).toBe(0);
    });
  }

  it('names the files that a maker then finds', () => {
    for (const name of ['leg.pdf', 'findings.txt', 'result.json', 'result.schema.json', 'drawings/leg.svg']) {
      expect(existsSync(bench.path(`desk-leg/${name}`)), name).toBe(true);
    }
    for (const name of ['shop-book.pdf', 'cut-list.csv', 'setting-out-left.pdf', 'drawings/view-front.svg']) {
      expect(existsSync(bench.path(`table/${name}`)), name).toBe(true);
    }
  });

  it('names every command of the program, and no other', async () => {
    const { out } = await bench.run('--help');
    const offered = [...out.matchAll(/^ {2}([a-z]+) .*?(?:\[|<|\S)/gm)].map((found) => found[1] ?? '');
    const named = [...readme.matchAll(/^\| `legwright ([a-z]+)/gm)].map((found) => found[1] ?? '');
    expect(offered.filter((name) => name !== 'help')).toEqual(expect.arrayContaining(named));
    expect(named.length).toBe(13);
  });

  it('points at files and scripts that exist', () => {
    const links = [...readme.matchAll(/\]\((?!#|http)([^)#]+)\)/g)].map((found) => found[1] ?? '');
    expect(links.length).toBeGreaterThan(4);
    for (const link of links) expect(existsSync(link), link).toBe(true);
    const scripts = [...readme.matchAll(/npm (?:run )?(demo|test|bench|start)\b/g)].map(
      (found) => found[1] ?? '',
    );
    for (const script of scripts) expect(packageJson.scripts).toHaveProperty(script);
  });
});
