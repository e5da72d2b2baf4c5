import type { LineRole, Pattern } from '../../drawing/index.ts';
import { type Box, transformEdge, transformPoint, type Vec, vec } from '../../geometry/index.ts';
import type { SheetPlan } from '../api.ts';
import { ACCENT, GRAPHITE, HAIR, itemOf, PALE, type PageItem, THIN } from '../page/ink.ts';
import { polyline, rectangle, words, wordsWithin } from '../page/items.ts';
import { linesThrough, type Occupied, occupiedBy } from '../page/occupied.ts';
import { stepOf } from '../page-layout.ts';
import { cornerOf, nameOfSheet, seamsOf } from '../seams.ts';
import { layoutOf } from '../sheets-of-plan.ts';
import { BELOW_HEADING, type Block, heading } from './block.ts';

/** Lines that still say something when drawn small. */
const SHOWN: ReadonlySet<LineRole> = new Set(['part', 'template', 'as-routed', 'saw-line']);
const SMALL = 1.8;
/** What a sheet's name and page take in the map, mm. */
const NAME_ROOM = { x: 17, y: 6 } as const;

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
        ...cellItems(plan, step, onMap, occupiedBy(pattern, by)),
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
        ...pattern.checks.flatMap((check, i) => {
          const a = transformPoint(check.from, by);
          const b = transformPoint(check.to, by);
          const share = (i + 1) / (pattern.checks.length + 1);
          const at = vec(a.x + share * (b.x - a.x) + 0.8, a.y + share * (b.y - a.y) + 0.8);
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

function cellItems(plan: SheetPlan, step: Vec, onMap: (p: Vec) => Vec, occupied: Occupied): PageItem[] {
  return plan.sheets.flatMap((sheet) => {
    const low = cornerOf(plan, sheet);
    const a = onMap(low);
    const b = onMap(vec(low.x + step.x, low.y + step.y));
    const width = Math.min(NAME_ROOM.x, b.x - a.x - 2);
    const name = b.x - a.x > NAME_ROOM.x + 1 ? nameOfSheet(sheet) : `${sheet.row}.${sheet.place}`;
    // In whichever corner the pattern leaves free; the lower ones a little up, clear of the names of seams.
    const corners = [b.y - 1, a.y + 3 + NAME_ROOM.y].flatMap((top) => [
      vec(a.x + 1, top),
      vec(b.x - 1 - width, top),
    ]);
    const lines = corners.map((at) =>
      linesThrough(occupied, { minX: at.x, minY: at.y - NAME_ROOM.y, maxX: at.x + width, maxY: at.y }),
    );
    const at = corners[lines.indexOf(Math.min(...lines))]!;
    return [
      rectangle({ minX: a.x, minY: a.y, maxX: b.x, maxY: b.y }, HAIR, GRAPHITE),
      wordsWithin(name, vec(at.x, at.y - SMALL), width, { height: SMALL }, 1.2),
      wordsWithin(
        `page ${sheet.page}`,
        vec(at.x, at.y - SMALL - 2.9),
        width,
        { height: SMALL, ink: PALE },
        1.2,
      ),
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
