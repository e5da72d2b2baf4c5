import { buildPassingTree } from '../index-tree/box-tree.ts';
import { joinTree } from '../index-tree/join-tree.ts';
import { filled, reals, unfilled } from '../memory/lists.ts';
import { type NarrowBoxes, narrowBoxes } from './narrow-boxes.ts';
import type { Pieces } from './pieces.ts';
import { slabsOf } from './slabs.ts';

/** Which pieces may meet, because their boxes touch. */
export interface TouchingPairs {
  /** Numbers of the two pieces of pair k at 2k and 2k + 1, the lower first. */
  readonly pairs: Int32Array;
  readonly count: number;
  /** How many others each piece touches; above `crowd` no more is sure than that it is above. */
  readonly others: Int32Array;
  /** How many pieces touch more others than `crowd`. Pairs of two such are missing. */
  readonly crowded: number;
}

/** Pairs of pieces whose boxes lie no further apart than `margin` (mm). Crowded ones are not paired with each other. In lists that are released with the rest. */
export function touchingPairs(
  pieces: Pieces,
  margin: number,
  crowd = Number.POSITIVE_INFINITY,
): TouchingPairs {
  const narrow = narrowBoxes(pieces);
  const { count: boxCount, boxes, owners, parts } = narrow;
  const tree = buildPassingTree(
    boxes,
    boxCount,
    crowd === Infinity ? narrowest(pieces, narrow) : narrow.rings,
  );
  const others = filled(pieces.count);
  // Pieces with several boxes are found several times.
  const known = boxCount === pieces.count ? undefined : newPairSet();
  let pairs = unfilled(8 * pieces.count);
  let count = 0;
  let crowded = 0;
  joinTree(tree, {
    margin,
    visit: (item, other) => {
      const i = owners[item]!;
      const j = owners[other]!;
      if (i === j || (others[i]! > crowd && others[j]! > crowd)) return;
      const low = i < j ? i : j;
      const high = i < j ? j : i;
      if (known !== undefined && parts[i]! + parts[j]! > 2 && !addToSet(known, low * pieces.count + high))
        return;
      if (++others[i]! === crowd + 1) crowded++;
      if (++others[j]! === crowd + 1) crowded++;
      if (2 * count === pairs.length) pairs = doubled(pairs);
      pairs[2 * count] = low;
      pairs[2 * count + 1] = high;
      count++;
    },
    isDone: (item) => others[owners[item]!]! > crowd,
  });
  return { pairs, count, others, crowded };
}

/** Rings, or slabs where those are thinner by far. */
function narrowest(pieces: Pieces, { rings, owners }: NarrowBoxes): Float64Array {
  if (rings.length === 0) return rings;
  let ringed = 0;
  for (let k = 0; k < owners.length; k++) ringed += rings[2 * k + 1]! - rings[2 * k]!;
  const { slabs, thickness } = slabsOf(pieces);
  if (thickness / pieces.count > (THINNER * ringed) / owners.length) return rings;
  const ofBoxes = reals(2 * owners.length);
  for (let k = 0; k < owners.length; k++) {
    ofBoxes[2 * k] = slabs[2 * owners[k]!]!;
    ofBoxes[2 * k + 1] = slabs[2 * owners[k]! + 1]!;
  }
  return ofBoxes;
}

const THINNER = 0.5;

function doubled(old: Int32Array): Int32Array {
  const larger = unfilled(2 * old.length);
  larger.set(old);
  return larger;
}

/** Whole numbers already seen: open addressing in a table of a power of two, at most half full. */
interface PairSet {
  table: Float64Array;
  count: number;
}

const FREE = -1;

function newPairSet(): PairSet {
  return { table: reals(1024).fill(FREE), count: 0 };
}

/** Adds a number; false when it was there. */
function addToSet(set: PairSet, value: number): boolean {
  if (2 * set.count >= set.table.length) {
    const old = set.table;
    set.table = reals(2 * old.length).fill(FREE);
    for (const each of old) if (each !== FREE) set.table[slotOf(set.table, each)] = each;
  }
  const slot = slotOf(set.table, value);
  if (set.table[slot] === value) return false;
  set.table[slot] = value;
  set.count++;
  return true;
}

/** Where a number stands or would stand. */
function slotOf(table: Float64Array, value: number): number {
  const mask = table.length - 1;
  const high = Math.floor(value / 0x1_0000_0000);
  let slot = (Math.imul(value | 0, 0x9e3779b1) ^ Math.imul(high + 1, 0x85ebca6b)) >>> 0;
  slot = (slot ^ (slot >>> 15)) & mask;
  while (table[slot] !== FREE && table[slot] !== value) slot = (slot + 1) & mask;
  return slot;
}
