import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { readPages } from '../print/support/read-pdf.ts';
import { openWorkbench, type Workbench } from './workbench.ts';

/** A taper, so that the two edges lean differently against the grain. */
const TAPERED = ['--set', 'splay=9°', 'taper=both', 'rail=no', 'head_width=110', 'foot_width=40'];
const MM_PER_POINT = 25.4 / 72;

let bench: Workbench;
beforeAll(async () => {
  bench = openWorkbench();
  await bench.run('start', 'splayed-leg', '-o', 'leg.json', '--paper', 'roll 610 mm', ...TAPERED);
  await bench.run('make', 'leg.json', '-o', 'left');
  await bench.run('make', 'leg.json', '-o', 'right', '--mirrored');
}, 60_000);
afterAll(() => bench.clear());

type Point = readonly [number, number];

/**
 * Edges of a pattern of straight edges that a hand-held router cuts against the grain, from the rule itself (common
 * practice): fed anticlockwise, against where the grain taken along the feed leads into the wood.
 */
function againstByRule(folder: string): readonly string[] {
  const result = bench.json(`${folder}/result.json`);
  const [pattern] = result.patterns;
  const asDrawn: number = result.parts[0].grain;
  const grain = pattern.mirrored ? Math.PI - asDrawn : asDrawn;
  const edges: { id: string; role: string; from: Point; to: Point }[] = pattern.regions.designed[0].outer;
  return edges
    .filter(({ role, from, to }) => {
      if (role !== 'routed') return false;
      const feed = Math.atan2(to[1] - from[1], to[0] - from[0]);
      const along = Math.cos(grain - feed) < 0 ? grain + Math.PI : grain;
      // The wood lies left of an edge that is fed anticlockwise.
      const intoWood = Math.sin(along - feed);
      return intoWood > Math.sin(Math.PI / 90) && intoWood < Math.sin((75 * Math.PI) / 180);
    })
    .map(({ id }) => id);
}

/** Edges beside which the printed sheets say AGAINST, found by where the words stand on the paper. */
async function againstOnSheets(folder: string): Promise<readonly string[]> {
  const [pattern] = bench.json(`${folder}/result.json`).patterns;
  const pages = await readPages(new Uint8Array(readFileSync(bench.path(`${folder}/${pattern.file}`))));
  const routed: { id: string; from: Point; to: Point }[] = pattern.regions.designed[0].outer.filter(
    ({ role }: { role: string }) => role === 'routed',
  );
  const found = pattern.sheets.flatMap(
    ({ page, toPattern: [a, b, c, d, e, f] }: { page: number; toPattern: number[] }) =>
      pages[page - 1]!.texts.filter(({ text }) => text.includes('AGAINST')).map(({ at }) => {
        const [x, y] = [at.x * MM_PER_POINT, at.y * MM_PER_POINT];
        const p: Point = [a! * x + c! * y + e!, b! * x + d! * y + f!];
        return routed.toSorted((one, other) => away(one, p) - away(other, p))[0]!.id;
      }),
  );
  return [...new Set<string>(found)];
}

/** Distance from an edge, mm: the words stand beside their own. */
function away({ from, to }: { from: Point; to: Point }, [x, y]: Point): number {
  const [dx, dy] = [to[0] - from[0], to[1] - from[1]];
  const share = ((x - from[0]) * dx + (y - from[1]) * dy) / (dx * dx + dy * dy);
  const t = Math.min(1, Math.max(0, share));
  return Math.hypot(x - from[0] - t * dx, y - from[1] - t * dy);
}

async function firstPage(folder: string): Promise<string> {
  const [pattern] = bench.json(`${folder}/result.json`).patterns;
  const pages = await readPages(new Uint8Array(readFileSync(bench.path(`${folder}/${pattern.file}`))));
  return pages[0]!.texts.map(({ text }) => text).join(' ');
}

describe('the two hands of a tapered leg', () => {
  test('are cut against the grain at other edges, by the rule of feed', () => {
    expect(againstByRule('left')).not.toEqual(againstByRule('right'));
  });

  test.each([
    ['left', 'Left hand', 'Right hand'],
    ['right', 'Right hand', 'Left hand'],
  ])('of the %s one, the first page names the edges that its own sheets mark', async (folder, own, other) => {
    const edges = await againstOnSheets(folder);
    expect([...edges].sort()).toEqual([...againstByRule(folder)].sort());
    const words = await firstPage(folder);
    const said = new RegExp(`${own}: \\S+ mm of (.*?) run against the grain`).exec(words);
    expect(said?.[1]?.split(', ').sort() ?? []).toEqual([...edges].sort());
    expect(words).not.toContain(`${other}: `);
  });

  test('both stand in result.json, with their feed, and in findings.txt', () => {
    for (const folder of ['left', 'right']) {
      const { findings, parts } = bench.json(`${folder}/result.json`);
      const said: { code: string; hand: string; edges: string[] }[] = findings;
      for (const hand of ['left', 'right']) {
        const against = said.filter((each) => each.code === 'routing.against-grain' && each.hand === hand);
        expect(against.flatMap(({ edges }) => edges).sort()).toEqual([...againstByRule(hand)].sort());
        const feed: { edge: string; grain: string }[] = parts[0].hands.find(
          ({ name }: { name: string }) => name === hand,
        ).feed;
        const fed = feed.filter(({ grain }) => grain === 'against').map(({ edge }) => edge);
        expect([...new Set(fed)].sort()).toEqual([...againstByRule(hand)].sort());
      }
      const text = bench.read(`${folder}/findings.txt`);
      expect(text).toContain('Left hand: ');
      expect(text).toContain('Right hand: ');
    }
  });

  test('have what holds for both said once', () => {
    const codes: string[] = bench.json('left/result.json').findings.map(({ code }: { code: string }) => code);
    for (const code of ['routing.speed', 'routing.depth-per-pass']) {
      expect(codes.filter((each) => each === code)).toHaveLength(1);
    }
  });
});

test('a part without hands that is asked for mirrored is judged as it is printed', async () => {
  await bench.run('start', 'straight-stretcher', '-o', 'rail.json');
  await bench.run('make', 'rail.json', '-o', 'rail');
  const asDrawn = bench.json('rail/result.json');
  expect(asDrawn.parts[0].hands.map(({ name }: { name: string }) => name)).toEqual(['as drawn']);
  await bench.run('make', 'rail.json', '-o', 'turned', '--mirrored');
  expect(bench.json('turned/result.json').parts[0].hands.map(({ name }: { name: string }) => name)).toEqual([
    'as drawn',
    'mirrored',
  ]);
});
