import { fail, ok, type Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, Sheet, SheetGrid, SheetPlan } from './api.ts';
import { type Content, contentOf } from './grid/content.ts';
import type { Cell } from './grid/cover.ts';
import { roughCount, type Tile } from './grid/forced.ts';
import { bandsAt, sheetsAt } from './grid/needs.ts';
import { type TurnedContent, turnContent } from './grid/pieces.ts';
import { layOutPage, stepOf } from './page-layout.ts';
import { MOST_SHEETS, tooManySheets } from './too-many-sheets.ts';

/** The first page of a pattern's PDF is its map; sheets follow. */
const FIRST_SHEET_PAGE = 2;

/** The sheets on a given grid; `length` is how much of a roll one page takes, mm. */
export function planOnGrid(
  pattern: Pattern,
  paper: Paper,
  grid: SheetGrid,
  length?: number,
): Result<SheetPlan> {
  const layout = layOutPage(paper, grid.orientation, length);
  if (!layout.ok) return fail(...layout.problems);
  const step = stepOf(layout.value);
  const tile = { stepX: step.x, stepY: step.y, halfX: paper.overlap / 2, halfY: paper.overlap / 2 };
  const content = contentOf(pattern);
  const roughly = roughCount(turnContent(content, grid.turn), tile);
  if (roughly > MOST_SHEETS) return fail(tooManySheets(paper, roughly));
  const cells = cellsOn(content, grid, tile);
  if (cells.length > MOST_SHEETS) return fail(tooManySheets(paper, cells.length));
  // Counted from the grid's own corner, or from above it where the pattern has grown beyond.
  const left = Math.min(0, ...cells.map((cell) => cell.column));
  const top = Math.max(-1, ...cells.map((cell) => cell.row));
  const sheets = cells
    .map((cell) => ({ cell, row: top - cell.row + 1, place: cell.column - left + 1 }))
    .sort((a, b) => a.row - b.row || a.place - b.place)
    .map(({ cell, row, place }, i): Sheet => {
      const toPage = {
        turn: grid.turn,
        scale: 1,
        mirrored: false,
        shift: {
          x: grid.shift.x + layout.value.cell.minX - cell.column * step.x,
          y: grid.shift.y + layout.value.cell.minY - cell.row * step.y,
        },
      };
      return { row, place, page: FIRST_SHEET_PAGE + i, toPage };
    });
  return ok({
    pattern: pattern.name,
    paper,
    grid,
    page: layout.value.page,
    rows: Math.max(0, ...sheets.map((sheet) => sheet.row)),
    places: Math.max(0, ...sheets.map((sheet) => sheet.place)),
    sheets,
  });
}

function cellsOn(content: Content, grid: SheetGrid, tile: Tile): readonly Cell[] {
  if (content.edges.length === 0) return [];
  const { centre } = content;
  const c = Math.cos(grid.turn);
  const s = Math.sin(grid.turn);
  // The grid's own corner in the frame of the turned content, whose origin is its centre.
  const corner = {
    x: -(c * centre.x - s * centre.y) - grid.shift.x,
    y: -(s * centre.x + c * centre.y) - grid.shift.y,
  };
  const turned: TurnedContent = turnContent(content, grid.turn);
  const { cells } = sheetsAt(bandsAt(turned, tile, corner.y), tile, corner.x, Infinity);
  if (cells === undefined) throw new Error('content without a limit always finds sheets');
  return cells;
}
