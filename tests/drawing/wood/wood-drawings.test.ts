import { describe, expect, it } from 'vitest';
import { topFixings } from '../../../src/base/index.ts';
import { drillingPatterns, leafMapDrawing, type Mark, resawDrawing } from '../../../src/drawing/index.ts';
import { boxOfText, turnedBox, turnedOverlap } from '../../../src/drawing/layout/oriented-box.ts';
import { spreadDown } from '../../../src/drawing/wood/spread.ts';
import { boundsOfEdges, polygonOutline, vec } from '../../../src/geometry/index.ts';
import { woodCalled } from '../../../src/materials/index.ts';
import { insertPlan, leafMap, type ResawPlan, resawStack, usualInsert } from '../../../src/wood/index.ts';
import { fourLegs, under } from '../../base/four-legs.ts';
import { matchedPieces, matchOf } from '../../wood/matched-pieces.ts';

const LENGTHS = { unit: 'mm', decimals: 1 } as const;
const PLAN: ResawPlan = {
  name: 'legs',
  rough: 40,
  flattening: 4,
  kerf: 1.2,
  leaves: 2,
  planing: { sawn: 0.8, outer: 0.4 },
  drying: 1.6,
  backing: 18,
  glued: 1,
  lastPlaning: { show: 0.5, back: 0.5 },
  drift: 0.4,
  finished: 30,
};

const texts = (marks: readonly Mark[]): readonly string[] =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

/** Pairs of texts that stand on each other. */
function overlaps(marks: readonly Mark[]): readonly string[] {
  const boxes = marks.flatMap((mark) =>
    mark.kind === 'text' ? [{ text: mark.text, box: turnedBox(boxOfText(mark)) }] : [],
  );
  return boxes.flatMap((a, at) =>
    boxes.slice(at + 1).flatMap((b) => (turnedOverlap(a.box, b.box) ? [`${a.text} / ${b.text}`] : [])),
  );
}

const heightOf = (mark: Mark): number => {
  if (mark.kind === 'text') return 0;
  const { minY, maxY } = boundsOfEdges(mark.edges);
  return maxY - minY;
};

describe('the drawing of a resaw plan', () => {
  const { scene, scale } = resawDrawing(resawStack(PLAN), LENGTHS);

  it('is to its scale: kerfs and the rough board are as high as it says', () => {
    expect(scale).toBe('2:1');
    const kerfs = scene.marks.filter(
      (mark) => mark.kind === 'path' && mark.fill === 'solid' && mark.role === 'part',
    );
    expect(kerfs.map(heightOf)).toEqual([expect.closeTo(2 * PLAN.kerf, 9)]);
    const outlines = scene.marks.filter(
      (mark) => mark.kind === 'path' && mark.role === 'part' && mark.fill === undefined,
    );
    // Rough board, and backing with a leaf before the last planing: 17.4 − 0.8 − 0.4 − 1.6 of a leaf.
    expect(outlines.map(heightOf)).toEqual([expect.closeTo(80, 9), expect.closeTo(2 * (18 + 14.6), 9)]);
  });

  it('names every loss with its figure, and no words stand on others', () => {
    const said = texts(scene.marks).join('; ');
    for (const loss of [
      'flattening, this face 2.0 mm (2 ×)',
      'planing, outer face 0.4 mm (2 ×)',
      'planing, sawn face 0.8 mm (2 ×)',
      'drying out of true 0.8 mm (4 ×)',
      'kerf 1.2 mm',
      'leaf 1 14.6 mm',
      'leaf 2 14.6 mm',
      'last planing, show face 0.5 mm',
      'backing 17.5 mm',
    ])
      expect(said).toContain(loss);
    expect(overlaps(scene.marks)).toEqual([]);
    const many = resawDrawing(resawStack({ ...PLAN, rough: 101.6, leaves: 8 }), LENGTHS);
    expect(overlaps(many.scene.marks)).toEqual([]);
  });

  it('shows where the saw may drift to, two lines a kerf, only where it may', () => {
    const dashed = (plan: ResawPlan): number =>
      resawDrawing(resawStack(plan), LENGTHS).scene.marks.filter(({ role }) => role === 'hidden').length;
    expect([dashed(PLAN), dashed({ ...PLAN, drift: 0 }), dashed({ ...PLAN, leaves: 4, rough: 60 })]).toEqual([
      2, 0, 6,
    ]);
  });
});

describe('labels beside a stack', () => {
  it('keep their order and their room, and stand as near to their places as that lets them', () => {
    expect(spreadDown([10, 0, -10], 4)).toEqual([10, 0, -10]);
    expect(spreadDown([10, 9, 8], 4)).toEqual([13, 9, 5]);
  });
});

