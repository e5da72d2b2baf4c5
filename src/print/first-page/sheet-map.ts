import type { LineRole, Pattern } from '../../drawing/index.ts';
import { type Box, transformEdge, transformPoint, type Vec, vec } from '../../geometry/index.ts';
import type { SheetPlan } from '../api.ts';
import { ACCENT, GRAPHITE, HAIR, itemOf, PALE, type PageItem, THIN } from '../page/ink.ts';
import { polyline, rectangle, words, wordsWithin } from '../page/items.ts';
import { stepOf } from '../page-layout.ts';
import { cornerOf, nameOfSheet, seamsOf } from '../seams.ts';
import { layoutOf } from '../sheets-of-plan.ts';
import { BELOW_HEADING, type Block, heading } from './block.ts';

/** Lines that still say something when drawn small. */
const SHOWN: ReadonlySet<LineRole> = new Set([
  'part',
  'template',
  'as-routed',
  'residue',
  'saw-line',
  'joint',
]);
const SMALL = 1.8;

/** How wide the map is for its height. */
export function shapeOfMap(plan: SheetPlan): number {
  const step = stepOf(layoutOf(plan));
  return (plan.places * step.x) / (plan.rows * step.y);
}

/** The sheets as they lie, with the pattern, the seams and the check lengths on them, to scale. */
export function sheetMap(plan: SheetPlan, pattern: Pattern, width: number, most: number): Block {
  const step = stepOf(layoutOf(plan));
  const extent = extentOf(plan, step);
  const scale = Math.min(width / (extent.maxX - extent.minX), most / (extent.maxY - extent.minY));
  const high = scale * (extent.maxY - extent.minY);
  return {
    height: BELOW_HEADING - 3.5 + high,
    draw: (corner) => {
      const top = corner.y - BELOW_HEADING + 3.5;
      const shift = vec(corner.x - scale * extent.minX, top - scale * extent.maxY);
      const onMap = (p: Vec): Vec => vec(shift.x + scale * p.x, shift.y + scale * p.y);
      const { grid } = plan;
      const by = {
        turn: grid.turn,
        scale,
        mirrored: false,
        shift: vec(shift.x + scale * grid.shift.x, shift.y + scale * grid.shift.y),
      };
      return [
        heading('How the sheets lie', corner),
        ...cellItems(plan, step, onMap, scale),
        ...smallPattern(pattern, by),
        ...seamsOf(plan).flatMap((seam) => {
          const a = onMap(seam.from);
          const b = onMap(seam.to);
          const at = seam.kind === 'side' ? vec(a.x + 0.7, a.y + 1) : vec(b.x - 1, b.y + 0.7);
          const align = seam.kind === 'side' ? 'left' : 'right';
          return [
            polyline([a, b], THIN, ACCENT),
            words(seam.name, at, { height: SMALL, ink: ACCENT, align }),
          ];
        }),
        ...pattern.checks.flatMap((check) => {
          const a = transformPoint(check.from, by);
          const b = transformPoint(check.to, by);
          const at = vec(a.x + 0.36 * (b.x - a.x) + 0.8, a.y + 0.36 * (b.y - a.y) + 0.8);
          return [
            polyline([a, b], HAIR, PALE),
            words(check.name, at, { height: 2.5, weight: 'semibold', ink: ACCENT }),
          ];
        }),
      ];
    },
  };
}

function extentOf(plan: SheetPlan, step: Vec): Box {
  const corners = plan.sheets.map((sheet) => cornerOf(plan, sheet));
  const xs = corners.map((corner) => corner.x);
  const ys = corners.map((corner) => corner.y);
  return {
    minX: Math.min(...xs),
    minY: Math.min(...ys),
    maxX: Math.max(...xs) + step.x,
    maxY: Math.max(...ys) + step.y,
  };
}

function cellItems(plan: SheetPlan, step: Vec, onMap: (p: Vec) => Vec, scale: number): PageItem[] {
  return plan.sheets.flatMap((sheet) => {
    const low = cornerOf(plan, sheet);
    const a = onMap(low);
    const b = onMap(vec(low.x + step.x, low.y + step.y));
    const box = { minX: a.x, minY: a.y, maxX: b.x, maxY: b.y };
    const width = scale * step.x - 2;
    const name = width > 17 ? nameOfSheet(sheet) : `${sheet.row}.${sheet.place}`;
    return [
      rectangle(box, HAIR, GRAPHITE),
      wordsWithin(name, vec(a.x + 1, b.y - 2.9), width, { height: SMALL }, 1.2),
      wordsWithin(`page ${sheet.page}`, vec(a.x + 1, b.y - 5.6), width, { height: SMALL, ink: PALE }, 1.2),
    ];
  });
}

function smallPattern(pattern: Pattern, by: Parameters<typeof transformPoint>[1]): PageItem[] {
  return pattern.scene.marks.flatMap((mark): PageItem[] => {
    if (mark.kind === 'text' || !SHOWN.has(mark.role)) return [];
    const item = itemOf({ ...mark, edges: mark.edges.map((edge) => transformEdge(edge, by)) });
    // Dashes would be longer than the lines.
    return item.kind === 'stroke' ? [{ ...item, width: Math.min(item.width, 0.25), dash: [] }] : [item];
  });
}
