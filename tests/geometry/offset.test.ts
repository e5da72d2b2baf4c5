import { describe, expect, it } from 'vitest';
import {
  areaOfRegions,
  circleOutline,
  closeRegions,
  findFaults,
  intersectRegions,
  type Outline,
  offsetRegions,
  openRegions,
  perimeterOfRegions,
  polygonOutline,
  type Region,
  simplifyRegions,
  slotOutline,
  transformRegion,
  uniteRegions,
  vec,
} from '../../src/geometry/index.ts';

const tag = (id: string) => ({ id, role: 'routed' }) as const;
const square = (side: number): Region => ({
  outer: polygonOutline(
    [vec(0, 0), vec(side, 0), vec(side, side), vec(0, side)],
    ['s', 'e', 'n', 'w'].map(tag),
  ),
  holes: [],
});
const round = (outline: Outline | undefined): string =>
  (outline?.edges ?? []).map(({ tag }) => tag.id).join(' ');

describe('closed forms', () => {
  it('a circle stays one arc; its radius grows and shrinks to nothing', () => {
    const circle = [{ outer: circleOutline(vec(3, 4), 10, tag('c')), holes: [] }];
    for (const by of [5, -4, -9.999]) {
      const [only] = offsetRegions(circle, by);
      expect(only?.outer.edges).toHaveLength(1);
      const edge = only!.outer.edges[0]!;
      expect(edge.kind === 'arc' && edge.radius).toBeCloseTo(10 + by, 12);
      expect(edge.tag.id).toBe('c');
    }
    expect(offsetRegions(circle, -10)).toEqual([]);
    expect(offsetRegions(circle, -1e6)).toEqual([]);
  });
  it('a rectangle grows by its perimeter and four quarter discs, and shrinks to a rectangle', () => {
    const grown = offsetRegions([square(10)], 2);
    expect(areaOfRegions(grown)).toBeCloseTo(100 + 80 + 4 * Math.PI, 11);
    expect(round(grown[0]?.outer)).toBe('s s e e n n w w');
    const shrunk = offsetRegions([square(10)], -2);
    expect(areaOfRegions(shrunk)).toBeCloseTo(36, 12);
    expect(round(shrunk[0]?.outer)).toBe('s e n w');
    expect(offsetRegions([square(10)], -5)).toEqual([]);
  });
  it('a slot stays a slot of four edges', () => {
    const slot = [{ outer: slotOutline(vec(0, 0), vec(30, 0), 5, tag('t')), holes: [] }];
    for (const by of [3, -2]) {
      const result = offsetRegions(slot, by);
      const r = 5 + by;
      expect(result[0]?.outer.edges).toHaveLength(4);
      expect(areaOfRegions(result)).toBeCloseTo(60 * r + Math.PI * r * r, 10);
      expect(perimeterOfRegions(result)).toBeCloseTo(60 + 2 * Math.PI * r, 10);
    }
    expect(offsetRegions(slot, -5)).toEqual([]);
  });
  it('a Reuleaux triangle of width w grows to a curve of constant width w + 2r', () => {
    const w = 40;
    const corners = [0, 1, 2].map((k) => {
      const a = (2 * Math.PI * k) / 3;
      return vec((w / Math.sqrt(3)) * Math.cos(a), (w / Math.sqrt(3)) * Math.sin(a));
    });
    const edges = corners.map((from, k) => ({
      kind: 'arc' as const,
      from,
      to: corners[(k + 1) % 3]!,
      centre: corners[(k + 2) % 3]!,
      radius: w,
      turn: 1 as const,
      tag: tag(`r${k}`),
    }));
    const triangle = [{ outer: { edges }, holes: [] }];
    // Area (π − √3) w² / 2 and, by Barbier's theorem, perimeter π w.
    expect(areaOfRegions(triangle)).toBeCloseTo(((Math.PI - Math.sqrt(3)) * w * w) / 2, 9);
    const r = 7;
    const grown = offsetRegions(triangle, r);
    expect(grown[0]?.outer.edges).toHaveLength(6);
    expect(perimeterOfRegions(grown)).toBeCloseTo(Math.PI * (w + 2 * r), 10);
    expect(areaOfRegions(grown)).toBeCloseTo(areaOfRegions(triangle) + Math.PI * w * r + Math.PI * r * r, 9);
  });
  it('an arc whose radius is the offset leaves a corner', () => {
    const rounded = offsetRegions([square(20)], 3);
    const back = offsetRegions(rounded, -3);
    expect(back[0]?.outer.edges.map(({ kind }) => kind)).toEqual(['line', 'line', 'line', 'line']);
    expect(areaOfRegions(back)).toBeCloseTo(400, 10);
  });
});

