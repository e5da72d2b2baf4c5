import { describe, expect, test } from 'vitest';
import { directionAt, lengthOf, type Outline } from '../../src/geometry/index.ts';
import { type FeedRun, routePart, type Tooling } from '../../src/routing/index.ts';
import { bearingTooling, loopOf, openingAt, partOf, rectangle, reversed } from './support/parts.ts';

const DEGREE = Math.PI / 180;
const feedOf = (outer: Outline, grain: number, more: Partial<Tooling> = {}, holes: Outline[] = []) =>
  routePart(
    partOf(outer, { grain, holes, openings: holes.map((_, at) => openingAt(at, { x: 150, y: 150 })) }),
    bearingTooling(12, more),
  ).feed;
const ways = (feed: readonly FeedRun[]) => feed.map(({ edge, grain }) => [edge, grain]);
const disc = loopOf([
  [100, 0, 'rim', 'routed', 1],
  [-100, 0, 'rim', 'routed', 1],
]);
/** A square standing on one corner, its sides at 45° to the grain. */
const lozenge = loopOf([
  [0, -100, 'south-east'],
  [100, 0, 'north-east'],
  [0, 100, 'north-west'],
  [-100, 0, 'south-west'],
]);

describe('the direction of feed', () => {
  test('runs anticlockwise round the outside and clockwise inside, hand-held', () => {
    const window = reversed(
      loopOf([
        [100, 100, 'sill'],
        [200, 100, 'jamb-b'],
        [200, 200, 'lintel'],
        [100, 200, 'jamb-a'],
      ]),
    );
    const feed = feedOf(rectangle(300, 300), 0, {}, [window]);
    const way = (id: string) => directionAt(feed.find(({ edge }) => edge === id)!.path, 0.5);
    expect(way('foot').x).toBe(1);
    expect(way('head').x).toBe(-1);
    expect(way('sill').x).toBe(-1);
    expect(way('lintel').x).toBe(1);
  });

  test('is reversed on a table, along every edge and in its order', () => {
    const byHand = feedOf(lozenge, 0);
    const onTable = feedOf(lozenge, 0, { machine: 'table' });
    expect(onTable.map(({ edge }) => edge)).toEqual(byHand.map(({ edge }) => edge).reverse());
    for (const run of byHand) {
      const other = onTable.find(({ edge }) => edge === run.edge)!;
      expect(other.path.from).toEqual(run.path.to);
      expect(other.path.to).toEqual(run.path.from);
    }
  });

  test('leaves out edges that are not routed', () => {
    expect(ways(feedOf(rectangle(80, 300, { foot: 'sawn', head: 'joint', left: 'left' }), 0))).toEqual([
      ['right', 'end'],
    ]);
  });
});

describe('the grain along an edge', () => {
  test('is with the cut where the wood narrows ahead, against it where it widens', () => {
    // Level grain, fed anticlockwise: from the point on the right the wood widens up to the top (against, uphill), and
    // from the top it narrows down to the point on the left (with, downhill). Common practice: cut from wide to narrow.
    expect(Object.fromEntries(ways(feedOf(lozenge, 0)))).toEqual({
      'south-east': 'with',
      'north-east': 'against',
      'north-west': 'with',
      'south-west': 'against',
    });
  });

  test('turns over between hand and table', () => {
    const swap = { with: 'against', against: 'with', neutral: 'neutral', end: 'end' } as const;
    const byHand = feedOf(lozenge, 0.3);
    const onTable = feedOf(lozenge, 0.3, { machine: 'table' });
    for (const { edge, grain } of byHand) {
      expect(onTable.find((run) => run.edge === edge)!.grain).toBe(swap[grain]);
    }
  });

  test('is neutral within 2° of parallel and end grain within 15° of square', () => {
    const at = (degrees: number) => ways(feedOf(rectangle(300, 300), degrees * DEGREE))[0]![1];
    expect([0, 1.9, -1.9, 180, 181.9].map(at)).toEqual(Array(5).fill('neutral'));
    expect([2.1, 74.9, 182.1].map(at)).toEqual(Array(3).fill('against'));
    expect([-2.1, -74.9, 177.9].map(at)).toEqual(Array(3).fill('with'));
    expect([75.1, 90, -75.1, 104.9].map(at)).toEqual(Array(4).fill('end'));
  });

  test('splits a round exactly where it turns: 8° neutral, 60° end, the rest halved', () => {
    const feed = feedOf(disc, 0.4);
    const total = (grain: FeedRun['grain']) =>
      feed.filter((run) => run.grain === grain).reduce((sum, run) => sum + lengthOf(run.path), 0) /
      100 /
      DEGREE;
    expect(total('neutral')).toBeCloseTo(8, 6);
    expect(total('end')).toBeCloseTo(60, 6);
    expect(total('with')).toBeCloseTo(146, 6);
    expect(total('against')).toBeCloseTo(146, 6);
  });

  test('splits leave no gap: each run of an edge begins where the one before ends', () => {
    const feed = feedOf(disc, 0.4);
    for (const [at, run] of feed.entries()) {
      expect(feed[(at + 1) % feed.length]!.path.from).toEqual(run.path.to);
    }
  });
});

describe('a part glued up from two pieces', () => {
  const frame = rectangle(300, 300);
  const pieces = [
    {
      name: 'arm',
      label: 'Arm',
      leftOf: { from: { x: 0, y: 300 }, to: { x: 300, y: 0 } },
      grain: Math.PI / 2,
    },
  ];
  const { feed } = routePart({ ...partOf(frame, { grain: 0 }), pieces }, bearingTooling(12));

  test('meets the grain of the piece that each edge lies in', () => {
    expect(Object.fromEntries(ways(feed))).toEqual({
      foot: 'neutral',
      right: 'neutral',
      head: 'end',
      left: 'end',
    });
  });

  test('has an edge that runs through both split at the line between them', () => {
    const half = [{ ...pieces[0]!, leftOf: { from: { x: 120, y: 0 }, to: { x: 120, y: 300 } } }];
    const runs = routePart({ ...partOf(frame, { grain: 0 }), pieces: half }, bearingTooling(12)).feed;
    const foot = runs.filter(({ edge }) => edge === 'foot');
    expect(foot.map(({ grain }) => grain)).toEqual(['end', 'neutral']);
    expect(foot[0]!.path.to.x).toBeCloseTo(120, 9);
  });
});
