import { describe, expect, it } from 'vitest';
import { filled, markLists, reals, releaseLists, unfilled } from '../../src/geometry/memory/lists.ts';
import { orderByKey } from '../../src/geometry/memory/order-by-key.ts';
import { randomFrom } from '../cases/outlines/random.ts';

describe('order by key', () => {
  for (const count of [0, 1, 2, 1_000, 40_000]) {
    it(`puts ${count} keys in order, equal ones as they come`, () => {
      const random = randomFrom(count + 1);
      const most = 2 ** random.whole(1, 30) - 1;
      const keys = Int32Array.from({ length: count }, () => random.whole(0, most));
      const expected = Array.from(keys, (_, i) => i).sort((i, j) => keys[i]! - keys[j]! || i - j);
      expect(Array.from(orderByKey(keys))).toEqual(expected);
    });
  }

  it('knows the least and the greatest key there may be', () => {
    expect([...orderByKey(Int32Array.of(2 ** 30 - 1, 0, 2 ** 30 - 1, 1))]).toEqual([1, 3, 0, 2]);
  });
});

describe('lists cut from one memory', () => {
  it('keep what is written in them until their mark is released, however many are made and released meanwhile', () => {
    const random = randomFrom(3);
    const outer = markLists();
    const kept: { list: Int32Array | Float64Array; value: number }[] = [];
    for (let round = 1; round <= 60; round++) {
      const list = round % 2 === 0 ? filled(random.whole(0, 9_000), round) : reals(random.whole(0, 9_000));
      kept.push({ list: list.fill(round), value: round });
      const inner = markLists();
      for (let k = 0; k < 4; k++) {
        unfilled(random.whole(0, 20_000)).fill(-1);
        reals(random.whole(0, 20_000)).fill(-1);
      }
      releaseLists(inner);
    }
    for (const { list, value } of kept) expect(list.every((each) => each === value)).toBe(true);
    releaseLists(outer);
  });

  it('are cut from the same memory again after release', () => {
    const mark = markLists();
    const first = reals(100);
    releaseLists(mark);
    const second = reals(100);
    releaseLists(mark);
    expect(second.buffer).toBe(first.buffer);
    expect(second.byteOffset).toBe(first.byteOffset);
  });
});
