import { beforeAll, describe, expect, test } from 'vitest';
import { loadSolidKernel } from '../../../src/base/solids/index.ts';
import { addStanding } from '../../../src/base/whole/add-standing.ts';
import { type BuiltBase, buildBase } from '../../../src/base/whole/build-base.ts';
import { glueChapter } from '../../../src/design/book/assembly-chapters.ts';
import type { BookStyle } from '../../../src/design/book/book-style.ts';
import { cutListChapter, partList } from '../../../src/design/book/part-chapters.ts';
import { sawChapter } from '../../../src/design/book/saw-chapter.ts';
import { errorsChapter, standingChapter } from '../../../src/design/book/standing-chapter.ts';
import { compute } from '../../../src/design/index.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import type { BookChapter } from '../../../src/print/index.ts';
import { fourLegs, under } from '../../base/four-legs.ts';
import { sampleDesign } from '../sample-design.ts';

/**
 * Figures of the shop book as they stand on paper, of a table of boards that is reckoned by hand: legs 50 square and 700 high, 900 × 500
 * outside to outside; rails 800 and 400 long, 80 × 20; a top of 1200 × 800 × 20.
 *
 * White oak, Wood Handbook (FPL-GTR-282), table 5-3b: specific gravity 0.68 at 12 % moisture, modulus of elasticity 1.78 million pounds a
 * square inch. Specific gravity is by the weight oven-dry, so that a cubic metre weighs 0.68 × 1.12 t.
 */
const DENSITY = 680 * 1.12;
/** A pound-force on a square inch is 0.006 894 757 MPa. */
const ELASTICITY = 1.78e6 * 0.006894757;
const GRAVITY = 9.80665;

const FINE: BookStyle = { lengths: { unit: 'mm', decimals: 3 } };
const MM: BookStyle = { lengths: { unit: 'mm', decimals: 1 } };
const INCHES: BookStyle = { lengths: { unit: 'in', denominator: 16 } };

let table: BuiltBase;
beforeAll(async () => {
  const oak = woodCalled('white oak')!;
  const base = under(fourLegs(), { length: 1200, width: 800, thickness: 20 });
  const options = {
    wood: oak,
    woods: {},
    saw: { swing: { left: 0.8, right: 0.8 }, tilt: { left: 0.8, right: 0 } },
    cutter: 12,
    allowance: { edge: 2, end: 25, thickness: 3 },
    lengths: MM.lengths,
  };
  table = addStanding(buildBase({ base, findings: [] }, options), await loadSolidKernel(), options);
});

const rowsOf = ({ blocks }: BookChapter): readonly (readonly string[])[] =>
  blocks.flatMap((each) => (each.kind === 'table' ? each.rows : []));
const textOf = ({ blocks }: BookChapter): string =>
  blocks
    .flatMap((each) => (each.kind === 'text' ? [each.text] : each.kind === 'list' ? each.items : []))
    .join('\n');
const rowCalled = (chapter: BookChapter, name: string): readonly string[] =>
  rowsOf(chapter).find(([first]) => first === name)!;

/** kg. */
const LEG = 0.05 * 0.05 * 0.7 * DENSITY;
const LONG = 0.8 * 0.08 * 0.02 * DENSITY;
const END = 0.4 * 0.08 * 0.02 * DENSITY;
const BASE = 4 * LEG + 2 * LONG + 2 * END;
const TOP = 1.2 * 0.8 * 0.02 * DENSITY;

