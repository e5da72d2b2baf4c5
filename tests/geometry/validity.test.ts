import { describe, expect, it } from 'vitest';
import {
  circleOutline,
  findFaults,
  line,
  offsetRegions,
  polygonOutline,
  type Region,
  simplifyRegions,
  vec,
} from '../../src/geometry/index.ts';

const tag = { id: 'e', role: 'routed' } as const;
const loop = (...points: readonly (readonly [number, number])[]) =>
  polygonOutline(
    points.map(([x, y]) => vec(x, y)),
    tag,
  );
const plate = loop([0, 0], [10, 0], [10, 10], [0, 10]);
const kinds = (...regions: Region[]): string[] => findFaults(regions).map(({ kind }) => kind);

describe('faults, each with its place', () => {
  it('none in a plate with two holes that touch', () => {
    const holes = [circleOutline(vec(3, 5), 2, tag, -1), circleOutline(vec(7, 5), 2, tag, -1)];
    expect(kinds({ outer: plate, holes })).toEqual([]);
  });
  it('a gap', () => {
    const edges = [
      line(vec(0, 0), vec(10, 0), tag),
      line(vec(10, 0), vec(5, 8), tag),
      line(vec(5, 8.001), vec(0, 0), tag),
    ];
    const [fault] = findFaults([{ outer: { edges }, holes: [] }]);
    expect(fault?.kind).toBe('unclosed');
    expect(fault?.at).toEqual(vec(5, 8));
    expect(fault?.edge).toBe(1);
  });
  it('an edge of no length, a number that is none, an arc off its circle, no edges', () => {
    expect(kinds({ outer: loop([0, 0], [0, 0], [10, 0], [5, 5]), holes: [] })).toContain('zero-edge');
    expect(kinds({ outer: loop([0, 0], [Number.NaN, 0], [5, 5]), holes: [] })).toContain('not-finite');
    const off = circleOutline(vec(0, 0), 5, tag).edges[0]!;
    expect(kinds({ outer: { edges: [{ ...off, radius: 5.1 } as typeof off] }, holes: [] })).toEqual([
      'bad-arc',
    ]);
    expect(kinds({ outer: { edges: [] }, holes: [] })).toEqual(['empty']);
  });
  it('a loop that crosses itself, where it does', () => {
    const faults = findFaults([
      { outer: loop([0, 0], [10, 0], [0, 10], [1, 10], [1, -4], [0, -4]), holes: [] },
    ]);
    const fault = faults.find(({ kind }) => kind !== 'wrong-direction');
    expect(fault?.kind).toBe('self-crossing');
    expect(fault!.at.x).toBeCloseTo(1, 12);
  });
  it('a spike that runs back along itself, and a corner that touches an edge', () => {
    expect(
      kinds({ outer: loop([0, 0], [10, 0], [10, 10], [10, 14], [10, 10], [0, 10]), holes: [] }),
    ).toContain('self-crossing');
    expect(kinds({ outer: loop([0, 0], [10, 0], [10, 10], [5, 0], [0, 10]), holes: [] })).toContain(
      'self-crossing',
    );
  });
  it('the wrong direction', () => {
    expect(kinds({ outer: loop([0, 0], [0, 10], [10, 10], [10, 0]), holes: [] })).toEqual([
      'wrong-direction',
    ]);
    expect(kinds({ outer: plate, holes: [circleOutline(vec(5, 5), 2, tag)] })).toEqual(['wrong-direction']);
  });
  it('a hole outside, across the edge, or in another hole', () => {
    expect(kinds({ outer: plate, holes: [circleOutline(vec(25, 5), 2, tag, -1)] })).toEqual(['hole-outside']);
    expect(kinds({ outer: plate, holes: [circleOutline(vec(10, 5), 2, tag, -1)] })).toContain('crossing');
    const nested = [circleOutline(vec(5, 5), 4, tag, -1), circleOutline(vec(5, 5), 2, tag, -1)];
    expect(kinds({ outer: plate, holes: nested })).toEqual(['overlap']);
  });
  it('a region in the material of another, but not one in its hole', () => {
    const small = { outer: circleOutline(vec(5, 5), 1, tag), holes: [] };
    expect(kinds({ outer: plate, holes: [] }, small)).toEqual(['overlap']);
    expect(kinds({ outer: plate, holes: [circleOutline(vec(5, 5), 2, tag, -1)] }, small)).toEqual([]);
  });
});

describe('simplifying', () => {
  it('joins neighbours of one tag on one line, across the start too', () => {
    const chopped = loop([5, 0], [10, 0], [10, 4], [10, 10], [0, 10], [0, 0]);
    expect(simplifyRegions([{ outer: chopped, holes: [] }])[0]?.outer.edges).toHaveLength(4);
  });
  it('keeps apart what has different tags', () => {
    const edges = plate.edges.map((edge, i) => ({ ...edge, tag: { id: `e${i}`, role: 'routed' as const } }));
    const middle = vec(5, 0);
    const split = [
      { ...edges[0]!, to: middle },
      { ...edges[0]!, from: middle, tag: { id: 'f', role: 'sawn' as const } },
    ];
    expect(
      simplifyRegions([{ outer: { edges: [...split, ...edges.slice(1)] }, holes: [] }])[0]?.outer.edges,
    ).toHaveLength(5);
  });
  it('joins arcs of one circle up to the whole of it', () => {
    const circle = circleOutline(vec(0, 0), 5, tag).edges[0]!;
    const left = vec(-5, 0);
    const halves = [
      { ...circle, to: left },
      { ...circle, from: left },
    ];
    const [simple] = simplifyRegions([{ outer: { edges: halves }, holes: [] }]);
    expect(simple?.outer.edges).toHaveLength(1);
    expect(findFaults([simple!])).toEqual([]);
  });
  it('drops edges and loops below tolerance', () => {
    const nick = loop([0, 0], [10, 0], [10, 1e-8], [10, 10], [0, 10]);
    expect(simplifyRegions([{ outer: nick, holes: [] }])[0]?.outer.edges).toHaveLength(4);
    expect(simplifyRegions([{ outer: loop([0, 0], [10, 0], [10, 1e-9]), holes: [] }])).toEqual([]);
  });
  it('has nothing to do on an offset', () => {
    const grown = offsetRegions([{ outer: plate, holes: [] }], 2);
    expect(simplifyRegions(grown)).toEqual(grown);
  });
});
