import type { Problem } from '../../core/index.ts';
import {
  distance,
  edgesOfLoop,
  FLAT_ARC,
  findFaults,
  type StrokeLoop,
  type Vec,
} from '../../geometry/index.ts';
import type { OwnShape } from './api.ts';

/** What form a shape can have: the grammar's own limits, with room for what else is declared. */
const MOST_STROKES = 180;
const MOST_POINTS = 350;

/**
 * What keeps a drawn shape from becoming a form: a loop that does not close, a stroke that leads nowhere, lines that cross, too much of it. Paths are
 * `loops.0.strokes.2`.
 */
export function checkOwnShape({ loops, thickness, pieces }: OwnShape): readonly Problem[] {
  const refuse = (code: string, message: string, path: string, expected: string): Problem => ({
    code: `own-shape.${code}`,
    message,
    path,
    expected,
  });
  if (loops.length === 0 || loops.some(({ strokes }) => strokes.length === 0)) {
    return [refuse('empty', 'There is no closed outline yet.', 'loops', 'two strokes or more')];
  }
  const problems: Problem[] = [];
  if (!(thickness >= 1 && thickness <= 300)) {
    problems.push(
      refuse('thickness', `A thickness of ${thickness} mm cannot be made.`, 'thickness', '1 to 300 mm'),
    );
  }
  if (!(Number.isInteger(pieces) && pieces >= 1 && pieces <= 99)) {
    problems.push(refuse('pieces', `${pieces} pieces cannot be made.`, 'pieces', '1 to 99'));
  }
  const strokes = loops.reduce((sum, loop) => sum + loop.strokes.length, 0);
  const points = loops.reduce((sum, loop) => sum + pointsOf(loop).length, 0);
  if (strokes > MOST_STROKES || points > MOST_POINTS) {
    const message = `The outline has ${strokes} strokes and ${points} points, more than a form holds: draw it with fewer, longer curves.`;
    return [refuse('too-many', message, 'loops', `${MOST_STROKES} strokes, ${MOST_POINTS} points`)];
  }
  for (const [at, loop] of loops.entries()) problems.push(...faultsOfLoop(loop, `loops.${at}`, refuse));
  return problems;
}

/** Start, ends and what strokes pass through. */
export function pointsOf({ start, strokes }: StrokeLoop): readonly Vec[] {
  return [start, ...strokes.flatMap((stroke) => [...between(stroke), stroke.to])];
}

function between(stroke: StrokeLoop['strokes'][number]): readonly Vec[] {
  if (stroke.kind === 'arc') return [stroke.through];
  return stroke.kind === 'batten' ? stroke.nails : [];
}

function faultsOfLoop(
  loop: StrokeLoop,
  path: string,
  refuse: (code: string, message: string, path: string, expected: string) => Problem,
): readonly Problem[] {
  let from = loop.start;
  for (const [at, stroke] of loop.strokes.entries()) {
    const way = [from, ...between(stroke), stroke.to];
    from = stroke.to;
    if (!way.some((p, i) => i > 0 && distance(p, way[i - 1]!) < FLAT_ARC)) continue;
    const message = `Stroke ${at + 1} begins and ends, or passes twice, in one place.`;
    return [refuse('no-length', message, `${path}.strokes.${at}`, 'points apart from each other')];
  }
  const gap = distance(from, loop.start);
  if (gap > FLAT_ARC) {
    const message = `The outline does not close: its ends are ${gap.toFixed(1)} mm apart.`;
    return [refuse('open', message, path, 'a last stroke that ends at the first point')];
  }
  const edges = edgesOfLoop(loop);
  const closed = edges.map((edge, i) => (i === edges.length - 1 ? { ...edge, to: edges[0]!.from } : edge));
  const fault = findFaults([{ outer: { edges: closed }, holes: [] }]).find(
    ({ kind }) => kind !== 'wrong-direction',
  );
  if (fault === undefined) return [];
  const { x, y } = fault.at;
  const message = `The outline crosses or touches itself ${x.toFixed(0)} mm across, ${y.toFixed(0)} mm up.`;
  return [refuse('crossing', message, path, 'strokes that meet only at their ends')];
}
