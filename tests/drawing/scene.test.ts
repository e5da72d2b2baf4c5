import { expect, test } from 'vitest';
import {
  clipScene,
  type Scene,
  type TextMark,
  transformMark,
  transformScene,
} from '../../src/drawing/index.ts';
import { boxOfText, cornersOf } from '../../src/drawing/layout/oriented-box.ts';
import { arc, type Box, line, STAY, transformPoint, vec } from '../../src/geometry/index.ts';

const TAG = { id: 'edge', role: 'routed' } as const;

const text: TextMark = {
  kind: 'text',
  text: 'Face side',
  at: vec(12, 5),
  height: 3.5,
  angle: 0.4,
  align: 'left',
  weight: 'regular',
  role: 'mark',
};

test('a mirror puts text where it belongs and leaves it readable', () => {
  const over = { turn: 0.3, shift: vec(4, -2), scale: 1, mirrored: true };
  const moved = transformMark(text, over) as TextMark;
  expect(moved.text).toBe('Face side');
  expect(moved.align).toBe('right');
  // The same patch of paper, its corners in another order.
  const expected = cornersOf(boxOfText(text)).map((p) => transformPoint(p, over));
  for (const corner of cornersOf(boxOfText(moved))) {
    const nearest = Math.min(...expected.map((p) => Math.hypot(p.x - corner.x, p.y - corner.y)));
    expect(nearest).toBeLessThan(1e-9);
  }
});

test('a turn turns the baseline, a scale the height', () => {
  const moved = transformMark(text, { ...STAY, turn: 0.5, scale: 2 }) as TextMark;
  expect(moved.angle).toBeCloseTo(0.9, 12);
  expect(moved.height).toBe(7);
  expect(moved.align).toBe('left');
});

test('the box of a moved scene holds its marks', () => {
  const edges = [line(vec(0, 0), vec(10, 0), TAG)];
  const scene: Scene = {
    marks: [{ kind: 'path', role: 'part', edges, closed: false }],
    box: { minX: 0, minY: 0, maxX: 10, maxY: 0 },
  };
  const moved = transformScene(scene, { ...STAY, turn: Math.PI / 2, shift: vec(3, 1) });
  expect(moved.box.maxY).toBeCloseTo(11, 12);
  expect(moved.box.minX).toBeCloseTo(3, 12);
});

test('lines are cut exactly at the border, arcs on their circle', () => {
  const radius = 50;
  const scene: Scene = {
    marks: [
      { kind: 'path', role: 'part', edges: [arc(vec(50, 0), vec(-50, 0), vec(0, 0), 1, TAG)], closed: false },
      { kind: 'path', role: 'saw-line', edges: [line(vec(-80, 10), vec(80, 10), TAG)], closed: false },
    ],
    box: { minX: -80, minY: 0, maxX: 80, maxY: 50 },
  };
  const box: Box = { minX: -30, minY: -5, maxX: 30, maxY: 45 };
  const cut = clipScene(scene, box);
  expect(cut.box).toBe(box);
  const ends = cut.marks.flatMap((mark) =>
    mark.kind === 'path' && mark.role === 'part' ? mark.edges.flatMap(({ from, to }) => [from, to]) : [],
  );
  // Two pieces of the arc: it leaves the box through its top between x = ±√(50² − 45²).
  expect(ends).toHaveLength(4);
  for (const end of ends) expect(Math.hypot(end.x, end.y)).toBeCloseTo(radius, 9);
  expect(ends.map(({ x }) => Math.abs(x)).sort((a, b) => a - b)).toEqual([
    expect.closeTo(Math.sqrt(50 ** 2 - 45 ** 2), 9),
    expect.closeTo(Math.sqrt(50 ** 2 - 45 ** 2), 9),
    expect.closeTo(30, 9),
    expect.closeTo(30, 9),
  ]);
  const saw = cut.marks.find((mark) => mark.kind === 'path' && mark.role === 'saw-line');
  expect(saw).toMatchObject({ edges: [{ from: { x: -30, y: 10 }, to: { x: 30, y: 10 } }] });
});

test('text that touches the box is kept whole, text beyond it is left out', () => {
  const scene: Scene = { marks: [text], box: { minX: 0, minY: 0, maxX: 40, maxY: 40 } };
  expect(clipScene(scene, { minX: 0, minY: 0, maxX: 14, maxY: 14 }).marks).toEqual([text]);
  expect(clipScene(scene, { minX: -20, minY: -20, maxX: 0, maxY: 0 }).marks).toEqual([]);
});

test('a closed outline cut by the box is no longer closed', () => {
  const edges = [
    line(vec(0, 0), vec(10, 0), TAG),
    line(vec(10, 0), vec(5, 10), TAG),
    line(vec(5, 10), vec(0, 0), TAG),
  ];
  const scene: Scene = {
    marks: [{ kind: 'path', role: 'part', edges, closed: true }],
    box: { minX: 0, minY: 0, maxX: 10, maxY: 10 },
  };
  const cut = clipScene(scene, { minX: -1, minY: -1, maxX: 20, maxY: 5 });
  expect(cut.marks.every((mark) => mark.kind === 'path' && !mark.closed)).toBe(true);
  expect(clipScene(scene, { minX: -1, minY: -1, maxX: 20, maxY: 20 }).marks).toEqual(scene.marks);
});
