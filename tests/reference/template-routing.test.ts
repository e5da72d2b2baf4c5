import { describe, expect, test } from 'vitest';
import { boundsOfRegions, type Outline, type Region } from '../../src/geometry/index.ts';
import { routePart } from '../../src/routing/index.ts';
import {
  bearingTooling,
  bushingTooling,
  loopOf,
  openingAt,
  partOf,
  rectangle,
  reversed,
} from '../routing/support/parts.ts';

const INCH = 25.4;

/** A window of the size given in a wide panel, its plunge in the middle. */
function panelWith(width: number, height: number) {
  const left = 500 - width / 2;
  const low = 500 - height / 2;
  const hole = reversed(
    loopOf([
      [left, low, 'sill'],
      [left + width, low, 'jamb-b'],
      [left + width, low + height, 'lintel'],
      [left, low + height, 'jamb-a'],
    ]),
  );
  return partOf(rectangle(1000, 1000, { foot: 'sawn', right: 'sawn', head: 'sawn', left: 'sawn' }), {
    holes: [hole],
    openings: [openingAt(0, { x: 500, y: 500 })],
  });
}

const sizeOf = (regions: readonly Region[]): [number, number] => {
  const { minX, maxX, minY, maxY } = boundsOfRegions(regions);
  return [maxX - minX, maxY - minY];
};
const close = (...values: number[]) => values.map((value) => expect.closeTo(value, 9));

describe('the offset of a guide bushing as published', () => {
  // Bushing, cutter, offset to the near edge of the cut and to its far edge.
  const published = [
    [
      'a magazine, quoted on Woodworking Stack Exchange, question 7205',
      0.75 * INCH,
      0.5 * INCH,
      0.125 * INCH,
    ],
    ['guide bush offset, a cutter maker’s note on its formula', 30, 10, 10],
    ['UKworkshop forum, "Calculating guide bush sizes", thread 8513', 15, 9, 3],
    ['RouterForums, thread 4249', 0.75 * INCH, 0.25 * INCH, 0.25 * INCH],
    ['RouterForums, thread 1318', 0.5 * INCH, 0.25 * INCH, 0.125 * INCH],
  ] as const;

  test.each(published)('%s', (_source, outside, cutter, offset) => {
    const tooling = bushingTooling(cutter, outside);
    const outer = rectangle(200, 300);
    const { template, offset: named, offsets } = routePart(partOf(outer), tooling);
    expect(named).toBeCloseTo(offset, 9);
    expect(offsets.every((edge) => Math.abs(edge.offset - offset) < 1e-9)).toBe(true);
    expect(sizeOf(template)).toEqual(close(200 - 2 * offset, 300 - 2 * offset));
  });

  test('the far edge of the cut lies (17 + 10) / 2 = 13.5 mm off the template (RouterForums, "Confused about bushes")', () => {
    const { template, offset } = routePart(partOf(rectangle(200, 300)), bushingTooling(10, 17));
    const [width] = sizeOf(template);
    // Near edge at the part; the far edge one cutter further out.
    expect((200 - width) / 2 + 10).toBeCloseTo(13.5, 9);
    expect(offset).toBeCloseTo(3.5, 9);
  });

  test('an 8 by 4 in cut-out takes an opening of 8½ by 4½ in with a ¾ in bushing and a ¼ in cutter (RouterForums, thread 4249)', () => {
    const { openings, asRouted } = routePart(
      panelWith(8 * INCH, 4 * INCH),
      bushingTooling(0.25 * INCH, 0.75 * INCH),
    );
    expect(sizeOf(openings[0]!.template)).toEqual(close(8.5 * INCH, 4.5 * INCH));
    expect(sizeOf(openings[0]!.cut)).toEqual(close(8 * INCH, 4 * INCH));
    expect(asRouted[0]!.holes).toHaveLength(1);
  });

  test('a 6 in hole takes 6 1/16 in in the template with a 5/16 bushing and a ¼ in cutter (by the same formula)', () => {
    const disc: Outline = reversed(
      loopOf([
        [500 + 3 * INCH, 500, 'rim', 'routed', 1],
        [500 - 3 * INCH, 500, 'rim', 'routed', 1],
      ]),
    );
    const part = { ...panelWith(10, 10), region: { ...panelWith(10, 10).region, holes: [disc] } };
    const { openings } = routePart(part, bushingTooling(0.25 * INCH, 0.3125 * INCH));
    expect(sizeOf(openings[0]!.template)).toEqual(close(6.0625 * INCH, 6.0625 * INCH));
  });
});

describe('a bearing as published', () => {
  test('as large as the cutter it copies the template one to one (elementary; read in flush-trim instructions)', () => {
    const { template, asRouted } = routePart(partOf(rectangle(200, 300)), bearingTooling(12.7));
    expect(sizeOf(template)).toEqual(close(200, 300));
    expect(sizeOf(asRouted)).toEqual(close(200, 300));
  });

  test('larger than the cutter it leaves the part proud of the template by half the difference', () => {
    const tooling = bearingTooling(12.7, { guide: { kind: 'bearing', diameter: 19.05, at: 'shank' } });
    const { template } = routePart(partOf(rectangle(200, 300)), tooling);
    expect(sizeOf(template)).toEqual(close(200 - 6.35, 300 - 6.35));
  });
});

describe('an inlay and its recess from one template', () => {
  /**
   * The inlay cut with the bushing from the same opening: its edge is a cutter's width inside the cut, (bushing + cutter) / 2
   * from the template.
   */
  const plugOf = (opening: readonly number[], bushing: number, cutter: number) =>
    opening.map((side) => side - (bushing + cutter));

  test('the kit with a ⅛ in cutter: a 2 in inlay takes a template of 2 7/16 in (Wood magazine, template inlay article)', () => {
    // Collar 9/16 in and bushing 5/16 in from memory; they reproduce the printed figures.
    const { openings } = routePart(
      panelWith(2 * INCH, 2 * INCH),
      bushingTooling(0.125 * INCH, 0.5625 * INCH),
    );
    const opening = sizeOf(openings[0]!.template);
    expect(opening).toEqual(close(2.4375 * INCH, 2.4375 * INCH));
    expect(plugOf(opening, 0.3125 * INCH, 0.125 * INCH)).toEqual(close(2 * INCH, 2 * INCH));
  });

  // RouterForums, threads 48078, 1645 and "Confused about bushes": large − small = 2 × cutter.
  const pairs = [
    [5, 10, 20],
    [0.125 * INCH, 0.5 * INCH, 0.75 * INCH],
    [10, 20, 40],
    [0.25 * INCH, 0.5 * INCH, 1 * INCH],
  ] as const;

  test.each(pairs)('cutter %f with bushings %f and %f: inlay and recess fit', (cutter, small, large) => {
    const { openings } = routePart(panelWith(150, 100), bushingTooling(cutter, large));
    const recess = sizeOf(openings[0]!.cut);
    const plug = plugOf(sizeOf(openings[0]!.template), small, cutter);
    // The first pair of the list is one of bushings for two cuts in turn: it fits when large = small + 2 × cutter.
    const isPair = Math.abs(large - small - 2 * cutter) < 1e-9;
    expect(isPair).toBe(true);
    expect(plug).toEqual(close(...recess));
  });
});
