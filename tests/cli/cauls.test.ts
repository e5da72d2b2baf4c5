import { readdirSync } from 'node:fs';
import { expect, it } from 'vitest';
import { openWorkbench } from './workbench.ts';

it('writes of a caul, which is sawn, its own outline alone: no template and nothing as routed', async () => {
  const bench = openWorkbench();
  try {
    await bench.run('start', 'stool-base', '-o', 'stool.json');
    const { code, err } = await bench.run('make', 'stool.json', '-o', 'out', '--part', 'caul-1');
    expect([code, err]).toEqual([0, '']);
    const written = readdirSync(bench.path('out'), { recursive: true }).map(String);
    const ofCaul = written.filter((name) => name.includes('caul')).map((name) => name.replaceAll('\\', '/'));
    expect(ofCaul.sort()).toEqual(['caul-1-part.pdf', 'cutting/caul-1-part.svg', 'drawings/caul-1-part.svg']);
    expect(written.filter((name) => /template|as-routed/.test(name))).toEqual([]);
    const { routing, hands } = bench
      .json('out/result.json')
      .parts.find(({ name }: { readonly name: string }) => name === 'caul-1');
    expect([routing.template, routing.asRouted, routing.blank, routing.feed]).toEqual([[], [], [], []]);
    expect(hands.length).toBe(1);
  } finally {
    bench.clear();
  }
});
