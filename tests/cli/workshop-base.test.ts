import { existsSync, writeFileSync } from 'node:fs';
import { beforeEach, describe, expect, it } from 'vitest';
import { resolveBase } from '../../src/design/resolve-base.ts';
import { USUAL_DOWELS, USUAL_LOOSE_TENONS } from '../../src/materials/index.ts';
import { openWorkbench, type Workbench } from './workbench.ts';

let bench: Workbench;
beforeEach(async () => {
  bench = openWorkbench();
  await bench.run('workshop', '-o', 'shop.json', '--units', 'in');
  return () => bench.clear();
});

const start = () => bench.run('start', 'bench-base', '-o', 'bench.json', '--workshop', 'shop.json');
const withBase = (base: unknown): void =>
  writeFileSync(bench.path('shop.json'), JSON.stringify({ ...bench.json('shop.json'), base }, null, 2));

describe('wood, joinery and saw of a workshop', () => {
  it('are copied into a design as they stand, a bare number in the unit of the workshop', async () => {
    withBase({
      wood: 'white ash',
      woods: { panel: 'white oak', wing: 'white oak' },
      looseTenons: [{ name: 'own', thickness: '5/16', width: 1, length: '40 mm' }],
      saw: { swing: { left: 50, right: '60°' }, tilt: { left: 45, right: 0 } },
    });
    const { code, err } = await start();
    expect([code, err]).toEqual([0, '']);
    expect(bench.json('bench.json').base).toEqual({
      wood: 'white ash',
      // Of parts that this form does not draw nothing is taken.
      woods: { panel: 'white oak' },
      looseTenons: [{ name: 'own', thickness: '5/16 in', width: '1 in', length: '40 mm' }],
      saw: { swing: { left: 50, right: '60°' }, tilt: { left: 45, right: 0 } },
    });
  });

  it('stand written out in a new workshop, and are what is taken where nothing is said', async () => {
    expect((await start()).code).toBe(0);
    const { base, units } = bench.json('bench.json');
    expect(Object.keys(base)).toEqual(['wood', 'looseTenons', 'dowels', 'saw']);
    const [written, unsaid] = [resolveBase({ base, units }), resolveBase({ units })];
    if (!written.ok || !unsaid.ok) throw new Error('a usual base cannot be used');
    const lists = { looseTenons: USUAL_LOOSE_TENONS, dowels: USUAL_DOWELS };
    expect(written.value).toEqual({ ...unsaid.value, ...lists });
  });

  it('may be left out', async () => {
    withBase(undefined);
    expect((await start()).code).toBe(0);
    expect(bench.json('bench.json').base).toBeUndefined();
  });

  it.each([
    [{ wood: 'white aple' }, /base\.wood.*|no wood called "white aple"/, /expected "/],
    [{ wood: 7 }, /base\.wood: found 7/, /expected a text in double quotes/],
    [{ woods: ['panel'] }, /base\.woods: found a list/, /expected names and values/],
    [{ looseTenons: [] }, /base\.looseTenons: found a list/, /expected a list of loose tenons, \[\{/],
    [
      { looseTenons: { thickness: 8 } },
      /base\.looseTenons: found names/,
      /expected a list of loose tenons, \[\{/,
    ],
    [
      { looseTenons: [{ thickness: 8, width: 25 }] },
      /looseTenons\.0\.length: found nothing/,
      /expected a length such as/,
    ],
    [
      { looseTenons: [{ thickness: '0 mm', width: 1, length: 2 }] },
      /0\.thickness: 0 mm is 0 mm/,
      /from 1 mm to 400 mm/,
    ],
    [{ dowels: [{ diameter: -8, length: 50 }] }, /dowels\.0\.diameter/, /possible is from 1 mm|expected/],
    [
      { dowels: [{ diameter: '3 kg', length: 50 }] },
      /dowels\.0\.diameter: cannot read "3 kg"/,
      /unit .* should stand here/,
    ],
    [{ dowel: [] }, /base\.dowel: found "dowel"/, /expected "dowels"/],
    [{ saw: { swing: 45 } }, /base\.saw\.swing: found 45/, /expected/],
    [
      { saw: { swing: { left: 45, right: 90 }, tilt: { left: 0, right: 0 } } },
      /base\.saw\.swing\.right: found 90/,
      /expected an angle from 0° to 89°/,
    ],
    [
      { saw: { swing: { left: '45 mm', right: 45 }, tilt: { left: 0, right: 0 } } },
      /base\.saw\.swing\.left: found 45 mm/,
      /expected an angle from 0° to 89°/,
    ],
  ])('that no base could use are refused where they stand: %j', async (base, found, expected) => {
    withBase(base);
    const { code, err } = await start();
    expect(code).toBe(2);
    expect(err).toMatch(/^shop\.json:\d+:\d+: /);
    expect(err).toMatch(found);
    expect(err).toMatch(expected);
    expect(existsSync(bench.path('bench.json'))).toBe(false);
  });
});

describe('boards, air and resaw plans of a workshop', () => {
  const withWood = (wood: unknown): void =>
    writeFileSync(bench.path('shop.json'), JSON.stringify({ ...bench.json('shop.json'), wood }, null, 2));

  it('are copied into a design, a bare number in the unit of the workshop and quarters as they stand', async () => {
    const board = { name: 'rack 3', length: 96, width: '9', thickness: '8/4' };
    const knot = { kind: 'knot', centre: [40, '4 1/2'], diameter: '30 mm' };
    withWood({
      climate: { shop: { moisture: '8 %' } },
      boards: [{ ...board, grain: 2, defects: [knot], price: { amount: 9, per: 'board foot' } }],
      search: { between: '1/8', seed: 3 },
    });
    const { code, err } = await start();
    expect([code, err]).toEqual([0, '']);
    expect(bench.json('bench.json').wood).toEqual({
      climate: { shop: { moisture: '8 %' } },
      boards: [
        {
          ...board,
          length: '96 in',
          width: '9 in',
          grain: 2,
          defects: [{ ...knot, centre: ['40 in', '4 1/2 in'] }],
          price: { amount: 9, per: 'board foot' },
        },
      ],
      search: { between: '1/8 in', seed: 3 },
    });
  });

  it.each([
    [{ boards: [{ name: 'A', length: 96, width: 9 }] }, /wood\.boards\.0\.thickness/],
    [{ boards: [{ name: 'A', length: 96, width: '9 ells', thickness: '8/4' }] }, /wood\.boards\.0\.width/],
    [{ climate: { shop: { moisture: '80 %' } } }, /wood\.climate\.shop\.moisture/],
    [{ placements: [] }, /placements/],
  ])('that cannot be used are refused with their place: %j', async (wood, place) => {
    withWood(wood);
    const { code, err } = await start();
    expect(code).toBe(2);
    expect(err).toMatch(place);
  });
});