describe('on paper', () => {
  test('each piece weighs its volume of wood, and all of them and the top what they do together', () => {
    const chapter = partList(table, MM);
    const weights = rowsOf(chapter).map(([label, , , , weight]) => [label, weight]);
    const row = (label: string, kilograms: number) => [label, `${kilograms.toFixed(2)} kg`];
    expect(weights.toSorted()).toEqual(
      [
        ...Array.from({ length: 4 }, () => row('leg', LEG)),
        ...[row('long', LONG), row('long', LONG), row('end', END), row('end', END)],
      ].toSorted(),
    );
    expect(textOf(chapter)).toContain(`All together ${BASE.toFixed(2)} kg,`);
    expect(textOf(chapter)).toContain(`about ${TOP.toFixed(1)} kg in the same wood`);
    const stands = standingChapter(table, MM);
    expect(rowCalled(stands, 'Base')[1]).toBe(`${BASE.toFixed(2)} kg`);
    expect(rowCalled(stands, 'Top')[1]).toBe(`${TOP.toFixed(1)} kg`);
  });

  test('glue is that of eight ends of 80 × 20, at 180 g/m² of which half is water', () => {
    // 150 to 200 g/m², half of it solids: common practice. 12 800 mm² take 2.3 g, of which 1.15 g stay.
    const [, grams, spread, area] = /about (\d+) g stay of it once dry, at (\d+) g\/m² on (\d+) cm²/
      .exec(textOf(partList(table, MM)))!
      .map(Number) as [number, number, number, number];
    expect([grams, spread, area]).toEqual([1, 180, (8 * 80 * 20) / 100]);
  });

  test('it tips under W b / a: 250 inside the line of the feet, 800 / 2 − 50 − 250 outside it', () => {
    const kilograms = ((BASE + TOP) * 250) / 100;
    const [, figure, where] = rowCalled(standingChapter(table, MM), 'Tips under');
    expect(figure).toBe(`${Math.round(kilograms)} kg (${Math.round(kilograms * GRAVITY)} N)`);
    expect(where).toMatch(/^standing 50\.0 mm inside the edge/);
  });

  test('its centre of mass lies at that of legs and rails: 350 and 660 above the floor', () => {
    const height = (4 * LEG * 350 + (2 * LONG + 2 * END) * 660) / BASE;
    expect(rowCalled(standingChapter(table, MM), 'Centre of mass of the base')[1]).toBe(
      `${height.toFixed(1)} mm above the floor`,
    );
  });

  test('a rail sags by 5 w L⁴ / 384 E I under its share of 100 kg and the top, half as much again in years', () => {
    const rail = (20 * 80 ** 3) / 12;
    const top = (800 * 20 ** 3) / 12;
    const w = ((100 + TOP) * GRAVITY * rail) / (2 * rail + top) / 800;
    const sag = (5 * w * 800 ** 4) / (384 * ELASTICITY * rail);
    const [, figure, under] = rowCalled(standingChapter(table, FINE), 'long sags by');
    const [, first, later] = /^([\d.]+) mm, later ([\d.]+) mm$/.exec(figure!)!.map(Number) as [
      number,
      number,
      number,
    ];
    expect(Math.abs(first - sag)).toBeLessThan(0.00051);
    // Creep: half as much again (common practice for dry wood under a lasting load).
    expect(Math.abs(later - 1.5 * sag)).toBeLessThan(0.00051);
    expect(under).toMatch(/^under its share of 100 kg and the top, spread along it, over 800\.000 mm\./);
  });

  test('knees have the room under a rail 80 deep below 700, and 800 between the legs', () => {
    const stands = standingChapter(table, MM);
    expect(rowCalled(stands, 'Knees: height')[1]).toBe('620.0 mm');
    expect(rowCalled(stands, 'Knees: width')[1]).toBe('800.0 mm');
    // Seats are 18 in high (457.2 mm).
    expect(rowCalled(stands, 'Knees: thighs')[1]).toBe('162.8 mm');
  });

  test('one chair of 20 in goes in 800 mm; two with 4 in between them would need 44 in', () => {
    const [, places, words] = rowCalled(standingChapter(table, MM), 'Chairs along the front');
    expect(places).toBe('1');
    expect(words).toContain('each 508.0 mm wide');
    expect(words).toContain('more would need 1117.6 mm');
  });

  test('half a degree, 0.5 mm and 0.2 mm add up at a joint of 80, and at the foot, to thousandths of an inch', () => {
    const saw = Math.PI / 360;
    const rows = rowsOf(errorsChapter(table, INCHES));
    const [, across, arm] = rowsOf(errorsChapter(table, FINE))[0]!.map((cell) => Number.parseFloat(cell));
    expect(rows.length).toBeGreaterThan(0);
    expect(across).toBe(80);
    // From the middle of the joint, or from its farthest corner, to the foot.
    expect(arm).toBeGreaterThanOrEqual(660);
    expect(arm).toBeLessThanOrEqual(705);
    const gap = [80 * Math.tan(saw), 0.2];
    const foot = [2 * arm! * Math.sin(saw / 2), 0.5, 0.2];
    const worst = (all: readonly number[]) => all.reduce((sum, each) => sum + each, 0);
    const likely = (all: readonly number[]) => Math.hypot(...all);
    const inches = (mm: number) => `${(mm / 25.4).toFixed(3)} in`;
    expect(rows[0]!.slice(3)).toEqual([worst(gap), likely(gap), worst(foot), likely(foot)].map(inches));
    // Four legs of a rectangle: 4 × 0.5 at worst, the root of 4 × 0.25 likely.
    expect(textOf(errorsChapter(table, MM))).toContain('leave 2.0 mm under a foot at worst, 1.0 mm likely');
  });

  test('clamps open 500 and 900 from wood to wood, in centimetres and in half inches upwards', () => {
    const [ends, long] = textOf(glueChapter(table, MM)).split('\n').slice(1);
    expect(ends).toContain('open at least 500 mm and their pads (wood to wood 500.0 mm)');
    expect(long).toContain('open at least 900 mm and their pads (wood to wood 900.0 mm)');
    const inches = textOf(glueChapter(table, INCHES));
    // 19.685 in and 35.433 in.
    expect(inches).toContain('open at least 20 in and their pads (wood to wood 19 11/16 in)');
    expect(inches).toContain('open at least 35 1/2 in and their pads (wood to wood 35 7/16 in)');
  });

  test('boards are got out 25 longer at each end, 2 wider at each edge and 3 thicker in all', () => {
    const rows = rowsOf(cutListChapter(table, MM));
    expect(rows.slice(0, 3).map((row) => [row[0]!.split('\n')[0], row[1], ...row.slice(3)])).toEqual([
      ['leg', '4', '50.0 × 50.0 × 700.0 mm', '53 × 54 × 750 mm', '3000 mm'],
      ['long', '2', '20.0 × 80.0 × 800.0 mm', '23 × 84 × 850 mm', '1700 mm'],
      ['end', '2', '20.0 × 80.0 × 400.0 mm', '23 × 84 × 450 mm', '900 mm'],
    ]);
  });
});

