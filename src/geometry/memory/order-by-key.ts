import { filled, markLists, releaseLists, unfilled } from './lists.ts';

const BITS = 10;
const DIGITS = 1 << BITS;

/**
 * Numbers of the keys, whole and below 2^30, in the order of their size, equal ones as they come: digit by digit, which takes the same time for
 * each of a hundred as of a hundred thousand. In a list that is released with the rest.
 */
export function orderByKey(keys: Int32Array): Int32Array {
  const count = keys.length;
  let order = unfilled(count);
  const mark = markLists();
  let other = unfilled(count);
  const places = filled(3 * DIGITS);
  for (let i = 0; i < count; i++) {
    const key = keys[i]!;
    places[key & (DIGITS - 1)]!++;
    places[DIGITS + ((key >> BITS) & (DIGITS - 1))]!++;
    places[2 * DIGITS + (key >> (2 * BITS))]!++;
    other[i] = i;
  }
  for (let digit = 0; digit < 3; digit++) {
    const from = digit * DIGITS;
    for (let d = from, sum = 0; d < from + DIGITS; d++) {
      const some = places[d]!;
      places[d] = sum;
      sum += some;
    }
    for (let i = 0; i < count; i++) {
      const item = other[i]!;
      order[places[from + ((keys[item]! >> (digit * BITS)) & (DIGITS - 1))]!++] = item;
    }
    const done = order;
    order = other;
    other = done;
  }
  // After three digits the order stands in the list that was made first.
  releaseLists(mark);
  return other;
}
