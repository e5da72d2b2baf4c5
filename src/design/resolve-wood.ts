import { type AirOfYear, type Climate, type TopHeld, USUAL_TOP, USUAL_YEAR } from '../base/index.ts';
import { fail, nearestName, ok, type Problem, type Result } from '../core/index.ts';
import {
  clearanceHole,
  equilibriumMoisture,
  THREADED_INSERTS,
  type Wood,
  woodCalled,
} from '../materials/index.ts';
import { parseQuarters, parseTemperature } from '../measure/index.ts';
import type { Insert, ResawPlan } from '../wood/index.ts';
import type { Design, TypedLength, TypedWood } from './design-schema.ts';
import { type LengthRange, type MeasureReader, measureReader } from './typed-measures.ts';
import { percentOf } from './typed-percent.ts';

/** A resaw plan before the base is known: what it leaves out comes from the bookmatch that names it and its parts. */
export type OpenPlan = Omit<ResawPlan, 'rough' | 'glued' | 'finished'> &
  Partial<Pick<ResawPlan, 'rough' | 'glued' | 'finished'>>;

/** What a design says of its wood, in mm, °C, shares and %. */
export interface ResolvedWood {
  readonly year: AirOfYear;
  readonly held: TopHeld;
  /** Left out: the wood of the base. */
  readonly topWood?: Wood;
  /** As measured; left out: the usual one. */
  readonly insert?: Insert;
  readonly plans: readonly OpenPlan[];
  /** Thickness of every board, mm, by name. */
  readonly thickness: ReadonlyMap<string, number>;
}

/** Ranges that refuse slips of the keyboard, mm, °C, %. */
const RANGES = {
  rough: { least: 3, most: 500 },
  loss: { least: 0, most: 50 },
  backing: { least: 0, most: 300 },
  insert: { least: 1, most: 100 },
} as const;
const TEMPERATURE = { least: -20, most: 60 };
const HUMIDITY = { least: 1, most: 98 };
const MOISTURE = { least: 2, most: 30 };

/** What the section `wood` of a design says; usual where it says nothing. Problem paths begin with `wood.`. */
export function resolveWood({ wood = {}, units }: Pick<Design, 'wood' | 'units'>): Result<ResolvedWood> {
  const reader = measureReader(units.length);
  const problems: Problem[] = [];
  const year = yearOf(wood, problems);
  const topWood = wood.top?.wood === undefined ? undefined : woodAt(wood.top.wood, problems);
  const held: TopHeld = {
    sawn: wood.top?.sawn ?? USUAL_TOP.sawn,
    thread: wood.top?.thread ?? USUAL_TOP.thread,
  };
  if (clearanceHole(held.thread) === undefined) problems.push(unknownThread(held.thread));
  const insert = wood.top?.insert;
  const quarters = (typed: TypedLength, path: string): number => {
    const read = parseQuarters(String(typed), { unit: units.length });
    return reader.length(read.ok ? `${read.value} mm` : typed, path, RANGES.rough);
  };
  const plans = (wood.resaw ?? []).map((plan, at) => planOf(plan, `wood.resaw.${at}`, reader, quarters));
  const thickness = new Map(
    (wood.boards ?? []).map((board, at) => [
      board.name,
      quarters(board.thickness, `wood.boards.${at}.thickness`),
    ]),
  );
  const own =
    insert === undefined
      ? undefined
      : {
          thread: held.thread,
          outer: reader.length(insert.outer, 'wood.top.insert.outer', RANGES.insert),
          length: reader.length(insert.length, 'wood.top.insert.length', RANGES.insert),
          pilot: reader.length(insert.pilot, 'wood.top.insert.pilot', RANGES.insert),
        };
  const all = [...problems, ...reader.problems];
  if (all.length > 0) return fail(...all);
  return ok({
    year,
    held,
    plans,
    thickness,
    ...(topWood === undefined ? {} : { topWood }),
    ...(own === undefined ? {} : { insert: own }),
  });
}

type TypedPlan = NonNullable<TypedWood['resaw']>[number];

