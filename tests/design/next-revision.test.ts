import { describe, expect, it } from 'vitest';
import { nextRevision } from '../../src/design/index.ts';

describe('the next revision', () => {
  // ASME Y14.35 passes over I and O, because they read as 1 and 0 (from memory).
  it.each([
    ['A', 'B'],
    ['H', 'J'],
    ['N', 'P'],
    ['Z', 'AA'],
    ['AZ', 'BA'],
    ['ZZ', 'AAA'],
    ['3', '4'],
    ['9', '10'],
    ['07', '08'],
    ['B2', 'B3'],
    ['draft', 'draft2'],
  ])('after %s is %s, dated today', (index, next) => {
    expect(nextRevision({ index, date: '2020-01-01' }, '2026-03-09')).toEqual({
      index: next,
      date: '2026-03-09',
    });
  });
});
