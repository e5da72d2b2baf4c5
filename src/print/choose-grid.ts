import { fail, ok, type Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, SheetGrid } from './api.ts';
import { type Content, contentOf, readsBetterTurned } from './grid/content.ts';
import { fewestSheets, type Placing } from './grid/fewest.ts';
import { roughCount, type Tile } from './grid/forced.ts';
import { type Preference, preferredShift, type Worth } from './grid/prefer.ts';
import { keepOffAt } from './grid/score.ts';
import { remembered, type TurnSource, turnSourceOf } from './grid/turn-source.ts';
import { layOutPage, stepOf } from './page-layout.ts';
import { MOST_SHEETS, tooManySheets } from './too-many-sheets.ts';

/** Turns looked at for seams that disturb nothing, after the upright and the straight ones: every fifteen degrees. */
const COARSE = 30;

/** A turn that is not upright must save so much disturbance of corners and texts, one more for every class. */
const SLANT_PRICE = 1.5;

/** Shifts tried at each turn, by class: enough to step over a corner's clearance where it matters most. */
const SHIFTS_TRIED = [40, 16, 10];
/** Fewer shifts are tried where there are many sheets to look at for each. */
const SHEETS_TRIED = 800;
const WORST: Worth = { disturbance: Infinity, offCentre: Infinity };

type Orientation = SheetGrid['orientation'];

interface Candidate {
  readonly orientation: Orientation;
  readonly tile: Tile;
  readonly placing: Placing;
}

/**
 * How the grid of sheets should lie under a pattern: the turn (every half degree, and turns that lay a straight side
 * along the paper), shift and, when the paper's orientation is `fewest`, the orientation that need the fewest sheets;
 * among those, seams off corners, joints and small text, an upright pattern, and the pattern in the middle of its
 * sheets. Problems when margins or overlap leave no room.
 */
export function chooseGrid(pattern: Pattern, paper: Paper, length?: number): Result<SheetGrid> {
  const content = contentOf(pattern);
  const orientations: readonly Orientation[] =
    paper.orientation === 'fewest' ? ['portrait', 'landscape'] : [paper.orientation];
  let best: Candidate | undefined;
  const tiles = new Map<Orientation, Tile>();
  for (const orientation of orientations) {
    const layout = layOutPage(paper, orientation, length);
    if (!layout.ok) return fail(...layout.problems);
    const step = stepOf(layout.value);
    tiles.set(orientation, {
      stepX: step.x,
      stepY: step.y,
      halfX: paper.overlap / 2,
      halfY: paper.overlap / 2,
    });
  }
  if (content.edges.length === 0) {
    return ok({ orientation: orientations[0]!, turn: 0, shift: { x: 0, y: 0 } });
  }
  const source = turnSourceOf(content);
  const roughly = Math.min(...[...tiles.values()].map((tile) => roughCount(source.at(0), tile)));
  if (roughly > MOST_SHEETS) return fail(tooManySheets(paper, roughly));
  const favourites = [...source.upright, ...source.straight];
  for (const [orientation, tile] of tiles) {
    const below = best === undefined ? Infinity : best.placing.cells.length;
    const placing = fewestSheets(source, tile, below, favourites);
    if (placing !== undefined) best = { orientation, tile, placing };
  }
  if (best === undefined) throw new Error('a pattern with content needs a sheet');
  return ok(preferredGrid(pattern, content, source, tiles, best));
}

/** The most pleasing grid among those that need as few sheets as the best. */
function preferredGrid(
  pattern: Pattern,
  content: Content,
  source: TurnSource,
  tiles: ReadonlyMap<Orientation, Tile>,
  best: Candidate,
): SheetGrid {
  const fewest = best.placing.cells.length;
  const found = source.turns[best.placing.turn]!;
  const classes: readonly (readonly number[])[] = [
    source.upright,
    source.straight,
    [best.placing.turn, ...source.turns.map((_, i) => i).filter((i) => i % COARSE === 0)],
  ];
  const keepOff = remembered((turn: number) => keepOffAt(pattern, content, turn));
  let chosen: { grid: SheetGrid; worth: Worth } | undefined;
  for (const [rank, turns] of classes.entries()) {
    const extraPrice = rank * SLANT_PRICE;
    // No turn of a later class can be worth more than it costs.
    if (chosen !== undefined && chosen.worth.disturbance <= extraPrice) break;
    for (const index of turns) {
      for (const [orientation, tile] of tiles) {
        const isFound = index === best.placing.turn && orientation === best.orientation;
        const { disturbance, offCentre } = chosen?.worth ?? WORST;
        const option = preferredShift(source, index, keepOff, tile, {
          most: fewest,
          extra: isFound ? [best.placing.shiftY] : [],
          tries: Math.min(SHIFTS_TRIED[rank]!, Math.ceil(SHEETS_TRIED / fewest)),
          toBeat: { disturbance: disturbance - extraPrice, offCentre },
        });
        if (option === undefined) continue;
        chosen = {
          grid: gridOf(orientation, source.turns[index]!, tile, option, content),
          worth: { disturbance: option.disturbance + extraPrice, offCentre: option.offCentre },
        };
      }
    }
  }
  if (chosen !== undefined) return chosen.grid;
  const { placing, orientation, tile } = best;
  const shift = { x: placing.shiftX, y: placing.shiftY };
  return gridOf(orientation, found, tile, { shift, cells: placing.cells }, content);
}

/**
 * The grid with its own corner at the upper left of the first row and the first place. A half turn needs the same sheets:
 * it is added when more of the lettering then stands upright.
 */
function gridOf(
  orientation: Orientation,
  turn: number,
  tile: Tile,
  { shift, cells }: Pick<Preference, 'shift' | 'cells'>,
  content: Content,
): SheetGrid {
  const columns = cells.map((cell) => cell.column);
  const rows = cells.map((cell) => cell.row);
  const isTurnedOver = readsBetterTurned(content, turn);
  const left = isTurnedOver
    ? -(shift.x + (Math.max(...columns) + 1) * tile.stepX)
    : shift.x + Math.min(...columns) * tile.stepX;
  const top = isTurnedOver
    ? -(shift.y + Math.min(...rows) * tile.stepY)
    : shift.y + (Math.max(...rows) + 1) * tile.stepY;
  const whole = isTurnedOver ? turn + Math.PI : turn;
  const { centre } = content;
  const c = Math.cos(whole);
  const s = Math.sin(whole);
  return {
    orientation,
    turn: whole,
    shift: { x: -(c * centre.x - s * centre.y) - left, y: -(s * centre.x + c * centre.y) - top },
  };
}
