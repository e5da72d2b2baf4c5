import { expect, test } from 'vitest';
import {
  areaOfRegions,
  directionAt,
  dot,
  leftOf,
  locate,
  middle,
  scale,
  vec,
} from '../../src/geometry/index.ts';
import { mirrorRouting } from '../../src/routing/index.ts';
import { mirrorPart } from '../../src/sketch/index.ts';
import { kneeLeg, panelLeg, splayedLeg } from '../cases/pattern-cases.ts';

test.each([
  ['splayed leg', splayedLeg],
  ['panel leg', panelLeg],
])('a %s turned over is still a sound region of the same area', (_, make) => {
  const { part } = make();
  const over = mirrorPart(part);
  expect(areaOfRegions([over.region])).toBeCloseTo(areaOfRegions([part.region]), 6);
  expect(over.centreLine.from.x).toBe(-part.centreLine.from.x);
  const plunge = over.openings[0]?.plunge;
  if (plunge !== undefined) expect(locate([over.region], plunge)).toBe('outside');
});

/**
 * The rule of feed (design of the craft, common practice): hand-held, an outside edge is fed anticlockwise, an inside edge
 * clockwise, so that the wood lies on the left; with the grain where the outward normal and the grain, taken along the
 * feed, point the same way.
 */
test.each([
  ['splayed leg', splayedLeg],
  ['panel leg', panelLeg],
])('the tool keeps the wood of the mirrored %s on its left, and the grain is judged anew', (_, make) => {
  const { part, routing } = make();
  const over = mirrorPart(part);
  const fed = mirrorRouting(routing).feed;
  expect(fed).toHaveLength(routing.feed.length);
  const grain = vec(Math.cos(over.grain), Math.sin(over.grain));
  for (const { path, grain: meets } of fed) {
    const direction = directionAt(path, 0.5);
    const at = path.kind === 'line' ? middle(path.from, path.to) : path.from;
    const beside = scale(leftOf(direction), 0.01);
    expect(locate([over.region], vec(at.x + beside.x, at.y + beside.y))).not.toBe('outside');
    if (meets !== 'with' && meets !== 'against') continue;
    const along = dot(grain, direction) < 0 ? scale(grain, -1) : grain;
    const outward = scale(leftOf(direction), -1);
    expect(meets).toBe(dot(along, outward) > 0 ? 'with' : 'against');
  }
});

test('an edge cut with the grain is cut against it once the part is turned over', () => {
  const { routing } = splayedLeg();
  const before = new Map(routing.feed.map(({ edge, grain }) => [edge, grain]));
  const after = new Map(mirrorRouting(routing).feed.map(({ edge, grain }) => [edge, grain]));
  expect(before.get('inner')).toBe('against');
  expect(after.get('inner')).toBe('with');
});

test('what the cutter leaves moves with the part', () => {
  const { routing } = kneeLeg();
  const over = mirrorRouting(routing);
  expect(over.differences[0]!.at.x).toBe(-routing.differences[0]!.at.x);
  expect(areaOfRegions([over.differences[0]!.region])).toBeCloseTo(
    areaOfRegions([routing.differences[0]!.region]),
    9,
  );
});
