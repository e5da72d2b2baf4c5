import type { Mark, Pattern } from '../drawing/index.ts';
import { type Box, lengthOf, pointAt, transformPoint, type Vec } from '../geometry/index.ts';
import type { SheetPlan } from './api.ts';
import { boxRoundText } from './grid/content.ts';
import { layoutOf } from './sheets-of-plan.ts';

/** Distance between the points at which a mark is looked for on the sheets, mm: far less than a sheet. */
const STEP = 4;

/**
 * The pattern without the optional marks that its sheets would show in part only: half a dimension line misleads. Every
 * other mark is kept.
 */
export function leaveOutCut(pattern: Pattern, plan: SheetPlan): Pattern {
  const { window } = layoutOf(plan);
  const isShown = (p: Vec): boolean =>
    plan.sheets.some(({ toPage }) => isIn(window, transformPoint(p, toPage)));
  const cut = new Set<string>();
  for (const mark of pattern.scene.marks) {
    const { optional } = mark;
    if (optional !== undefined && !cut.has(optional) && !pointsOf(mark).every(isShown)) cut.add(optional);
  }
  if (cut.size === 0) return pattern;
  const marks = pattern.scene.marks.filter(({ optional }) => optional === undefined || !cut.has(optional));
  return { ...pattern, scene: { ...pattern.scene, marks } };
}

function pointsOf(mark: Mark): readonly Vec[] {
  const edges = mark.kind === 'text' ? boxRoundText(mark) : mark.edges;
  return edges.flatMap((edge) => {
    const count = Math.max(1, Math.ceil(lengthOf(edge) / STEP));
    return Array.from({ length: count + 1 }, (_, i) => pointAt(edge, i / count));
  });
}

function isIn({ minX, minY, maxX, maxY }: Box, { x, y }: Vec): boolean {
  return x >= minX && x <= maxX && y >= minY && y <= maxY;
}
