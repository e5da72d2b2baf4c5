import { describe, expect, it } from 'vitest';
import {
  areaOfRegions,
  circleOutline,
  findFaults,
  intersectRegions,
  type Outline,
  polygonOutline,
  type Region,
  regionsFromLoops,
  subtractRegions,
  symmetricDifference,
  uniteRegions,
  vec,
} from '../../src/geometry/index.ts';

const tag = (id: string) => ({ id, role: 'routed' }) as const;
const plate = (x: number, y: number, w: number, h: number, id = 'a'): Region => ({
  outer: polygonOutline(
    [vec(x, y), vec(x + w, y), vec(x + w, y + h), vec(x, y + h)],
    ['bottom', 'right', 'top', 'left'].map((side) => tag(`${id}.${side}`)),
  ),
  holes: [],
});
const disc = (x: number, y: number, r: number, id = 'd'): Region => ({
  outer: circleOutline(vec(x, y), r, tag(id)),
  holes: [],
});
/** Tags in order round a loop. */
const round = (outline: Outline | undefined): string =>
  (outline?.edges ?? []).map(({ tag }) => tag.id).join(' ');

describe('every edge of a result keeps the identity of the edge it is part of', () => {
  it('where a disc bites into a plate', () => {
    const [bitten, ...others] = subtractRegions([plate(0, 0, 10, 10)], [disc(10, 5, 3)]);
    expect(others).toEqual([]);
    expect(round(bitten?.outer)).toBe('a.bottom a.right d a.right a.top a.left');
    expect(areaOfRegions([bitten!])).toBeCloseTo(100 - 4.5 * Math.PI, 10);
  });
  it('and where edges of both coincide the first operand names the result', () => {
    const [both] = intersectRegions([plate(0, 0, 10, 10, 'a')], [plate(4, 0, 20, 10, 'b')]);
    expect(round(both?.outer)).toBe('a.bottom a.right a.top b.left');
  });
  it('an edge cut away in the middle comes back as one edge on either side', () => {
    const [notched] = subtractRegions([plate(0, 0, 10, 10, 'a')], [plate(4, 8, 2, 4, 'b')]);
    expect(round(notched?.outer)).toBe('a.bottom a.right a.top b.right b.bottom b.left a.top a.left');
  });
});

describe('coinciding and touching edges', () => {
  const a = [plate(0, 0, 10, 10, 'a')];
  it('equal regions unite to themselves and leave nothing of each other', () => {
    const same = [plate(0, 0, 10, 10, 'b')];
    expect(areaOfRegions(uniteRegions(a, same))).toBe(100);
    expect(areaOfRegions(intersectRegions(a, same))).toBe(100);
    expect(subtractRegions(a, same)).toEqual([]);
    expect(symmetricDifference(a, same)).toEqual([]);
  });
  it('plates side by side become one without a seam', () => {
    const [one, ...others] = uniteRegions(a, [plate(10, 0, 5, 10, 'b')]);
    expect(others).toEqual([]);
    expect(round(one?.outer)).toBe('a.bottom b.bottom b.right b.top a.top a.left');
    expect(intersectRegions(a, [plate(10, 0, 5, 10, 'b')])).toEqual([]);
  });
  it('plates that share a corner stay two regions that touch', () => {
    const both = uniteRegions(a, [plate(10, 10, 5, 5, 'b')]);
    expect(both.map(({ outer }) => outer.edges.length)).toEqual([4, 4]);
    expect(findFaults(both)).toEqual([]);
  });
  it('a disc that touches the edge from inside leaves a hole that touches it', () => {
    const [ring, ...others] = subtractRegions(a, [disc(5, 2, 2)]);
    expect(others).toEqual([]);
    expect(ring?.holes).toHaveLength(1);
    expect(findFaults([ring!])).toEqual([]);
  });
  it('a diamond whose corners touch the sides leaves four corners', () => {
    const diamond: Region = {
      outer: polygonOutline([vec(5, 0), vec(10, 5), vec(5, 10), vec(0, 5)], tag('b')),
      holes: [],
    };
    const corners = subtractRegions(a, [diamond]);
    expect(corners.map(({ outer }) => outer.edges.length)).toEqual([3, 3, 3, 3]);
    expect(areaOfRegions(corners)).toBe(50);
  });
  it('two arcs of one circle overlap exactly', () => {
    const half = (turned: number): Region => {
      const p = vec(5 * Math.cos(turned), 5 * Math.sin(turned));
      const q = vec(-p.x, -p.y);
      const edges = [
        { kind: 'arc', from: p, to: q, centre: vec(0, 0), radius: 5, turn: 1, tag: tag('arc') },
        { kind: 'line', from: q, to: p, tag: tag('cut') },
      ] as const;
      return { outer: { edges }, holes: [] };
    };
    const [sector] = intersectRegions([half(0)], [half(Math.PI / 2)]);
    expect(round(sector?.outer)).toBe('arc cut cut');
    expect(areaOfRegions([sector!])).toBeCloseTo((Math.PI * 25) / 4, 12);
  });
});

