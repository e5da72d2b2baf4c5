import { fail, ok, type Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, SheetGrid } from './api.ts';
import { type Content, contentOf, readsBetterTurned } from './grid/content.ts';
import { fewestSheets, type Placing, type TurnSource } from './grid/fewest.ts';
import { roughCount, type Tile } from './grid/forced.ts';
import { turnerOf } from './grid/pieces.ts';
import { isBetter, type Preference, preferredShift } from './grid/prefer.ts';
import { keepOffAt } from './grid/score.ts';
import { longestFirst, straightTurns } from './grid/straight-turns.ts';
import { layOutPage, stepOf } from './page-layout.ts';
import { MOST_SHEETS, tooManySheets } from './too-many-sheets.ts';

/** Turns of the pattern that are searched: every half degree. A half turn needs the same sheets again. */
const TURN_STEP = Math.PI / 360;
const HALF_TURN = Math.PI;
/** Turns looked at for seams that disturb nothing, after the upright and the straight ones: every fifteen degrees. */
const COARSE = 30;

/** A turn that is not upright must save so much disturbance of corners and texts, one more for every class. */
const SLANT_PRICE = 1.5;

/** Shifts tried at each turn, by class: enough to step over a corner's clearance where it matters most. */
const SHIFTS_TRIED = [40, 16, 10];
/** Fewer shifts are tried where there are many sheets to look at for each. */
const SHEETS_TRIED = 800;
/** So many of the longest lines are enough for most lower bounds. */
const LONGEST = 80;

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
  const source = sourceOf(content);
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
  const roughly = Math.min(...[...tiles.values()].map((tile) => roughCount(source.at(0), tile)));
  if (roughly > MOST_SHEETS) return fail(tooManySheets(paper, roughly));
  const favourites = [0, Math.PI / 2, ...source.straight].map((turn) => source.turns.indexOf(turn));
  for (const [orientation, tile] of tiles) {
    const below = best === undefined ? Infinity : best.placing.cells.length;
    const placing = fewestSheets(source, tile, below, favourites);
    if (placing !== undefined) best = { orientation, tile, placing };
  }
  if (best === undefined) throw new Error('a pattern with content needs a sheet');
  return ok(preferredGrid(pattern, content, source, tiles, best));
}

/** Turns to search, and those among them that lay a straight side along the paper. */
function sourceOf(content: Content): TurnSource & { readonly straight: readonly number[] } {
  const straight = straightTurns(content);
  const even = Array.from({ length: Math.round(HALF_TURN / TURN_STEP) }, (_, i) => i * TURN_STEP);
  // A quarter turn must be the very number that favourites name.
  even[even.length / 2] = Math.PI / 2;
  const turns = [...new Set([...even, ...straight])].sort((a, b) => a - b);
  return {
    turns,
    straight,
    reach: content.reach,
    at: remembered(turnerOf(content)),
    someAt: remembered(turnerOf(longestOf(content))),
  };
}

/** The longest lines stand for the outline; the many short ones are lettering, ticks and hatching. */
function longestOf(content: Content): Content {
  return { ...content, edges: longestFirst(content.edges).slice(0, LONGEST) };
}

function remembered<T>(compute: (turn: number) => T): (turn: number) => T {
  const known = new Map<number, T>();
  return (turn) => {
    const found = known.get(turn) ?? compute(turn);
    known.set(turn, found);
    return found;
  };
}

/** The most pleasing grid among those that need as few sheets as the best. */
function preferredGrid(
  pattern: Pattern,
  content: Content,
  source: ReturnType<typeof sourceOf>,
  tiles: ReadonlyMap<Orientation, Tile>,
  best: Candidate,
): SheetGrid {
  const fewest = best.placing.cells.length;
  const found = source.turns[best.placing.turn]!;
  const classes: readonly (readonly number[])[] = [
    [0, Math.PI / 2],
    source.straight,
    [found, ...source.turns.filter((_, i) => i % COARSE === 0)],
  ];
  let chosen: { grid: SheetGrid; price: number; offCentre: number } | undefined;
  for (const [rank, turns] of classes.entries()) {
    const extraPrice = rank * SLANT_PRICE;
    // No turn of a later class can be worth more than it costs.
    if (chosen !== undefined && chosen.price <= extraPrice) break;
    for (const turn of turns) {
      for (const [orientation, tile] of tiles) {
        const extra = turn === found && orientation === best.orientation ? [best.placing.shiftY] : [];
        const keepOff = keepOffAt(pattern, content, turn);
        const option = preferredShift(source, turn, keepOff, tile, {
          most: fewest,
          extra,
          tries: Math.min(SHIFTS_TRIED[rank]!, Math.ceil(SHEETS_TRIED / fewest)),
        });
        if (option === undefined) continue;
        const price = option.disturbance + extraPrice;
        if (
          chosen === undefined ||
          isBetter({ ...option, disturbance: price }, { ...chosen, disturbance: chosen.price })
        ) {
          chosen = {
            grid: gridOf(orientation, turn, tile, option, content),
            price,
            offCentre: option.offCentre,
          };
        }
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
