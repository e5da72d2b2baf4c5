import { describe, expect, it } from 'vitest';
import { circleOutline, vec } from '../../src/geometry/index.ts';
import {
  accountOf,
  boardFeet,
  checkLaid,
  type Lying,
  largestRectangle,
  layAt,
  offcutsOf,
  priceOf,
  volumeOf,
} from '../../src/wood/index.ts';
import { boardOf, CLOSE, layOf, polygon, strip } from './to-lay.ts';

const lyingAt = (id: string, x: number, y: number, more: Partial<Lying> = {}): Lying => ({
  id,
  board: 'A',
  at: vec(x, y),
  turned: 0,
  mirrored: false,
  ...more,
});

describe('a part laid by hand', () => {
  const toLay = [layOf('a', strip(80, 400)), layOf('b', strip(80, 400))];
  const board = boardOf(1000, 200);
  const check = (lying: readonly Lying[], rules = CLOSE) => checkLaid([board], toLay, lying, rules);

  it('lies with its grain along the board, head to tail when turned by half a turn', () => {
    const straight = layAt(toLay[0]!, lyingAt('a', 10, 20));
    expect(straight.region.outer.edges[0]!.from).toMatchObject({ x: 10, y: expect.closeTo(100, 9) });
    const turned = layAt(toLay[0]!, lyingAt('a', 10, 20, { turned: Math.PI }));
    expect(turned.region.outer.edges[0]!.from).toMatchObject({
      x: expect.closeTo(410, 9),
      y: expect.closeTo(20, 9),
    });
  });

  it('face down is the mirror image of face up', () => {
    const hook = layOf('a', polygon([0, 0], [80, 0], [80, 50], [20, 50], [20, 400], [0, 400]));
    const up = layAt(hook, lyingAt('a', 0, 0)).region.outer.edges.map(({ from }) => [from.x, 80 - from.y]);
    const down = layAt(hook, lyingAt('a', 0, 0, { mirrored: true })).region.outer.edges.map(({ from }) => [
      from.x,
      from.y,
    ]);
    const rounded = (points: number[][]) =>
      points.map(([x, y]) => `${Math.round(x!)} ${Math.round(y!)}`).sort();
    expect(rounded(down)).toEqual(rounded(up));
  });

  it('touching its neighbour and the edges is sound', () => {
    expect(check([lyingAt('a', 0, 0), lyingAt('b', 400, 0)])).toEqual([]);
    expect(check([lyingAt('a', 0, 0), lyingAt('b', 0, 80)])).toEqual([]);
  });

  it('is found over its neighbour, too near to it, off the board, on no board, twice', () => {
    expect(check([lyingAt('a', 0, 0), lyingAt('b', 380, 0)])).toMatchObject([
      { kind: 'overlap', id: 'b', other: 'a', measured: expect.closeTo(1600, 6) },
    ]);
    expect(check([lyingAt('a', 0, 0), lyingAt('b', 402, 0)], { ...CLOSE, between: 3 })).toMatchObject([
      { kind: 'overlap' },
    ]);
    expect(check([lyingAt('a', 610, 0)])).toMatchObject([
      { kind: 'off-the-board', measured: expect.closeTo(800, 6), at: { x: expect.closeTo(1005, 6) } },
    ]);
    expect(check([lyingAt('a', 0, 0, { board: 'Z' })])).toMatchObject([{ kind: 'unknown-board' }]);
    expect(check([lyingAt('a', 0, 0), lyingAt('a', 500, 0)])).toMatchObject([{ kind: 'laid-twice' }]);
  });

  it('is found off the grain, measured from the board’s own', () => {
    const leaning = boardOf(1000, 200, { grain: 0.05 });
    const at = (turned: number) =>
      checkLaid([leaning], toLay, [lyingAt('a', 100, 50, { turned })], { ...CLOSE, grainWithin: 0.06 });
    expect(at(0)).toEqual([]);
    expect(at(Math.PI + 0.1)).toEqual([]);
    expect(at(-0.02)).toMatchObject([
      { kind: 'off-the-grain', measured: expect.closeTo(0.07, 9), limit: 0.06 },
    ]);
  });

  it('is found over a knot by its true outline, not by its saw allowance', () => {
    const knot = (x: number) => ({
      kind: 'knot' as const,
      region: { outer: circleOutline(vec(x, 40), 10, { id: 'k', role: 'left' }, 1), holes: [] },
    });
    const wide = layOf('a', strip(80, 400), { blank: polygon([-9, -9], [89, -9], [89, 409], [-9, 409]) });
    const at = (x: number, allowed: readonly 'knot'[] = []) =>
      checkLaid([boardOf(1000, 200, { defects: [knot(x)] })], [wide], [lyingAt('a', 20, 20)], {
        ...CLOSE,
        allowed,
      });
    expect(at(431)).toEqual([]);
    expect(at(425)).toMatchObject([{ kind: 'over-a-defect', defect: 'knot' }]);
    expect(at(425, ['knot'])).toEqual([]);
  });
});