function planOf(
  plan: TypedPlan,
  path: string,
  { length }: MeasureReader,
  quarters: (typed: TypedLength, path: string) => number,
): OpenPlan {
  const read = (typed: TypedLength | undefined, name: string, range: LengthRange): number =>
    typed === undefined ? 0 : length(typed, `${path}.${name}`, range);
  return {
    name: plan.name,
    flattening: read(plan.flattening, 'flattening', RANGES.loss),
    kerf: read(plan.kerf, 'kerf', RANGES.loss),
    leaves: plan.leaves,
    planing: {
      sawn: read(plan.planing.sawn, 'planing.sawn', RANGES.loss),
      outer: read(plan.planing.outer, 'planing.outer', RANGES.loss),
    },
    drying: read(plan.drying, 'drying', RANGES.loss),
    backing: read(plan.backing, 'backing', RANGES.backing),
    lastPlaning: {
      show: read(plan.lastPlaning.show, 'lastPlaning.show', RANGES.loss),
      back: read(plan.lastPlaning.back, 'lastPlaning.back', RANGES.loss),
    },
    drift: read(plan.drift, 'drift', RANGES.loss),
    ...(plan.rough === undefined ? {} : { rough: quarters(plan.rough, `${path}.rough`) }),
    ...(plan.glued === undefined ? {} : { glued: plan.glued === 2 ? 2 : 1 }),
    ...(plan.finished === undefined
      ? {}
      : { finished: length(plan.finished, `${path}.finished`, RANGES.backing) }),
  };
}

function yearOf({ climate = {} }: TypedWood, problems: Problem[]): AirOfYear {
  const { room, shop } = climate;
  const dry = room === undefined ? USUAL_YEAR.dry : airAt(room.dry, 'wood.climate.room.dry', problems);
  const damp = room === undefined ? USUAL_YEAR.damp : airAt(room.damp, 'wood.climate.room.damp', problems);
  if (shop === undefined) return { dry, damp, made: USUAL_YEAR.made };
  if ('moisture' in shop) {
    const made = percentOf(shop.moisture, 'wood.climate.shop.moisture', MOISTURE, problems);
    return { dry, damp, made: 100 * made };
  }
  const air = airAt(shop, 'wood.climate.shop', problems);
  return { dry, damp, made: equilibriumMoisture(air.celsius, air.humidity) };
}

function airAt(
  { temperature, humidity }: { readonly temperature: TypedLength; readonly humidity: TypedLength },
  path: string,
  problems: Problem[],
): Climate {
  const read = parseTemperature(String(temperature));
  const isWithin = read.ok && read.value >= TEMPERATURE.least && read.value <= TEMPERATURE.most;
  if (!isWithin) {
    const expected = `a temperature from ${TEMPERATURE.least} °C to ${TEMPERATURE.most} °C`;
    problems.push({
      code: 'design.out-of-range',
      message: `${path}.temperature: found ${temperature}, expected ${expected}.`,
      path: `${path}.temperature`,
      found: String(temperature),
      expected,
    });
  }
  return {
    celsius: isWithin ? read.value : 20,
    humidity: percentOf(humidity, `${path}.humidity`, HUMIDITY, problems),
  };
}

function woodAt(name: string, problems: Problem[]): Wood | undefined {
  const found = woodCalled(name);
  if (found === undefined)
    problems.push({
      code: 'design.unknown-wood',
      message: `There is no wood called "${name}" in the table.`,
      path: 'wood.top.wood',
      found: name,
      expected: 'a wood of the table, as in base.wood',
    });
  return found;
}

function unknownThread(thread: string): Problem {
  const known = THREADED_INSERTS.map((each) => each.thread);
  const expected = nearestName(thread, known) ?? `a thread such as ${known.join(', ')}`;
  return {
    code: 'design.unknown-thread',
    message: `No clearance hole is known for the thread "${thread}": expected ${expected}.`,
    path: 'wood.top.thread',
    found: thread,
    expected,
  };
}