describe('edges of a ten-thousandth of a millimetre', () => {
  it('go through every operation', () => {
    // A square whose corners are cut off by so much: its area less four triangles.
    const c = 1e-4;
    const at = [
      vec(c, 0),
      vec(9, 0),
      vec(9 + c, c),
      vec(9 + c, 9),
      vec(9, 9 + c),
      vec(c, 9 + c),
      vec(0, 9),
      vec(0, c),
    ];
    const cut = [
      {
        outer: polygonOutline(
          at,
          at.map((_, k) => tag(`c${k}`)),
        ),
        holes: [],
      },
    ];
    const area = (9 + c) ** 2 - 2 * c * c;
    const length = 4 * (9 - c) + 4 * Math.SQRT2 * c;
    expect(areaOfRegions(cut)).toBeCloseTo(area, 11);
    const grown = offsetRegions(cut, 2);
    expect(areaOfRegions(grown)).toBeCloseTo(area + 2 * length + 4 * Math.PI, 10);
    expect(findFaults(grown)).toEqual([]);
    expect(areaOfRegions(offsetRegions(cut, -2))).toBeCloseTo((5 + c) ** 2, 10);
    const moved = cut.map((region) =>
      transformRegion(region, { turn: 0, shift: vec(c / 2, 0), scale: 1, mirrored: false }),
    );
    const united = uniteRegions(cut, moved);
    expect(findFaults(united)).toEqual([]);
    expect(areaOfRegions(united)).toBeCloseTo(area + ((9 + c) * c) / 2, 10);
    expect(areaOfRegions(intersectRegions(cut, moved))).toBeCloseTo(2 * area - areaOfRegions(united), 10);
  });
});

describe('holes, islands, splits and merges', () => {
  const ring = (r: number): Region[] => [
    { ...square(20), holes: [circleOutline(vec(10, 10), r, tag('h'), -1)] },
  ];
  it('a hole closes when the region grows by its radius', () => {
    expect(offsetRegions(ring(5), 4.999)[0]?.holes).toHaveLength(1);
    expect(offsetRegions(ring(5), 5)[0]?.holes).toHaveLength(0);
    expect(offsetRegions(ring(5), 12)[0]?.holes).toHaveLength(0);
  });
  it('a ring falls apart at its narrowest, exactly there too', () => {
    expect(offsetRegions(ring(5), -2.4)).toHaveLength(1);
    expect(offsetRegions(ring(5), -2.5)).toHaveLength(4);
    expect(offsetRegions(ring(5), -2.6)).toHaveLength(4);
  });
  it('a neck as wide as twice the offset is cut, and leaves no slit', () => {
    const points = [
      [0, 0],
      [10, 0],
      [10, 4],
      [20, 4],
      [20, 0],
      [30, 0],
      [30, 10],
      [20, 10],
      [20, 6],
      [10, 6],
      [10, 10],
      [0, 10],
    ].map(([x, y]) => vec(x!, y!));
    const weight = [{ outer: polygonOutline(points, tag('w')), holes: [] }];
    expect(offsetRegions(weight, -0.999)).toHaveLength(1);
    const apart = offsetRegions(weight, -1);
    expect(apart).toHaveLength(2);
    expect(findFaults(apart)).toEqual([]);
  });
  it('two plates merge when they grow by half their distance', () => {
    const right = {
      outer: polygonOutline([vec(26, 0), vec(40, 0), vec(40, 20), vec(26, 20)], tag('b')),
      holes: [],
    };
    expect(offsetRegions([square(20), right], 2.999)).toHaveLength(2);
    const merged = offsetRegions([square(20), right], 3);
    expect(merged).toHaveLength(1);
    expect(findFaults(merged)).toEqual([]);
  });
  it('an island in a hole keeps its own outline', () => {
    const island = { outer: circleOutline(vec(10, 10), 1, tag('i')), holes: [] };
    const grown = offsetRegions([...ring(5), island], 1);
    expect(grown).toHaveLength(2);
    expect(offsetRegions([...ring(5), island], 2)).toHaveLength(1);
  });
});

