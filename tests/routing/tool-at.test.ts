import { describe, expect, test } from 'vitest';
import { distance, nearestOnEdges, vec } from '../../src/geometry/index.ts';
import { routePart, toolAt, toolMoved, toolPathOf } from '../../src/routing/index.ts';
import {
  bearingTooling,
  bushingTooling,
  hollowLeg,
  loopOf,
  openingAt,
  partOf,
  rectangle,
  reversed,
} from './support/parts.ts';

describe('the tool standing at the template', () => {
  test('runs on the template and meets the drawn edge, with the guide larger or smaller than the cutter', () => {
    const part = partOf(rectangle(100, 400));
    for (const tooling of [bearingTooling(19), bushingTooling(10, 20), bushingTooling(20, 16)]) {
      const routing = routePart(part, tooling);
      const path = toolPathOf(routing);
      const place = toolAt(path, part.region, routing, vec(-3, 200))!;
      expect(place.gap).toBeCloseTo(0, 9);
      expect(place.onEdge).toEqual({ x: 0, y: expect.closeTo(200, 9) });
      expect(place.middle.x).toBeCloseTo(-path.cutterRadius, 9);
      expect(distance(place.middle, place.onTemplate)).toBeCloseTo(path.guideRadius, 9);
      expect(distance(place.middle, place.onWood)).toBeCloseTo(path.cutterRadius, 9);
    }
  });

  test('does not come to the middle of a hollow tighter than the cutter: (c − r)(√2 − 1) of a square one stays', () => {
    const part = partOf(hollowLeg(5));
    const routing = routePart(part, bearingTooling(19));
    const [left] = routing.differences;
    const place = toolAt(toolPathOf(routing), part.region, routing, left!.at)!;
    expect(place.edge).toBe('knee');
    expect(place.gap).toBeCloseTo(4.5 * (Math.SQRT2 - 1), 6);
  });

  test('stays in an opening that it was let into, and keeps out of one that the guide does not enter', () => {
    const hole = reversed(
      loopOf([
        [30, 150, 'low'],
        [70, 150, 'right-of'],
        [70, 250, 'high'],
        [30, 250, 'left-of'],
      ]),
    );
    const part = partOf(rectangle(100, 400), { holes: [hole], openings: [openingAt(0, vec(50, 200))] });
    const routing = routePart(part, bearingTooling(12));
    const path = toolPathOf(routing);
    expect(path.loops).toHaveLength(2);
    const inside = toolAt(path, part.region, routing, vec(33, 200))!;
    expect(inside.loop).toBe(1);
    expect(inside.gap).toBeCloseTo(0, 9);
    const wide = routePart(part, bearingTooling(44));
    expect(toolPathOf(wide).loops).toHaveLength(1);
  });

  test('moves on along its path and comes back after one round', () => {
    const part = partOf(hollowLeg(12));
    const routing = routePart(part, bearingTooling(19));
    const path = toolPathOf(routing);
    const start = toolAt(path, part.region, routing, vec(0, 100))!;
    const on = toolMoved(path, part.region, routing, start, 25);
    expect(distance(on.middle, start.middle)).toBeCloseTo(25, 6);
    const edges = path.loops[0]!.edges;
    expect(nearestOnEdges(edges, on.middle).distance).toBeLessThan(1e-9);
    const back = toolMoved(path, part.region, routing, on, -25);
    expect(distance(back.middle, start.middle)).toBeLessThan(1e-9);
  });
});
