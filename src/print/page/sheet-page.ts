import { clipScene, type Mark, type Scene, transformScene } from '../../drawing/index.ts';
import { type Box, boundsOfEdges, type Vec, vec } from '../../geometry/index.ts';
import type { Paper, PatternPrint, PrintMeta, Sheet } from '../api.ts';
import { boxRoundText } from '../grid/content.ts';
import type { PageLayout } from '../page-layout.ts';
import type { MarkedSeam } from '../seam-marks.ts';
import { cornerOf, nameOfSheet } from '../seams.ts';
import { HAIR, itemOf, PALE, type Page, type PageItem } from './ink.ts';
import { rectangle } from './items.ts';
import { occupiedBy } from './occupied.ts';
import { barItems, placeBars } from './scale-bars.ts';
import { seamItems } from './seam-items.ts';
import { stripItems } from './strip.ts';
import { workOf } from './work.ts';

/** Bars keep so far from the seams, mm, beyond the reach of their marks. */
const BAR_INSET = 7;

export interface SheetPageOptions {
  readonly layout: PageLayout;
  readonly seams: readonly MarkedSeam[];
  readonly calibration: Paper['calibration'];
  readonly pages: number;
}

/** One sheet of a pattern with everything that is printed on it. */
export function sheetPage(
  print: PatternPrint,
  sheet: Sheet,
  meta: PrintMeta,
  options: SheetPageOptions,
): Page {
  const { pattern, plan, facts } = print;
  const { layout, calibration, pages } = options;
  const { cell, window, strip } = layout;
  const corner = cornerOf(plan, sheet);
  const toPage = (p: Vec): Vec => vec(p.x - corner.x + cell.minX, p.y - corner.y + cell.minY);
  const half = plan.paper.overlap / 2;
  const seams = options.seams.filter((seam) => seam.sheets.includes(sheet));
  const room = {
    minX: cell.minX + BAR_INSET,
    minY: cell.minY + BAR_INSET,
    maxX: cell.maxX - BAR_INSET,
    maxY: cell.maxY - BAR_INSET,
  };
  const drawn = { occupied: occupiedBy(pattern, sheet.toPage), work: workOf(pattern, sheet.toPage) };
  const bars = placeBars(room, drawn, plan.grid.orientation);
  return {
    ...layout.page,
    printable: layout.printable,
    label: `${plan.pattern} ${sheet.row}.${sheet.place}`,
    bookmark: nameOfSheet(sheet).replace(/^r/, 'R'),
    chapter: pattern.title,
    correction: correctionOf(calibration, plan.grid.orientation),
    items: [
      rectangle(cell, HAIR, PALE),
      ...patternItems(transformScene(pattern.scene, sheet.toPage), window),
      ...seams.flatMap((seam) => seamItems(seam, sheet, toPage, window, half)),
      ...bars.flatMap((bar) => barItems(bar, drawn.occupied)),
      ...stripItems(strip, { meta, facts, plan, sheet, pages, calibration }),
    ],
  };
}

/** Factors along the page's own x and y. */
export function correctionOf(calibration: Paper['calibration'], orientation: 'portrait' | 'landscape'): Vec {
  return orientation === 'portrait'
    ? { x: calibration.short, y: calibration.long }
    : { x: calibration.long, y: calibration.short };
}

/** What the sheet shows of the pattern: lines cut at the window; lettering and fills that cross it shown only inside. */
function patternItems(scene: Scene, window: Box): PageItem[] {
  return clipScene(scene, window).marks.map((mark) => {
    const item = itemOf(mark);
    const isWhole = mark.kind === 'path' && mark.fill === undefined;
    return isWhole || isInside(mark, window) ? item : { kind: 'clipped', to: window, items: [item] };
  });
}

function isInside(mark: Mark, window: Box): boolean {
  const box = boundsOfEdges(mark.kind === 'text' ? boxRoundText(mark) : mark.edges);
  return (
    box.minX >= window.minX && box.maxX <= window.maxX && box.minY >= window.minY && box.maxY <= window.maxY
  );
}
