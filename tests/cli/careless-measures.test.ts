import { readFileSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { openWorkbench, type Workbench } from './workbench.ts';

/** As `start` writes it, once for all of these: what is refused leaves it as it is. */
const STARTED = new URL('../../demo/window-bench.json', import.meta.url);

let bench: Workbench;
beforeEach(() => {
  bench = openWorkbench();
  writeFileSync(bench.path('bench.json'), readFileSync(STARTED));
  return () => bench.clear();
});

/** Runs it; it has to be refused in one line that says where, and the design to stay as it was. */
async function refused(...args: readonly string[]): Promise<string> {
  const before = bench.read('bench.json');
  const { code, err, out } = await bench.run(...args);
  expect([code, out]).toEqual([2, '']);
  expect(err.trim().split('\n')).toHaveLength(1);
  expect(bench.read('bench.json')).toBe(before);
  return err;
}

function withDesign(change: Record<string, unknown>): void {
  const design = { ...bench.json('bench.json'), ...change };
  writeFileSync(bench.path('bench.json'), JSON.stringify(design, null, 2));
}

describe('a measure that cannot be is refused by its name, without a line of the file in which it does not stand', () => {
  it.each([
    ['panel.thickness=0', /^bench\.json: measured\.thickness\.panel: 0 is 0 mm; possible is from 1 mm/],
    ['panel.thickness=-3mm', /-3mm is -3 mm; possible is from 1 mm to 300 mm\.$/m],
    ['panel.thickness=3 km', /cannot read "3 km" as a length/],
    ['panel.thickness=20 kg', /cannot read "20 kg" as a length/],
    ['panel.thickness=5°', /cannot read "5°" as a length/],
    ['pannel.thickness=20mm', /no part called "pannel".*expected one of: panel, stretcher, rail/],
    [
      'panel.thicknes=20',
      /no parameter "panel\.thicknes".*expected one of: .*<part>\.thickness, <part>\.length/,
    ],
    ['splay=20mm', /Splay: cannot read "20mm" as an angle.*expected an angle such as/],
    ['top_thickness=0', /Thickness of the seat \(top_thickness\) is 0 in: it can be from/],
    [
      'panel.thickness=-',
      /"panel\.thickness" is not among what was measured: expected a measure that is, and none is/,
    ],
  ])('%s', async (typed, words) => {
    const err = await refused('measured', 'bench.json', typed);
    expect(err).toMatch(words);
    expect(err).toMatch(/^bench\.json: /);
  });

  it('names what is measured when another is taken back', async () => {
    withDesign({ measured: { thickness: { panel: '29.4 mm' } } });
    expect(await refused('measured', 'bench.json', 'rail.length=-')).toContain('one of: panel.thickness');
  });
});

describe('a design that cannot be used is left alone by every command that would write it', () => {
  const commands = [
    ['measured', 'bench.json', 'panel.thickness=29mm'],
    ['cut', 'bench.json', 'panel'],
    ['set', 'bench.json', 'top_length=1200mm'],
  ] as const;

  it.each(commands)('one of a newer program: %s', async (...args) => {
    withDesign({ legwright: 2 });
    expect(await refused(...args)).toMatch(/^bench\.json:2:16: .*newer Legwright \(design version 2\)/);
  });

  it.each(commands)('one that was written half: %s', async (...args) => {
    writeFileSync(bench.path('bench.json'), bench.read('bench.json').slice(0, 900));
    expect(await refused(...args)).toMatch(/^bench\.json:\d+:\d+: .*expected/);
  });

  it.each([
    [{ base: { saw: null } }, /base\.saw: found null, expected/],
    [{ base: { wood: '' } }, /base\.wood: found "", expected a name/],
    [{ base: { woods: { pannel: 'white oak' } } }, /no part called "pannel"/],
    [
      { base: { looseTenons: [{ thickness: '25 mm', width: '8 mm', length: '40 mm' }] } },
      /looseTenons\.0\.width: 8 mm is 8 mm; possible is from 25 mm/,
    ],
    [
      { base: { saw: { swing: { left: -45, right: 45 }, tilt: { left: 0, right: 0 } } } },
      /swing\.left: found -45/,
    ],
    [
      { measured: { thickness: { panel: 0 } } },
      /measured\.thickness\.panel: 0 is 0 mm; possible is from 1 mm/,
    ],
    [{ measured: { length: { rail: '1 m' } } }, /measured\.length\.rail: found "1 m", expected/],
    [{ cut: { panel: true } }, /cut\.panel: found true, expected/],
    [{ cut: { wing: { revision: 'A', parameters: {}, measured: {} } } }, /no part called "wing"/],
    [{ cut: { panel: { revision: 'A', parameters: { splay: '900°' }, measured: {} } } }, /900°.*full turn/],
  ])('one with %j says in which line', async (change, words) => {
    withDesign(change);
    const err = await refused('cut', 'bench.json', 'stretcher').catch(() => '');
    expect(err).toMatch(words);
  });
});

it('a part that is named twice is cut once', async () => {
  const { code, out } = await bench.run('cut', 'bench.json', 'panel', 'panel');
  expect([code, out]).toEqual([0, 'bench.json: panel is cut at revision A.\n']);
});
