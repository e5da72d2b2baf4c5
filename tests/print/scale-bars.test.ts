import { describe, expect, test } from 'vitest';
import type { Mark, Pattern } from '../../src/drawing/index.ts';
import { type Box, boundsOfEdges, type Edge, line, vec } from '../../src/geometry/index.ts';
import { boxRoundText } from '../../src/print/grid/content.ts';
import { WHITE } from '../../src/print/page/ink.ts';
import { linesThrough, occupiedBy, touches } from '../../src/print/page/occupied.ts';
import { barItems, boxOf, placeBars } from '../../src/print/page/scale-bars.ts';
import { workOf } from '../../src/print/page/work.ts';
import { leaningLeg } from './support/patterns.ts';

const IN_PLACE = { turn: 0, shift: vec(0, 0), scale: 1, mirrored: false };
const ROOM: Box = { minX: 0, minY: 0, maxX: 190, maxY: 270 };

function loopRound({ minX, minY, maxX, maxY }: Box, role: 'part' | 'dimension', isHole = false): Mark {
  const corners = [vec(minX, minY), vec(maxX, minY), vec(maxX, maxY), vec(minX, maxY)];
  if (isHole) corners.reverse();
  const tag = { id: 'side', role: 'routed' } as const;
  const edges: Edge[] = corners.map((from, i) => line(from, corners[(i + 1) % 4]!, tag));
  return { kind: 'path', role, closed: true, edges };
}

function barsOn(...marks: readonly Mark[]) {
  const pattern: Pattern = { ...leaningLeg(), scene: { marks, box: ROOM } };
  const occupied = occupiedBy(pattern, IN_PLACE);
  const bars = placeBars(ROOM, { occupied, work: workOf(pattern, IN_PLACE) }, 'portrait');
  return bars.map((bar) => ({ box: boxOf(bar), lines: linesThrough(occupied, boxOf(bar)) }));
}

describe('scale bars', () => {
  test('stand beside the work where the sheet has room, not in it', () => {
    const work = { minX: -50, minY: -50, maxX: 170, maxY: 240 };
    const bars = barsOn(loopRound(work, 'part'));
    for (const { box, lines } of bars) {
      expect(lines).toBe(0);
      expect(touches(box, work)).toBe(false);
    }
    expect(touches(bars[0]!.box, bars[1]!.box)).toBe(false);
  });

  test.each([
    [190, 270, 'portrait'],
    [270, 190, 'landscape'],
  ] as const)(
    'of a page %d × %d mm say along which edge of the paper they are read',
    (width, height, way) => {
      const room: Box = { minX: 0, minY: 0, maxX: width, maxY: height };
      const pattern: Pattern = { ...leaningLeg(), scene: { marks: [], box: room } };
      const bars = placeBars(
        room,
        { occupied: occupiedBy(pattern, IN_PLACE), work: workOf(pattern, IN_PLACE) },
        way,
      );
      for (const bar of bars) {
        const { minX, maxX, minY, maxY } = boxOf(bar);
        // The way that the bar itself is longer: the readings correct that edge of the paper.
        const along = maxX - minX > maxY - minY ? width : height;
        const edge = along === Math.max(width, height) ? 'long' : 'short';
        expect(bar.edgeOfPaper).toBe(edge);
        const said = barItems(bar, occupiedBy(pattern, IN_PLACE)).flatMap((item) =>
          'text' in item ? [item.text] : [],
        );
        expect(said).toContain(`along the ${edge} edge of the paper`);
      }
    },
  );

  test('an opening is no work', () => {
    const opening = { minX: 10, minY: 10, maxX: 180, maxY: 260 };
    const bars = barsOn(
      loopRound({ minX: -50, minY: -50, maxX: 400, maxY: 400 }, 'part'),
      loopRound(opening, 'part', true),
    );
    for (const { box, lines } of bars) {
      expect(lines).toBe(0);
      expect(box.minX > opening.minX && box.maxX < opening.maxX).toBe(true);
    }
  });

  test('where all is work they stand clear of its outline, and cross other lines first', () => {
    const strips = [40, 80, 120, 160, 200, 240].map((y) =>
      loopRound({ minX: -50, minY: -50, maxX: 400, maxY: y }, 'dimension'),
    );
    const edge = { minX: -50, minY: 120, maxX: 400, maxY: 400 };
    const bars = barsOn(...strips, loopRound(edge, 'part'));
    for (const { box } of bars) expect(box.maxY < edge.minY || box.minY > edge.minY).toBe(true);
  });

  test('where lines must be crossed their own lettering stands clear of them, or on white', () => {
    // Upright lines 60 mm apart: no 100 mm across are free, but 34 mm of words are.
    const strips = [35, 95, 155].map((x) =>
      loopRound({ minX: -50, minY: -50, maxX: x, maxY: 400 }, 'dimension'),
    );
    const pattern: Pattern = { ...leaningLeg(), scene: { marks: strips, box: ROOM } };
    const occupied = occupiedBy(pattern, IN_PLACE);
    const [across] = placeBars(ROOM, { occupied, work: workOf(pattern, IN_PLACE) }, 'portrait');
    expect(linesThrough(occupied, boxOf(across))).toBeGreaterThan(0);
    const items = barItems(across, occupied);
    const grounds = items.filter((item) => item.kind === 'fill').map(({ edges }) => boundsOfEdges(edges));
    const letters = items.filter((item) => item.kind === 'text');
    expect(letters).toHaveLength(4);
    const boxes = letters.map((item) => boundsOfEdges(boxRoundText({ ...item, role: 'mark' })));
    const crossed = boxes.filter((box) => linesThrough(occupied, box) > 0);
    expect(crossed.length).toBeLessThan(2);
    expect(crossed).toEqual(grounds);
  });

  test('lettering that a line runs through whatever the place has a white ground under it', () => {
    const strips = Array.from({ length: 40 }, (_, i) =>
      loopRound({ minX: -50, minY: -50, maxX: 5 * i, maxY: 400 }, 'dimension'),
    );
    const pattern: Pattern = { ...leaningLeg(), scene: { marks: strips, box: ROOM } };
    const occupied = occupiedBy(pattern, IN_PLACE);
    const [across] = placeBars(ROOM, { occupied, work: workOf(pattern, IN_PLACE) }, 'portrait');
    const items = barItems(across, occupied);
    const firstWord = items.findIndex(({ kind }) => kind === 'text');
    const grounds = items.flatMap((item, at) => (item.kind === 'fill' ? [{ item, at }] : []));
    expect(grounds.length).toBeGreaterThan(0);
    for (const { item, at } of grounds) {
      expect(item.ink).toEqual(WHITE);
      expect(at).toBeLessThan(firstWord);
    }
  });
});