describe('holes and islands', () => {
  it('a hole filled by what is united with it is gone', () => {
    const ring = subtractRegions([plate(0, 0, 20, 20)], [disc(10, 10, 5)]);
    expect(ring[0]?.holes).toHaveLength(1);
    const filled = uniteRegions(ring, [disc(10, 10, 6)]);
    expect(filled[0]?.holes).toHaveLength(0);
    expect(areaOfRegions(filled)).toBeCloseTo(400, 9);
  });
  it('an island in a hole is a region of its own', () => {
    const ring = subtractRegions([plate(0, 0, 20, 20)], [disc(10, 10, 5)]);
    const both = uniteRegions(ring, [disc(10, 10, 2)]);
    expect(both).toHaveLength(2);
    expect(areaOfRegions(both)).toBeCloseTo(400 - 21 * Math.PI, 9);
  });
  it('an equal disc puts the hole right', () => {
    const ring = subtractRegions([plate(0, 0, 20, 20)], [disc(10, 10, 5)]);
    expect(uniteRegions(ring, [disc(10, 10, 5)])).toEqual([
      { outer: expect.objectContaining({ edges: expect.arrayContaining([]) }), holes: [] },
    ]);
  });
  it('two crossing bars enclose nothing, three of them a triangle', () => {
    const bar = (turned: number): Region => {
      const c = Math.cos(turned);
      const s = Math.sin(turned);
      const at = (x: number, y: number) => vec(c * x - s * y, s * x + c * y);
      return {
        outer: polygonOutline([at(-50, 8), at(50, 8), at(50, 12), at(-50, 12)], tag('bar')),
        holes: [],
      };
    };
    const third = (2 * Math.PI) / 3;
    const two = uniteRegions([bar(0)], [bar(third)]);
    expect(two[0]?.holes).toHaveLength(0);
    const three = uniteRegions(two, [bar(2 * third)]);
    expect(three).toHaveLength(1);
    expect(three[0]?.holes).toHaveLength(1);
  });
});

describe('regions from loops', () => {
  const figure = polygonOutline([vec(0, 0), vec(10, 10), vec(10, 0), vec(0, 10)], tag('x'));
  it('a bow tie is two triangles that touch', () => {
    const both = regionsFromLoops([figure]);
    expect(both.map(({ outer }) => outer.edges.length)).toEqual([3, 3]);
    expect(areaOfRegions(both)).toBeCloseTo(50, 12);
  });
  it('the rules differ where loops wind twice or backwards', () => {
    const outer = plate(0, 0, 10, 10).outer;
    const inner = plate(2, 2, 4, 4).outer;
    expect(areaOfRegions(regionsFromLoops([outer, inner], 'nonzero'))).toBe(100);
    expect(areaOfRegions(regionsFromLoops([outer, inner], 'odd'))).toBe(84);
    const backwards = polygonOutline([vec(2, 2), vec(2, 6), vec(6, 6), vec(6, 2)], tag('h'));
    expect(areaOfRegions(regionsFromLoops([outer, backwards], 'positive'))).toBe(84);
    expect(regionsFromLoops([backwards], 'positive')).toEqual([]);
    expect(areaOfRegions(regionsFromLoops([backwards], 'nonzero'))).toBe(16);
  });
  it('a slit without width disappears', () => {
    const slit = polygonOutline(
      [vec(0, 0), vec(10, 0), vec(10, 10), vec(5, 10), vec(5, 4), vec(5, 10), vec(0, 10)],
      tag('s'),
    );
    const [whole] = regionsFromLoops([slit]);
    expect(areaOfRegions([whole!])).toBe(100);
    expect(findFaults([whole!])).toEqual([]);
  });
  it('broken input ends, with or without a result', () => {
    const nan = polygonOutline([vec(0, 0), vec(Number.NaN, 0), vec(10, 10)], tag('n'));
    const dot = polygonOutline([vec(1, 1), vec(1, 1), vec(1, 1)], tag('n'));
    const far = polygonOutline([vec(0, 0), vec(Infinity, 0), vec(10, 10)], tag('n'));
    expect(findFaults(regionsFromLoops([nan, dot, far, { edges: [] }]))).toEqual([]);
  });
});

describe('vertices nearer to each other than the snap', () => {
  it('bend no line to a corner that lies on neither side of the result', () => {
    // The corners of b reach 5e-9 mm into a; what counts is where its sides cross a's bottom.
    const a = [plate(0, 0, 100, 100, 'a')];
    const b = [plate(30, -50, 30, 50 + 5e-9, 'b')];
    const [united] = uniteRegions(a, b);
    expect(united!.outer.edges).toHaveLength(8);
    const bottom = united!.outer.edges.filter(({ tag }) => tag.id === 'a.bottom');
    expect(bottom.flatMap(({ from, to }) => [from.y, to.y])).toEqual([0, 0, 0, 0]);
  });
  it('become one where the result would have both', () => {
    const [united] = uniteRegions([plate(0, 0, 100, 100, 'a')], [plate(50, 5e-9, 100, 100, 'b')]);
    const corners = united!.outer.edges.map(({ from }) => from);
    corners.forEach((p, i) => {
      for (const q of corners.slice(i + 1)) expect(Math.hypot(p.x - q.x, p.y - q.y)).toBeGreaterThan(1e-8);
    });
    expect(findFaults([united!])).toEqual([]);
  });
});