describe('of a leaning base, on paper', () => {
  const builtOf = (form: string): BuiltBase => {
    const computed = compute(sampleDesign(form, ['leg'], 'mm'), { wanted: { patterns: [] } });
    if (!computed.ok) throw new Error(computed.problems[0]!.message);
    return computed.value.base!;
  };
  const degrees = (rad: number): string => `${((rad * 180) / Math.PI).toFixed(2).replace(/\.?0+$/, '')}°`;
  const settingOf = (built: BuiltBase, cut: string): readonly string[] =>
    rowsOf(sawChapter(built, MM)).find((row) => row[3]?.split('\n').includes(cut))!;

  test('rails square to panels that lean by 8° are mitred by 8°', () => {
    const [, swing, tilt] = settingOf(builtOf('bench-base'), 'Long rail: upper end, at the panel leg');
    expect(swing).toMatch(/^8° to the (left|right)$/);
    expect(tilt).toBe('upright');
  });

  test('legs splayed by 7° and raked by 5°: tan of the mitre is tan 7° cos 5°, the bevel the rake', () => {
    const built = builtOf('raked-table');
    const [splay, rake] = [7, 5].map((angle) => (angle * Math.PI) / 180) as [number, number];
    // Seen square to a plane that leans by the rake, the height is longer by 1 / cos of it.
    const mitre = degrees(Math.atan(Math.tan(splay) * Math.cos(rake)));
    expect(settingOf(built, 'Long apron: upper end, at the leg').slice(1, 3)).toEqual([
      `${mitre} to the left`,
      'upright',
    ]);
    expect(settingOf(built, 'Leg: upper end, at the top').slice(1, 3)).toEqual([
      `${mitre} to the right`,
      `${degrees(rake)} to the left`,
    ]);
  });

  test('clamps over wedges are told from wood to wood, and open over the wedges too', () => {
    const built = builtOf('raked-table');
    const said = [
      ...textOf(glueChapter(built, MM)).matchAll(
        /open at least (\d+) mm, cauls between \(wood to wood ([\d.]+) mm\)/g,
      ),
    ].map(([, opening, wood]) => [opening, wood]);
    const clamps = built.glue.flatMap(({ groups }) => groups[0]!.clamps);
    expect(said.length).toBeGreaterThan(1);
    for (const { opening, withCauls } of clamps) {
      expect(said).toContainEqual([`${Math.ceil(withCauls / 10) * 10}`, opening.toFixed(1)]);
    }
  });
});
