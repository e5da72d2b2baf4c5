import { describe, expect, test } from 'vitest';
import { checkPart } from '../../src/checks/index.ts';
import { blowOuts, routePart } from '../../src/routing/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import { bearingTooling, partOf, rectangle } from './support/parts.ts';

const found = (part: SketchedPart, machine: 'hand-held' | 'table' = 'hand-held') =>
  blowOuts(part, routePart(part, { ...bearingTooling(12), machine }).feed, machine);
const places = (part: SketchedPart, machine?: 'hand-held' | 'table') =>
  found(part, machine).map(({ edge, at, out, cure }) => [edge, at.x, at.y, Math.round(out.x), cure]);

/* Common practice: an end is cut before the long edges, whose cut then takes off what broke out at the corner; where no cut follows, a backing
   block stands behind it. */
describe('corners that blow out', () => {
  test('are where the end grain ends in the direction of feed, and are cut first where the long edges are routed too', () => {
    expect(places(partOf(rectangle(300, 700)))).toEqual([
      ['foot', 300, 0, 1, 'first'],
      ['head', 0, 700, -1, 'first'],
    ]);
  });

  test('are the other ones on a table, where the work is fed the other way about', () => {
    const both = places(partOf(rectangle(300, 700)), 'table');
    expect(both).toHaveLength(2);
    expect(both).toEqual(
      expect.arrayContaining([
        ['foot', 0, 0, -1, 'first'],
        ['head', 300, 700, 1, 'first'],
      ]),
    );
  });

  test('want a backing block where nothing is cut after them', () => {
    const sides = { left: 'sawn', right: 'sawn' } as const;
    const part = partOf(rectangle(300, 700, sides));
    expect(found(part).map(({ cure }) => cure)).toEqual(['block', 'block']);
    const findings = checkPart(part, routePart(part, bearingTooling(12)));
    const block = findings.filter(({ code }) => code === 'routing.backing-block');
    expect(block.map(({ at }) => at)).toEqual([
      { x: 300, y: 0 },
      { x: 0, y: 700 },
    ]);
    expect(block[0]!.cure).toMatch(/backing block, at least as thick as the work/);
  });

  test('are none with the grain along the ends, nor where the ends are sawn', () => {
    const across = partOf(rectangle(300, 700), { grain: 0 });
    // Then the long edges are end grain, and leave at the other corners.
    expect(
      found(across)
        .map(({ edge }) => edge)
        .toSorted(),
    ).not.toContain('foot');
    expect(found(partOf(rectangle(300, 700, { foot: 'sawn', head: 'sawn' })))).toEqual([]);
  });
});
