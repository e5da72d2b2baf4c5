import { RESIDUE_TOLERANCE, type Region } from '../../geometry/index.ts';
import type { InsertPlace, InsertSize, Room, Stretch } from './api.ts';
import { type ContactRoom, contactRoom } from './contact-room.ts';
import type { FitRules } from './rules.ts';

/** Levels looked at on either side of the middle when the middle of a contact holds fewer than another level. */
const LEVELS = 8;

/**
 * As many pieces of a size as the rules allow in one or two rows along the joint. The centres of the cutter stay within the contact shrunk by
 * its radius and the wall, so that every wall is true all round; along each free stretch of a row, pieces and what is left over
 * between and beside them are shared out evenly. Rules count as kept within RESIDUE_TOLERANCE.
 */
export function rowsOfPlaces(
  contact: readonly Region[],
  size: InsertSize,
  rules: FitRules,
  rows: 1 | 2,
  thickness: number,
): readonly InsertPlace[] {
  const room = contactRoom(contact);
  const centres = room.inset(rules.wall + size.thickness / 2 - RESIDUE_TOLERANCE);
  if (centres === undefined) return [];
  // Three even walls: beside, between, beside.
  const aside = rows === 1 ? 0 : (thickness + size.thickness) / 6;
  if (rows === 2 && (thickness - 2 * size.thickness) / 3 < rules.wall - RESIDUE_TOLERANCE) return [];
  let best: readonly InsertPlace[] = [];
  const most = rows * mostAlong(room, centres, size, rules);
  for (const level of levelsOf(room, centres)) {
    if (best.length >= most) break;
    const levels = rows === 1 ? [level] : [level - aside, level + aside];
    const found = levels.map((y) => placesAlong(room, centres, y, size, rules));
    // Two rows are alike, or they are none.
    const places = found.some((row) => row.length !== found[0]!.length) ? [] : found.flat();
    if (places.length > best.length) best = places;
  }
  return best;
}

/** The middle first, then away from it. */
function levelsOf({ centroid }: ContactRoom, { box: { minY, maxY } }: Room): readonly number[] {
  const middle = (minY + maxY) / 2;
  const reach = (maxY - minY) / 2;
  const levels = [Math.min(maxY, Math.max(minY, centroid)), middle];
  for (let k = 1; k < LEVELS; k++) levels.push(middle - (reach * k) / LEVELS, middle + (reach * k) / LEVELS);
  return levels;
}

/** More than so many pieces no level holds: what would fit if it were as long as the whole contact. */
function mostAlong(
  { whole, isConvex }: ContactRoom,
  { box }: Room,
  size: InsertSize,
  rules: FitRules,
): number {
  if (!isConvex) return Infinity;
  const free = box.maxX - box.minX - 2 * moreAtEnds(size, rules);
  const long = whole.box.maxX - whole.box.minX;
  return Math.min(countIn(free, size, rules), countAllowed(long, size, rules));
}

/** The wall is kept by the centres already; a shoulder asks for more at the ends alone. */
const moreAtEnds = (size: InsertSize, rules: FitRules): number =>
  Math.max(0, rules.shoulder(size) - rules.wall);

const stepOf = (size: InsertSize, rules: FitRules): number => size.width + rules.spacing(size);

/** How many pieces lie in a line on a free stretch of this length, mm. */
function countIn(long: number, size: InsertSize, rules: FitRules): number {
  const room = long + 2 * RESIDUE_TOLERANCE;
  const swept = size.width - size.thickness;
  return room < swept ? 0 : 1 + Math.floor((room - swept) / stepOf(size, rules));
}

/** How many of them may take of a contact as long as this, mm. */
const countAllowed = (long: number, { width }: InsertSize, { lengthShare }: FitRules): number =>
  Math.floor((lengthShare * long + RESIDUE_TOLERANCE) / width);

function placesAlong(
  { whole }: ContactRoom,
  centres: Room,
  y: number,
  size: InsertSize,
  rules: FitRules,
): readonly InsertPlace[] {
  const more = moreAtEnds(size, rules);
  const free = centres.stretchesAt(y).map(({ from, to }) => ({ from: from + more, to: to - more }));
  const counts = free.map(({ from, to }) => countIn(to - from, size, rules));
  const long = whole.stretchesAt(y).reduce((sum, { from, to }) => sum + to - from, 0);
  limitTogether(counts, countAllowed(long, size, rules));
  const swept = size.width - size.thickness;
  const step = stepOf(size, rules);
  return free.flatMap((stretch, i) => shareOut(stretch, counts[i]!, swept, step, y, size.thickness / 2));
}

/**
 * The width (mm) of the widest single piece of a thickness that the walls and shoulders leave room for, and the length of the contact along the
 * row where it lies. Nothing where not even its edge fits.
 */
export function roomAlong(
  contact: readonly Region[],
  thickness: number,
  rules: FitRules,
): { readonly width: number; readonly long: number } | undefined {
  const room = contactRoom(contact);
  const centres = room.inset(rules.wall + thickness / 2 - RESIDUE_TOLERANCE);
  if (centres === undefined) return undefined;
  const size = { thickness, width: thickness, length: 0 };
  const more = moreAtEnds(size, rules);
  const rows = levelsOf(room, centres).map((y) => {
    const free = centres.stretchesAt(y).map(({ from, to }) => to - from - 2 * more);
    const long = room.whole.stretchesAt(y).reduce((sum, { from, to }) => sum + to - from, 0);
    return { width: thickness + Math.max(-Infinity, ...free), long };
  });
  const best = rows.reduce((a, b) => (b.width > a.width ? b : a));
  return best.width < thickness ? undefined : best;
}

/** Takes from the fullest stretches until no more than allowed are left: from equally full ones alike, to keep the joint even. */
function limitTogether(counts: number[], allowed: number): void {
  while (counts.reduce((a, b) => a + b, 0) > Math.max(0, allowed)) {
    const fullest = Math.max(...counts);
    for (const [i, count] of counts.entries()) if (count === fullest) counts[i] = count - 1;
  }
}

function shareOut(
  { from, to }: Stretch,
  count: number,
  swept: number,
  step: number,
  y: number,
  radius: number,
): readonly InsertPlace[] {
  if (count === 0) return [];
  const over = (to - from - swept - (count - 1) * step) / (count + 1);
  return Array.from({ length: count }, (_, k) => {
    const x = from + over + k * (step + over);
    return { from: { x, y }, to: { x: x + swept, y }, radius };
  });
}