describe('what is left of a board', () => {
  it('the largest rectangle of an L is the larger of its limbs', () => {
    const box = largestRectangle(polygon([0, 0], [500, 0], [500, 60], [100, 60], [100, 300], [0, 300]), 10);
    expect(box).toEqual({ minX: 0, minY: 0, maxX: 500, maxY: 60 });
  });

  it('in a right-angled triangle it is half as long and half as wide, within what a cut costs', () => {
    const box = largestRectangle(polygon([0, 0], [400, 0], [0, 200]), 1)!;
    const area = (box.maxX - box.minX) * (box.maxY - box.minY);
    expect(area).toBeLessThanOrEqual(20_000 + 1e-6);
    expect(area).toBeGreaterThan(19_900);
  });

  it('keeps clear of round cut-outs and never leaves the region', () => {
    const region = {
      ...strip(300, 100),
      holes: [circleOutline(vec(150, 50), 30, { id: 'h', role: 'left' }, -1)],
    };
    const box = largestRectangle(region, 10)!;
    expect((box.maxX - box.minX) * (box.maxY - box.minY)).toBeCloseTo(12_000, 6);
  });

  it('offcuts with what was sawn out and the kerf round it make up the board', () => {
    const board = boardOf(1000, 200);
    const laid = [layAt(layOf('a', strip(80, 400)), lyingAt('a', 0, 0))];
    const rules = { ...CLOSE, between: 3 };
    const [offcut, ...others] = offcutsOf(board, laid, rules);
    expect(others).toEqual([]);
    // A kerf of 3 mm runs round the strip, quarter-round at its corner.
    expect(offcut!.area).toBeCloseTo(200_000 - 403 * 83 + (9 - (Math.PI * 9) / 4), 6);
    expect(offcut!.rectangle).toEqual({ minX: 403, minY: 0, maxX: 1000, maxY: 200 });
  });

  it('a useful rectangle has no knot in it', () => {
    const knot = { kind: 'knot' as const, region: polygon([500, 80], [540, 80], [540, 120], [500, 120]) };
    const [offcut] = offcutsOf(boardOf(1000, 200, { defects: [knot] }), [], CLOSE);
    expect(offcut!.rectangle).toEqual({ minX: 0, minY: 0, maxX: 500, maxY: 200 });
    expect(offcut!.area).toBeCloseTo(200_000, 6);
  });
});

describe('the account of a layout', () => {
  const boards = [
    boardOf(1000, 200, { price: { amount: 48, per: 'square metre', currency: 'EUR' } }),
    boardOf(800, 100, { name: 'B' }),
  ];
  const account = accountOf(
    boards,
    [
      layAt(layOf('a', strip(80, 400)), lyingAt('a', 0, 0)),
      layAt(layOf('b', strip(80, 400)), lyingAt('b', 450, 0)),
    ],
    CLOSE,
  );

  it('says the share of the face that ends up in parts, the price of whole boards, and what was not touched', () => {
    expect(account.yield).toBeCloseTo(64_000 / 200_000, 12);
    expect(account.prices).toEqual([{ currency: 'EUR', amount: expect.closeTo(9.6, 9) }]);
    expect(account).toMatchObject({ unpriced: 0, untouched: ['B'] });
    expect(account.cubicMetres).toBeCloseTo(0.006, 12);
  });

  it('prices by every unit that sellers use', () => {
    // 8 ft by 6 in by 1 in is four board feet, four square feet, eight feet run.
    const plank = (
      per: 'board foot' | 'square foot' | 'running foot' | 'piece' | 'running metre' | 'cubic metre',
    ) => priceOf(boardOf(8 * 304.8, 152.4, { thickness: 25.4, price: { amount: 10, per } }));
    expect(plank('board foot')).toBeCloseTo(40, 9);
    expect(plank('square foot')).toBeCloseTo(40, 9);
    expect(plank('running foot')).toBeCloseTo(80, 9);
    expect(plank('running metre')).toBeCloseTo(24.384, 9);
    expect(plank('piece')).toBe(10);
    expect(plank('cubic metre')).toBeCloseTo(10 * 2.4384 * 0.1524 * 0.0254, 9);
  });

  it('a board foot is one inch thick and one foot square', () => {
    expect(boardFeet(volumeOf({ length: 304.8, width: 304.8, thickness: 25.4 }))).toBeCloseTo(1, 12);
  });
});
