import type { Region } from '../api.ts';
import type { Fault } from './fault.ts';
import { findCrossings } from './find-crossings.ts';
import { findLoopFaults } from './find-loop-faults.ts';
import { findNestingFaults } from './find-nesting-faults.ts';
import type { PlacedLoop } from './placed-loop.ts';

/**
 * Every reason why regions are not valid, each with its place; none when they are. Valid are closed loops of edges with some length,
 * outer ones anticlockwise and holes clockwise inside them, that neither cross nor overlap. A hole may touch its
 * outer loop or another hole, and a region another region, at single points.
 */
export function findFaults(regions: readonly Region[]): Fault[] {
  const loops: PlacedLoop[] = [];
  regions.forEach(({ outer, holes }, region) => {
    [outer, ...holes].forEach(({ edges }, loop) => {
      loops.push({ edges, region, loop });
    });
  });
  const faults = loops.flatMap(findLoopFaults);
  // What is not closed or not a number has no crossings or inside to speak of.
  if (faults.some(({ kind }) => kind !== 'wrong-direction')) return faults;
  const crossings = findCrossings(loops);
  return [...faults, ...crossings, ...findNestingFaults(loops, crossings.length > 0)];
}
