/**
 * Lists of numbers for the inner loops, cut one after another from memory that is used again and again: for a small outline making them
 * anew would cost as much as the work, and for a large one the machine would spend its time on handing out memory never touched before.
 *
 * Lists are good until the mark set before them is released, last set first released.
 */

type Numbers = Int32Array | Float64Array;

interface Store<T extends Numbers> {
  /** What lists are cut from: the last of several, should one have been too small. */
  memory: T;
  taken: number;
  /** Full ones, which lists still lie in. */
  readonly full: T[];
  /** Memory for large outlines, out of use; the engine may take it back at any time. */
  spare: WeakRef<T> | undefined;
  readonly make: (count: number) => T;
}

const FIRST = 4096;
/** More memory (numbers) than this is not held on to. */
const MOST_HELD = 1 << 17;

const WHOLE = newStore((count) => new Int32Array(count));
const REAL = newStore((count) => new Float64Array(count));

function newStore<T extends Numbers>(make: (count: number) => T): Store<T> {
  return { memory: make(FIRST), taken: 0, full: [], spare: undefined, make };
}

/** A list of so many equal whole numbers. */
export function filled(count: number, value = 0): Int32Array {
  return unfilled(count).fill(value);
}

/** The same with anything in it. */
export function unfilled(count: number): Int32Array {
  const from = roomIn(WHOLE, count);
  return WHOLE.memory.subarray(from, from + count);
}

/** A list of so many numbers, whole or not, with anything in it. */
export function reals(count: number): Float64Array {
  const from = roomIn(REAL, count);
  return REAL.memory.subarray(from, from + count);
}

/** How much memory was in use at some time. */
export interface Mark {
  readonly wholes: number;
  readonly fullWholes: number;
  readonly reals: number;
  readonly fullReals: number;
}

export function markLists(): Mark {
  return {
    wholes: WHOLE.taken,
    fullWholes: WHOLE.full.length,
    reals: REAL.taken,
    fullReals: REAL.full.length,
  };
}

/** Lets the memory of all lists made since the mark was set be used again. */
export function releaseLists(mark: Mark): void {
  release(WHOLE, mark.wholes, mark.fullWholes);
  release(REAL, mark.reals, mark.fullReals);
}

function release<T extends Numbers>(store: Store<T>, taken: number, full: number): void {
  if (taken === 0 && full === 0) {
    // Nothing is in use: the largest memory stays.
    store.full.length = 0;
    store.taken = 0;
    if (store.memory.length <= MOST_HELD) return;
    store.spare = new WeakRef(store.memory);
    store.memory = store.make(FIRST);
    return;
  }
  // Memory that came after the mark is the larger: it stays the one that is cut from.
  if (store.full.length > full) store.full.length = full + 1;
  store.taken = store.full.length > full ? 0 : taken;
}

/** Takes so many numbers, and says where they begin. */
function roomIn<T extends Numbers>(store: Store<T>, count: number): number {
  if (store.taken + count > store.memory.length) {
    const spare = store.spare?.deref();
    store.spare = undefined;
    // Lists made before keep their own memory.
    if (store.taken > 0) store.full.push(store.memory);
    const least = Math.max(2 * store.memory.length, 4 * count);
    store.memory =
      spare !== undefined && spare.length > store.memory.length && spare.length >= count
        ? spare
        : store.make(least);
    store.taken = 0;
  }
  const from = store.taken;
  store.taken += count;
  return from;
}
