import { describe, expect, it } from 'vitest';
import { marksOfCopies } from '../../../src/base/stand/marks-of-places.ts';
import { vec3 } from '../../../src/geometry/index.ts';

const marks = (...places: readonly (readonly [number, number])[]) =>
  marksOfCopies(places.map(([x, y]) => vec3(x, y, 0)));

describe('the marks of copies', () => {
  it('are as the sitter sees them, who sits at the front', () => {
    expect(marks([-600, -300], [600, -300], [-600, 300], [600, 300])).toEqual(['FL', 'FR', 'BL', 'BR']);
  });

  it('say only what tells them apart', () => {
    expect(marks([0, -300], [0, 300])).toEqual(['F', 'B']);
    expect(marks([-600, -300], [600, -300])).toEqual(['L', 'R']);
    expect(marks([-600, 20])).toEqual(['']);
  });

  it('are nothing in the middle, as near as a millimetre', () => {
    expect(marks([-600, 0], [0.5, 0], [600, 0])).toEqual(['L', '', 'R']);
  });

  it('are numbered where places do not tell them apart', () => {
    expect(marks([-600, -300], [-400, -300], [600, -300])).toEqual(['L1', 'L2', 'R']);
    expect(marks([10, 10], [20, 20])).toEqual(['1', '2']);
  });
});
