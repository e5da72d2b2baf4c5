import { describe, expect, it } from 'vitest';
import {
  arc,
  type Edge,
  type EdgeTag,
  intersectEdges,
  line,
  reverseEdge,
  vec,
} from '../../src/geometry/index.ts';

const tag: EdgeTag = { id: 'e', role: 'routed' };
const from = (x0: number, y0: number, x1: number, y1: number): Edge => line(vec(x0, y0), vec(x1, y1), tag);
/** Arc about (cx, cy) between two directions in degrees, anticlockwise. */
const sweep = (cx: number, cy: number, r: number, a: number, b: number): Edge => {
  const at = (d: number) =>
    vec(cx + r * Math.cos((d * Math.PI) / 180), cy + r * Math.sin((d * Math.PI) / 180));
  return { kind: 'arc', from: at(a), to: at(b), centre: vec(cx, cy), radius: r, turn: 1, tag };
};
const circle = (cx: number, cy: number, r: number): Edge => {
  const p = vec(cx + r, cy);
  return arc(p, p, vec(cx, cy), 1, tag);
};
const places = (a: Edge, b: Edge): string => {
  const found = intersectEdges(a, b);
  const say = (p: { x: number; y: number }) =>
    `${p.x.toFixed(4)},${p.y.toFixed(4)}`.replace(/-0\.0000/g, '0.0000');
  switch (found.kind) {
    case 'none':
      return 'none';
    case 'tangent':
      return `tangent ${say(found.at.point)}`;
    case 'points':
      return `points ${found.points.map((m) => say(m.point)).join(' ')}`;
    case 'overlap':
      return `overlap ${found.stretches.map((s) => `${say(s.from.point)}>${say(s.to.point)}${s.sameWay ? '' : ' against'}`).join(' ')}`;
  }
};

describe('lines', () => {
  it('cross at one point', () => {
    expect(places(from(0, 0, 10, 10), from(0, 10, 10, 0))).toBe('points 5.0000,5.0000');
  });
  it('that would cross only when made longer do not meet', () => {
    expect(places(from(0, 0, 4, 4), from(0, 10, 10, 0))).toBe('none');
  });
  it('meet where one ends on the other', () => {
    expect(places(from(0, 0, 10, 0), from(4, 0, 4, 7))).toBe('points 4.0000,0.0000');
  });
  it('run along each other for a stretch, and against each other when one is reversed', () => {
    expect(places(from(0, 0, 10, 0), from(4, 0, 14, 0))).toBe('overlap 4.0000,0.0000>10.0000,0.0000');
    expect(places(from(0, 0, 10, 0), from(14, 0, 4, 0))).toBe('overlap 4.0000,0.0000>10.0000,0.0000 against');
  });
  it('in one direction that share only an end meet at it', () => {
    expect(places(from(0, 0, 10, 0), from(10, 0, 20, 0))).toBe('points 10.0000,0.0000');
  });
  it('that are parallel or of no length do not trouble it', () => {
    expect(places(from(0, 0, 10, 0), from(0, 1, 10, 1))).toBe('none');
    expect(places(from(0, 0, 10, 0), from(3, 0, 3, 0))).toBe('points 3.0000,0.0000');
    expect(places(from(3, 1, 3, 1), from(0, 0, 10, 0))).toBe('none');
  });
  it('that differ by a ten-millionth of a radian still cross where they cross', () => {
    expect(places(from(-1000, 0, 1000, 0), from(-1000, -1e-4, 1000, 1e-4))).toBe('points 0.0000,0.0000');
  });
});

describe('a line and an arc', () => {
  it('meet twice on a whole circle', () => {
    expect(places(from(-10, 3, 10, 3), circle(0, 0, 5))).toBe('points -4.0000,3.0000 4.0000,3.0000');
  });
  it('meet within the sweep only', () => {
    expect(places(from(-10, 3, 10, 3), sweep(0, 0, 5, 0, 90))).toBe('points 4.0000,3.0000');
    expect(places(from(-10, 3, 10, 3), sweep(0, 0, 5, 100, 440))).toBe('points -4.0000,3.0000 4.0000,3.0000');
    expect(places(from(-10, -3, 10, -3), sweep(0, 0, 5, 0, 180))).toBe('none');
  });
  it('touch', () => {
    expect(places(from(-10, 5, 10, 5), circle(0, 0, 5))).toBe('tangent 0.0000,5.0000');
    expect(places(from(-10, 5.00001, 10, 5.00001), circle(0, 0, 5))).toBe('none');
  });
  it('joined smoothly meet at their joint alone', () => {
    expect(places(from(-10, -5, 0, -5), sweep(0, 0, 5, -90, 0))).toBe('points 0.0000,-5.0000');
  });
  it('of a radius of a kilometre cross at the right places', () => {
    const depth = 2;
    const half = Math.sqrt(depth * (2e6 - depth));
    expect(places(from(-4000, 0, 4000, 0), sweep(0, -1e6 + depth, 1e6, 80, 100))).toBe(
      `points ${(-half).toFixed(4)},0.0000 ${half.toFixed(4)},0.0000`,
    );
  });
});

describe('two arcs', () => {
  it('cross twice', () => {
    expect(places(circle(0, 0, 5), circle(6, 0, 5))).toBe('points 3.0000,4.0000 3.0000,-4.0000');
  });
  it('touch from outside and from inside', () => {
    expect(places(circle(0, 0, 5), circle(0, 8, 3))).toBe('tangent 0.0000,5.0000');
    expect(places(circle(0, 0, 5), circle(0, 2, 3))).toBe('tangent 0.0000,5.0000');
  });
  it('apart or nested do not meet', () => {
    expect(places(circle(0, 0, 5), circle(20, 0, 5))).toBe('none');
    expect(places(circle(0, 0, 5), circle(1, 0, 2))).toBe('none');
    expect(places(circle(0, 0, 5), circle(0, 0, 2))).toBe('none');
  });
  it('of one circle overlap once, twice, or touch at ends', () => {
    const right = '5.0000,0.0000';
    expect(places(sweep(0, 0, 5, 0, 180), sweep(0, 0, 5, 90, 270))).toBe(
      'overlap 0.0000,5.0000>-5.0000,0.0000',
    );
    expect(places(sweep(0, 0, 5, 0, 270), sweep(0, 0, 5, 180, 450))).toBe(
      `overlap ${right}>0.0000,5.0000 -5.0000,0.0000>0.0000,-5.0000`,
    );
    expect(places(sweep(0, 0, 5, 0, 180), sweep(0, 0, 5, 180, 360))).toBe(`points ${right} -5.0000,0.0000`);
    expect(places(sweep(0, 0, 5, 0, 90), reverseEdge(sweep(0, 0, 5, 0, 90)))).toBe(
      `overlap ${right}>0.0000,5.0000 against`,
    );
  });
  it('that are whole circles are one from seam to seam', () => {
    expect(places(circle(0, 0, 5), circle(0, 0, 5))).toBe('overlap 5.0000,0.0000>5.0000,0.0000');
  });
  it('shares of the length tell where on each edge the meeting lies', () => {
    const found = intersectEdges(sweep(0, 0, 5, 0, 180), from(0, 0, 0, 10));
    expect(found.kind).toBe('points');
    if (found.kind !== 'points') return;
    expect(found.points[0]!.onA).toBeCloseTo(0.5, 12);
    expect(found.points[0]!.onB).toBeCloseTo(0.5, 12);
  });
});
