import type { Box, Vec } from '../api.ts';
import { placeClearOfCorners } from '../arrangement/place-clear-of-corners.ts';
import { windingNumber } from '../arrangement/winding-number.ts';
import { boundsOfEdges } from '../bounds.ts';
import { pointAt } from '../edge.ts';
import { buildBoxTree, searchBoxTree } from '../index-tree/box-tree.ts';
import { nearestOnEdges } from '../measure/nearest.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import type { Fault, FaultKind } from './fault.ts';
import type { PlacedLoop } from './placed-loop.ts';

interface Boxed extends PlacedLoop {
  readonly box: Box;
}

/**
 * Loops on the wrong side of each other: holes outside their outer loop or in another hole, regions in each other's material.
 * Loops that do not cross lie wholly on one side, so one place tells; where any cross, every edge's middle is asked.
 */
export function findNestingFaults(loops: readonly PlacedLoop[], crossed: boolean): Fault[] {
  const boxed: Boxed[] = loops.map((loop) => ({ ...loop, box: boundsOfEdges(loop.edges) }));
  const outers = boxed.filter(({ loop }) => loop === 0);
  const holesOf = new Map<number, Boxed[]>(outers.map(({ region }) => [region, []]));
  for (const loop of boxed) if (loop.loop > 0) holesOf.get(loop.region)?.push(loop);
  const faults: Fault[] = [];
  const report = (kind: FaultKind, { region, loop }: PlacedLoop, at: Vec, message: string): void => {
    faults.push({ kind, at, region, loop, edge: 0, message: `loop ${loop} of region ${region} ${message}` });
  };
  for (const outer of outers) {
    const holes = holesOf.get(outer.region)!;
    const holesNear = neighboursAmong(holes);
    for (const hole of holes) {
      const outside = placesOn(hole, crossed).find(
        (p) => isClear(outer, p) && windingNumber(outer.edges, p) === 0,
      );
      if (outside !== undefined) report('hole-outside', hole, outside, 'lies outside the outer loop');
      for (const other of holesNear(hole)) {
        const inside = placesOn(hole, crossed).find(
          (p) => isClear(other, p) && windingNumber(other.edges, p) !== 0,
        );
        if (inside !== undefined) report('overlap', hole, inside, `lies inside hole ${other.loop}`);
      }
    }
  }
  const outersNear = neighboursAmong(outers);
  for (const a of outers) {
    for (const b of outersNear(a)) {
      const inMaterial = placesOn(a, crossed).find(
        (p) =>
          isClear(b, p) &&
          windingNumber(b.edges, p) !== 0 &&
          holesOf.get(b.region)!.every((hole) => isClear(hole, p) && windingNumber(hole.edges, p) === 0),
      );
      if (inMaterial !== undefined)
        report('overlap', a, inMaterial, `lies in the material of region ${b.region}`);
    }
  }
  return faults;
}

/** Gives for one of the loops the others whose boxes meet its own, in order. */
function neighboursAmong(loops: readonly Boxed[]): (loop: Boxed) => Boxed[] {
  const boxes = loops.flatMap(({ box: { minX, minY, maxX, maxY } }) => [minX, minY, maxX, maxY]);
  const tree = buildBoxTree(boxes, loops.length);
  return (loop) => {
    const { minX, minY, maxX, maxY } = loop.box;
    const found: number[] = [];
    searchBoxTree(tree, minX, minY, maxX, maxY, (i) => {
      if (loops[i] !== loop) found.push(i);
      return false;
    });
    return found.sort((i, j) => i - j).map((i) => loops[i]!);
  };
}

function placesOn({ edges }: PlacedLoop, all: boolean): Vec[] {
  return all ? edges.map((edge) => pointAt(edge, 0.4142)) : [placeClearOfCorners(edges)];
}

/** On the line itself neither side can be told. */
function isClear({ edges }: PlacedLoop, p: Vec): boolean {
  return nearestOnEdges(edges, p).distance > POSITION_TOLERANCE;
}