describe('the drawing of a leaf map', () => {
  const map = leafMap(
    matchOf('leg', { parts: [{ part: 'leg', faces: ['face', 'back'] }] }),
    matchedPieces('shallow-v-trestle', 'leg'),
    8,
  );
  const { marks } = leafMapDrawing(map);

  it('shows every leaf on an outline of its own, with its words', () => {
    const outlines = marks.filter(({ role }) => role === 'part');
    expect(outlines).toHaveLength(map.places.length);
    const said = texts(marks);
    for (const { board, leaf } of map.places) expect(said).toContain(`board ${board}, leaf ${leaf}`);
    expect(overlaps(marks)).toEqual([]);
  });

  it('draws a triangle across every set, on wood alone', () => {
    const boxes = marks
      .filter(({ role }) => role === 'part')
      .map((mark) => mark.kind === 'path' && boundsOfEdges(mark.edges));
    const strokes = marks.flatMap((mark) =>
      mark.kind === 'path' && mark.role === 'reference' ? mark.edges : [],
    );
    for (const box of boxes) {
      if (box === false) throw new Error('an outline is a path');
      const inside = strokes.filter(
        ({ from: p }) =>
          p.x > box.minX - 0.01 && p.x < box.maxX + 0.01 && p.y > box.minY - 0.01 && p.y < box.maxY + 0.01,
      );
      expect(inside.length).toBeGreaterThan(0);
    }
  });
});

describe('a drilling pattern', () => {
  const oak = woodCalled('white oak')!;
  const base = under(fourLegs(), { length: 1100, width: 700, thickness: 30 });
  const fixings = topFixings(base, oak);
  const plan = insertPlan(fixings, base.top, usualInsert('M6', oak)!);
  const patterns = drillingPatterns(plan, (part) => part, LENGTHS);

  it('is one for all parts that take their holes alike, and every part has one', () => {
    expect(patterns.flatMap(({ parts }) => parts).toSorted()).toEqual(
      plan.rows.map(({ part }) => part).toSorted(),
    );
    expect(patterns.length).toBeLessThan(plan.rows.length);
    expect(patterns.map(({ pattern }) => pattern.name)).toEqual(
      patterns.map((_, at) => `drilling-${at + 1}`),
    );
  });

  it('has its holes at full size where they lie under the top, seen from below', () => {
    for (const { pattern, parts } of patterns) {
      const row = plan.rows.find(({ part }) => part === parts[0])!;
      const circles = pattern.scene.marks.flatMap((mark) =>
        mark.kind === 'path' && mark.role === 'part' ? [boundsOfEdges(mark.edges)] : [],
      );
      expect(
        circles.map(({ minX, maxX, minY, maxY }) => [(minX + maxX) / 2, (minY + maxY) / 2, maxX - minX]),
      ).toEqual(
        // Turned over about its length: the front, where y is negative, comes to the far side.
        row.holes.map(({ x, y }) => [expect.closeTo(x, 6), expect.closeTo(-y, 6), expect.closeTo(10.5, 6)]),
      );
      for (const { nominal, from, to } of pattern.checks)
        expect(Math.hypot(to.x - from.x, to.y - from.y)).toBeCloseTo(nominal, 9);
      expect(overlaps(pattern.scene.marks)).toEqual([]);
    }
  });

  it('tells a part that stands slanting from its mirror image', () => {
    const slanting = (lean: number) => ({
      part: `slanting ${lean}`,
      footprint: [
        {
          outer: polygonOutline(
            [vec(0, 0), vec(40, lean), vec(40, 100 + lean), vec(0, 100)].map((p) =>
              vec(p.x, lean < 0 ? p.y - lean : p.y),
            ),
            { id: 'end', role: 'sawn' as const },
          ),
          holes: [],
        },
      ],
      holes: [vec(20, 50 + Math.abs(lean) / 2)],
    });
    const rows = [slanting(10), slanting(-10), slanting(10)];
    const found = drillingPatterns({ ...plan, rows }, (part) => part, LENGTHS);
    expect(found.map(({ parts }) => parts.length)).toEqual([2, 1]);
  });

  it('says where each outline lies from the middle of the top, as one who sits at it calls left and front', () => {
    for (const { pattern, parts } of patterns) {
      const said = texts(pattern.scene.marks);
      for (const part of parts) {
        // x runs to the sitter's right, y away from the sitter: the middle of the outline's own corners, box and all.
        const corners = plan.rows
          .find((row) => row.part === part)!
          .footprint.flatMap(({ outer }) => outer.edges.map(({ from }) => from));
        const middleOf = (along: 'x' | 'y'): number => {
          const all = corners.map((corner) => corner[along]);
          return (Math.min(...all) + Math.max(...all)) / 2;
        };
        const line = said.find((text) => text.startsWith(`${part}: middle of the outline`))!;
        for (const [at, less, more] of [
          [middleOf('x'), 'left', 'right'],
          [middleOf('y'), 'front', 'back'],
        ] as const) {
          if (Math.abs(at) < 0.05) expect(line).toContain('on the middle line');
          else expect(line).toContain(`${Math.abs(at).toFixed(1)} mm to the ${at < 0 ? less : more}`);
        }
      }
    }
  });

  it('says pilot, depth and what is left of the top', () => {
    // A hole 2 mm deeper than the insert of 15 mm, in a top of 30 mm.
    expect(patterns[0]!.pattern.toolFacts.slice(0, 3)).toEqual([
      { words: 'Pilot', figure: 'Ø 10.5 mm' },
      { words: 'Depth, with a stop', figure: '17.0 mm' },
      { words: 'Left of the top', figure: '13.0 mm' },
    ]);
    const said = texts(patterns[0]!.pattern.scene.marks).join('; ');
    expect(said).toContain('M6: drill Ø 10.5 mm, 17.0 mm deep with a stop; 13.0 mm of the top is left');
  });
});
