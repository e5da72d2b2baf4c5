import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeEach(async () => {
  bench = openWorkbench();
  await bench.run('start', 'splayed-leg', '-o', 'a.json');
});
afterEach(() => bench.clear());

describe('link and from-link', () => {
  it('give a design back, byte by byte', async () => {
    const { out, code } = await bench.run('link', 'a.json');
    expect([code, out]).toEqual([0, expect.stringMatching(/^legwright:#design=1\.[\w-]+\n$/)]);
    const back = await bench.run('from-link', out.trim(), '-o', 'b.json');
    expect(back).toEqual({ code: 0, err: '', out: 'b.json: Splayed leg, revision A of 2026-03-09.\n' });
    expect(bench.read('b.json')).toBe(bench.read('a.json'));
  });

  it('lead to a site that is given, and keep a file that is there', async () => {
    const { out } = await bench.run('link', 'a.json', '--site', 'https://example.org/');
    expect(out).toMatch(/^https:\/\/example\.org\/#design=1\./);
    const before = bench.read('a.json');
    const { code, err } = await bench.run('from-link', `${out.slice(0, 100)}`, '-o', 'a.json');
    expect(code).toBe(2);
    expect(err).toContain('The link is cut short');
    expect((await bench.run('from-link', out, '-o', 'a.json')).err).toContain(
      'There is a file of this name already',
    );
    expect(bench.read('a.json')).toBe(before);
  });
});
