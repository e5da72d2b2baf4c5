import { filled } from '../memory/lists.ts';

/** A set of whole numbers from 0 up: bits, and bits that tell which words of bits are not empty, and so on up to one word. In lists that are released with the rest. */
export type RankSet = readonly Int32Array[];

export function newRankSet(size: number): RankSet {
  const levels: Int32Array[] = [];
  let words = size;
  do {
    words = (words + 31) >> 5;
    levels.push(filled(Math.max(words, 1)));
  } while (words > 1);
  return levels;
}

export function addRank(set: RankSet, rank: number): void {
  let at = rank;
  for (const words of set) {
    words[at >> 5]! |= 1 << (at & 31);
    at >>= 5;
  }
}

export function removeRank(set: RankSet, rank: number): void {
  let at = rank;
  for (const words of set) {
    words[at >> 5]! &= ~(1 << (at & 31));
    if (words[at >> 5] !== 0) return;
    at >>= 5;
  }
}

/** The lowest number of the set that is not below `rank`, or −1. */
export function lowestRank(set: RankSet, rank: number): number {
  let at = rank;
  for (let level = 0; level < set.length; level++) {
    const words = set[level]!;
    if (at >> 5 >= words.length) return -1;
    const bits = words[at >> 5]! & (-1 << (at & 31));
    if (bits !== 0) {
      at = (at & ~31) + lowestBit(bits);
      for (let down = level - 1; down >= 0; down--) at = 32 * at + lowestBit(set[down]![at]!);
      return at;
    }
    at = (at >> 5) + 1;
  }
  return -1;
}

function lowestBit(bits: number): number {
  return 31 - Math.clz32(bits & -bits);
}
