import type { Edge, Vec } from '../api.ts';
import { lengthOf } from '../edge.ts';
import { areaOfOutline } from '../measure/area.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { distance } from '../vec.ts';
import type { Fault, FaultKind } from './fault.ts';
import type { PlacedLoop } from './placed-loop.ts';

/** Ends and centre are separately within tolerance, so an arc's radius may differ by twice as much between its ends. */
const ARC_SLACK = 2 * POSITION_TOLERANCE;

/** What is wrong with a loop by itself, crossings apart. */
export function findLoopFaults({ edges, region, loop }: PlacedLoop): Fault[] {
  const name = loop === 0 ? 'outer loop' : `hole ${loop}`;
  const faults: Fault[] = [];
  const report = (kind: FaultKind, at: Vec, edge: number, message: string): void => {
    faults.push({ kind, at, region, loop, edge, message: `${name} of region ${region}: ${message}` });
  };
  if (edges.length === 0) report('empty', { x: Number.NaN, y: Number.NaN }, 0, 'no edges');
  edges.forEach((edge, i) => {
    if (!isNumeric(edge)) {
      report('not-finite', edge.from, i, `edge ${i} has a coordinate that is not a number`);
      return;
    }
    const next = edges[(i + 1) % edges.length]!;
    const gap = distance(edge.to, next.from);
    if (gap > 0)
      report(
        'unclosed',
        edge.to,
        i,
        `edge ${i} ends ${gap} mm from where edge ${(i + 1) % edges.length} begins`,
      );
    if (edge.kind === 'arc') {
      const off = Math.max(
        Math.abs(distance(edge.from, edge.centre) - edge.radius),
        Math.abs(distance(edge.to, edge.centre) - edge.radius),
      );
      if (!(edge.radius > 0)) report('bad-arc', edge.from, i, `arc ${i} has a radius of ${edge.radius} mm`);
      else if (off > ARC_SLACK) report('bad-arc', edge.from, i, `arc ${i} ends ${off} mm beside its circle`);
    }
    if (!(lengthOf(edge) > 0)) report('zero-edge', edge.from, i, `edge ${i} has no length`);
  });
  if (faults.length > 0) return faults;
  const area = areaOfOutline({ edges });
  if (loop === 0 ? !(area > 0) : !(area < 0)) {
    const way =
      loop === 0 ? 'clockwise; an outer loop runs anticlockwise' : 'anticlockwise; a hole runs clockwise';
    report('wrong-direction', edges[0]!.from, 0, `runs ${way}`);
  }
  return faults;
}

function isNumeric(edge: Edge): boolean {
  const sum = edge.from.x + edge.from.y + edge.to.x + edge.to.y;
  return Number.isFinite(edge.kind === 'line' ? sum : sum + edge.centre.x + edge.centre.y + edge.radius);
}
