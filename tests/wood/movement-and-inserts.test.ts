import { describe, expect, it } from 'vitest';
import { topFixings, USUAL_YEAR } from '../../src/base/index.ts';
import { woodCalled } from '../../src/materials/index.ts';
import { lengthWords } from '../../src/routing/index.ts';
import { insertFindings, insertPlan, movementOfParts, usualInsert } from '../../src/wood/index.ts';
import { fourLegs, under } from '../base/four-legs.ts';

const oak = woodCalled('white oak')!;
const maple = woodCalled('sugar maple')!;
const pine = woodCalled('eastern white pine')!;
const say = lengthWords();

describe('movement of the parts of a base', () => {
  const board = { label: '', width: 120, thickness: 30, wood: maple };
  const [wide, quartered] = movementOfParts(
    [
      { ...board, part: 'quartered', sawn: 'quarter' },
      { ...board, part: 'flat', sawn: 'flat' },
    ],
    USUAL_YEAR,
  ) as [ReturnType<typeof movementOfParts>[number], ReturnType<typeof movementOfParts>[number]];

  it('names what moves most first, and moves the thickness by the other figure', () => {
    expect([wide.part, quartered.part]).toEqual(['flat', 'quartered']);
    expect(wide.across.range / quartered.across.range).toBeCloseTo(
      maple.change.tangential / maple.change.radial,
      9,
    );
    expect(wide.through.range).toBeCloseTo(quartered.across.range / 4, 9);
  });

  it('is the coefficient times width times the change of moisture, by hand', () => {
    const { driest, dampest, range } = wide.across;
    expect(range).toBeCloseTo(120 * 0.00353 * (dampest - driest), 9);
  });
});

/* A table of 900 × 500 outside its legs, under a top of 1100 × 700: end rails lie 190 to either side of the middle with their fixings. */
describe('inserts of a top', () => {
  const base = under(fourLegs(), { length: 1100, width: 700, thickness: 25 });
  const fixings = topFixings(base, oak);
  const insert = usualInsert('M6', oak)!;
  const plan = insertPlan(fixings, base.top, insert);

  it('stand over every fixing of the base, grouped by the part below', () => {
    expect(plan.rows.flatMap(({ holes }) => holes)).toEqual(fixings.points.map(({ at }) => at));
    expect(new Set(plan.rows.map(({ part }) => part)).size).toBe(plan.rows.length);
  });

  it('are drilled 2 mm deeper than they are long, and leave the rest of the top', () => {
    // M6: 15 long (from memory); 25 − 17 = 8.
    expect([plan.depth, plan.left]).toEqual([17, 8]);
    expect(insertFindings(plan, say)).toEqual([]);
  });

  it('take the larger hole in hardwood and the smaller in softwood', () => {
    expect(usualInsert('M6', oak)!.pilot).toBeGreaterThan(usualInsert('M6', pine)!.pilot);
    expect(usualInsert('M7', oak)).toBeUndefined();
  });

  it('warn of a top that is left thin above them, and stop where they would come through', () => {
    const thin = (thickness: number) =>
      insertFindings(insertPlan(fixings, { ...base.top, thickness }, insert), say)[0];
    expect(thin(22)).toMatchObject({ code: 'wood.top-thin-over-insert', severity: 'caution' });
    // 22 − 6.35 − 2 = 13.65 mm of insert would do, and then nothing is said.
    expect(thin(22)!.cure).toContain('13.65 mm');
    const short = insertPlan(fixings, { ...base.top, thickness: 22 }, { ...insert, length: 13.65 });
    expect(insertFindings(short, say)).toEqual([]);
    expect(thin(17)).toMatchObject({ severity: 'stop' });
  });

  it('warn where they stand near the edge of the top', () => {
    const narrow = insertPlan(fixings, { ...base.top, width: 490 }, insert);
    const worst = Math.max(...fixings.points.map(({ at }) => Math.abs(at.y)));
    expect(narrow.leastEdge).toBeCloseTo(
      Math.min(245 - worst, 550 - Math.max(...fixings.points.map(({ at }) => Math.abs(at.x)))) -
        insert.pilot / 2,
      9,
    );
    expect(insertFindings(narrow, say).map(({ code }) => code)).toEqual(['wood.insert-near-edge']);
  });
});

describe('slots of a top', () => {
  /* By hand: white oak, flat-sawn, 0.00365 for 1 %; EMC at 21 °C and 30 % is 6.2 %, at 23 °C and 65 % about 11.9 % (Wood Handbook, Table 4-2 and
     Eq. 4-5), made at 8 %. A screw 190 mm from the middle moves 190 × 0.00365 × 1.8 = 1.2 mm in and 190 × 0.00365 × 3.9 = 2.7 mm out; half a
     millimetre of play at either end, and a hole of 6.6 mm for M6 (ISO 273, medium). */
  it('are as long as a hand calculation makes them', () => {
    const { points } = topFixings(under(fourLegs(), { width: 700 }), oak);
    const end = points.find(({ at }) => Math.abs(Math.abs(at.y) - 140) < 1)!;
    const share = Math.abs(end.at.y);
    expect(end.slot.width).toBeCloseTo(6.6, 9);
    expect(end.slot.inwards).toBeCloseTo(share * 0.00365 * 1.8 + 0.5, 1);
    expect(end.slot.outwards).toBeCloseTo(share * 0.00365 * 3.9 + 0.5, 1);
  });

  it('follow the room, the rings and the thread that a design names', () => {
    const base = under(fourLegs(), { width: 700 });
    const usual = topFixings(base, oak);
    const quartered = topFixings(base, oak, USUAL_YEAR, { sawn: 'quarter', thread: 'M8' });
    expect(quartered.movement.range / usual.movement.range).toBeCloseTo(0.0018 / 0.00365, 6);
    expect(quartered.points[0]!.slot.width).toBeCloseTo(9, 9);
    const steady = { ...USUAL_YEAR, damp: USUAL_YEAR.dry };
    expect(topFixings(base, oak, steady).movement.swells).toBe(0);
  });
});
