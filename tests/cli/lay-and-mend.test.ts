import { writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeEach(() => {
  bench = openWorkbench();
  return () => bench.clear();
});

async function designWith(wood: object): Promise<void> {
  await bench.run('start', 'bench-base', '-o', 'bench.json');
  const design = bench.json('bench.json');
  writeFileSync(bench.path('bench.json'), JSON.stringify({ ...design, wood }));
}

const BOARD = {
  name: 'A',
  length: '3200 mm',
  width: '500 mm',
  thickness: '8/4',
  price: { amount: 6, per: 'board foot', currency: 'EUR' },
  defects: [{ kind: 'knot', centre: ['600 mm', '80 mm'], diameter: '40 mm' }],
};

describe('lay', () => {
  it('lays every part, keeps the places in the design, and finds them sound the next time', async () => {
    await designWith({ boards: [BOARD], search: { seed: 3 } });
    const first = await bench.run('lay', 'bench.json', '--steps', '30', '-o', 'boards');
    expect(first).toMatchObject({ code: 0, err: '' });
    expect(first.out).toMatch(/In all: yield \d+\.\d %, 34\.44 board feet, 0\.0813 m³, 206\.67 EUR\./);
    expect(first.out).toContain('Left of A:');
    const { placements } = bench.json('bench.json').wood;
    expect(placements.length).toBeGreaterThan(4);
    expect(bench.read('boards/board-A.svg')).toContain('<svg');
    const again = await bench.run('lay', 'bench.json', '--steps', '30', '--json');
    expect(again.code).toBe(0);
    expect(bench.json('bench.json').wood.placements).toEqual(placements);
    expect(JSON.parse(again.out)).toMatchObject({ unlaid: [], faults: [] });
  });

  it('goes round what was laid by hand, says what is wrong with it, and the same seed gives the same', async () => {
    await designWith({ boards: [BOARD] });
    await bench.run('lay', 'bench.json', '--steps', '20');
    const [one] = bench.json('bench.json').wood.placements;
    // By hand over the knot.
    const byHand = { ...one, x: '500 mm', y: '60 mm', pinned: true };
    await designWith({ boards: [BOARD], placements: [byHand] });
    const { code, out } = await bench.run('lay', 'bench.json', '--steps', '20', '--anew');
    expect(code).toBe(1);
    expect(out).toMatch(/Stop: .* lies over a knot of A by \d+ mm²\./);
    const { placements } = bench.json('bench.json').wood;
    expect(placements).toContainEqual(byHand);
    await bench.run('lay', 'bench.json', '--steps', '20', '--anew');
    expect(bench.json('bench.json').wood.placements).toEqual(placements);
  });

  it('says what finds no room or no board thick enough, and writes nothing when asked not to', async () => {
    await designWith({
      boards: [
        { ...BOARD, length: '700 mm' },
        { ...BOARD, name: 'thin', thickness: '12 mm' },
      ],
    });
    const before = bench.read('bench.json');
    const { code, out } = await bench.run('lay', 'bench.json', '--steps', '20', '--dry-run');
    expect(code).toBe(1);
    expect(out).toMatch(/Not laid: .*: no room on A\./);
    expect(bench.read('bench.json')).toBe(before);
  });

  it('lays templates on sheets, and asks for boards where a design has none', async () => {
    const sheet = { name: 'ply', kind: 'sheet', length: '2440 mm', width: '1220 mm', thickness: '9 mm' };
    await designWith({ boards: [BOARD, sheet] });
    const { code, out } = await bench.run('lay', 'bench.json', '--steps', '20', '--json');
    expect(code).toBe(0);
    expect(
      JSON.parse(out).lying.filter(({ board }: { board: string }) => board === 'ply').length,
    ).toBeGreaterThan(0);
    await designWith({});
    expect(await bench.run('lay', 'bench.json')).toMatchObject({
      code: 2,
      err: expect.stringContaining('names no boards'),
    });
  });
});

describe('mend', () => {
  it('prints the template for a patch with the collar that fits', async () => {
    await designWith({});
    const { code, out } = await bench.run(
      ...['mend', 'bench.json', '--flaw', '22 mm', '--across', '9 mm', '--cutter', '1/8 in'],
      ...['--bushing', '5/16 in', '--collar', '9/16 in', '-o', 'patch.pdf'],
    );
    expect(code).toBe(0);
    expect(out).toMatch(/patch\.pdf: a boat \d+\.\d\d mm × \d+\.\d\d mm on \d sheets?\./);
    expect(out).toContain('Collar that fits: 14.29 mm. Room round the plug: 0.00 mm.');
    expect(bench.read('patch.pdf').startsWith('%PDF')).toBe(true);
  });

  it('stops at a collar with which the plug comes out too large, and asks for a bushing where there is none', async () => {
    await designWith({});
    const typed = ['mend', 'bench.json', '--flaw', '12 mm', '--cutter', '3 mm', '-o', 'p.pdf'];
    const tight = await bench.run(...typed, '--bushing', '8 mm', '--collar', '15 mm');
    expect(tight.code).toBe(1);
    expect(tight.out).toContain('stop: With a collar of 15 mm the plug comes out 0.5 mm larger');
    const none = await bench.run(...typed);
    expect(none).toMatchObject({ code: 2, err: expect.stringContaining('--bushing') });
  });
});