describe('mitred joins', () => {
  it('keep a square square', () => {
    const [grown] = simplifyRegions(offsetRegions([square(10)], 1, { joins: 'mitred' }));
    expect(round(grown?.outer)).toBe('s e n w');
    expect(areaOfRegions([grown!])).toBeCloseTo(144, 11);
  });
  it('stay round beyond the limit', () => {
    const spike = { outer: polygonOutline([vec(0, 0), vec(100, 0), vec(0, 10)], tag('p')), holes: [] };
    const pointed = offsetRegions([spike], 2, { joins: 'mitred', mitreLimit: 100 });
    const limited = offsetRegions([spike], 2, { joins: 'mitred', mitreLimit: 4 });
    expect(pointed[0]?.outer.edges.some(({ kind }) => kind === 'arc')).toBe(false);
    expect(limited[0]?.outer.edges.filter(({ kind }) => kind === 'arc')).toHaveLength(1);
    // A point stands at r / sin(half the corner's angle) from its corner.
    const tip = Math.max(...pointed[0]!.outer.edges.map(({ from }) => Math.hypot(from.x - 100, from.y)));
    expect(tip).toBeGreaterThan(40);
  });
  it('keep inside corners of what shrinks sharp', () => {
    const ell = polygonOutline(
      [vec(0, 0), vec(20, 0), vec(20, 10), vec(10, 10), vec(10, 20), vec(0, 20)],
      tag('l'),
    );
    const shrunk = offsetRegions([{ outer: ell, holes: [] }], -2, { joins: 'mitred' });
    expect(areaOfRegions(shrunk)).toBeCloseTo(16 * 6 + 6 * 10, 10);
  });
});

describe('opening and closing', () => {
  it('opening rounds outside corners, closing inside ones', () => {
    expect(areaOfRegions(openRegions([square(10)], 2))).toBeCloseTo(100 - (4 - Math.PI) * 4, 10);
    expect(areaOfRegions(closeRegions([square(10)], 2))).toBeCloseTo(100, 10);
  });
  it('opening loses what a disc cannot enter', () => {
    expect(openRegions([square(10)], 5.1)).toEqual([]);
  });
});

it('an offset of nothing changes nothing, and one that is not a number is a mistake', () => {
  expect(offsetRegions([square(10)], 0)).toEqual([square(10)]);
  expect(offsetRegions([], 5)).toEqual([]);
  expect(() => offsetRegions([square(10)], Number.NaN)).toThrow(RangeError);
});

it('broken input ends', () => {
  const broken: Region[] = [
    { outer: polygonOutline([vec(0, 0), vec(Number.NaN, 1), vec(4, 4)], tag('n')), holes: [] },
    { outer: polygonOutline([vec(0, 0), vec(10, 0), vec(0, 0), vec(10, 0)], tag('b')), holes: [] },
    { outer: { edges: [] }, holes: [{ edges: [] }] },
    { outer: polygonOutline([vec(0, 0), vec(0, 10), vec(10, 10), vec(10, 0)], tag('r')), holes: [] },
  ];
  for (const region of broken) {
    expect(findFaults([region])).not.toEqual([]);
    for (const by of [1, -1]) expect(Array.isArray(offsetRegions([region], by))).toBe(true);
  }
});
