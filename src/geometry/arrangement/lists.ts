/**
 * Lists of numbers for the inner loops, cut one after another from memory that is used again and again: for a small outline making them
 * anew would cost as much as the work, and for a large one the machine would spend its time clearing new memory.
 */

type Numbers = Int32Array | Float64Array;

interface Store<T extends Numbers> {
  /** What lists are cut from, and how much of it is taken. */
  memory: T;
  taken: number;
  /** Memory for large outlines, out of use; the engine may take it back at any time. */
  spare: WeakRef<T> | undefined;
  readonly make: (count: number) => T;
}

const FIRST = 4096;
/** More memory (numbers) than this is not held on to. */
const MOST_HELD = 1 << 16;

const WHOLE = newStore((count) => new Int32Array(count));
const REAL = newStore((count) => new Float64Array(count));

function newStore<T extends Numbers>(make: (count: number) => T): Store<T> {
  return { memory: make(FIRST), taken: 0, spare: undefined, make };
}

/** A list of so many equal whole numbers, good until `forgetLists` is called. */
export function filled(count: number, value = 0): Int32Array {
  return unfilled(count).fill(value);
}

/** The same with anything in it. */
export function unfilled(count: number): Int32Array {
  const from = roomIn(WHOLE, count);
  return WHOLE.memory.subarray(from, from + count);
}

/** A list of so many numbers, whole or not, with anything in it, good until `forgetLists` is called. */
export function reals(count: number): Float64Array {
  const from = roomIn(REAL, count);
  return REAL.memory.subarray(from, from + count);
}

/** Lets the memory of all lists be used again: whoever begins an arrangement is done with the one before. */
export function forgetLists(): void {
  startAgain(WHOLE);
  startAgain(REAL);
}

function startAgain<T extends Numbers>(store: Store<T>): void {
  store.taken = 0;
  if (store.memory.length <= MOST_HELD) return;
  store.spare = new WeakRef(store.memory);
  store.memory = store.make(FIRST);
}

/** Takes so many numbers, and says where they begin. */
function roomIn<T extends Numbers>(store: Store<T>, count: number): number {
  if (store.taken + count > store.memory.length) {
    const spare = store.spare?.deref();
    store.spare = undefined;
    // Lists made before keep their own memory.
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
