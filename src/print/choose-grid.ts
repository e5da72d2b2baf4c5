import { fail, ok, type Result } from '../core/index.ts';
import type { Pattern } from '../drawing/index.ts';
import type { Paper, SheetGrid } from './api.ts';
import { type Content, contentOf } from './grid/content.ts';
import { fewestSheets, type Placing, type TurnSource } from './grid/fewest.ts';
import type { Tile } from './grid/forced.ts';
import { type TurnedContent, turnContent } from './grid/pieces.ts';
import { isBetter, isUndisturbed, type Preference, preferredShift } from './grid/prefer.ts';
import { keepOffAt } from './grid/score.ts';
import { straightTurns } from './grid/straight-turns.ts';
import { layOutPage, stepOf } from './page-layout.ts';

/** Turns of the pattern that are searched: every half degree. A half turn needs the same sheets again. */
const TURN_STEP = Math.PI / 360;
const HALF_TURN = Math.PI;
/** Turns looked at for seams that disturb nothing, after the upright and the straight ones: every five degrees. */
const COARSE = 10;

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
    tiles.set(orientation, { stepX: step.x, stepY: step.y, half: paper.overlap / 2 });
  }
  if (content.edges.length === 0) {
    return ok({ orientation: orientations[0]!, turn: 0, shift: { x: 0, y: 0 } });
  }
  const favourites = [0, Math.PI / 2, ...straightTurns(content)].map((turn) => source.turns.indexOf(turn));
  for (const [orientation, tile] of tiles) {
    const below = best === undefined ? Infinity : best.placing.cells.length;
    const placing = fewestSheets(source, tile, below, favourites);
    if (placing !== undefined) best = { orientation, tile, placing };
  }
  if (best === undefined) throw new Error('a pattern with content needs a sheet');
  return ok(preferredGrid(pattern, content, source, tiles, best));
}

function sourceOf(content: Content): TurnSource {
  const known = new Map<number, TurnedContent>();
  const even = Array.from({ length: Math.round(HALF_TURN / TURN_STEP) }, (_, i) => i * TURN_STEP);
  // A quarter turn must be the very number that favourites name.
  even[even.length / 2] = Math.PI / 2;
  const turns = [...new Set([...even, ...straightTurns(content)])].sort((a, b) => a - b);
  return {
    turns,
    reach: content.reach,
    at: (turn) => {
      const found = known.get(turn) ?? turnContent(content, turn);
      known.set(turn, found);
      return found;
    },
  };
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
    [0, Math.PI / 2],
    straightTurns(content),
    [found, ...source.turns.filter((_, i) => i % COARSE === 0)],
  ];
  let chosen: { grid: SheetGrid; option: Preference } | undefined;
  for (const turns of classes) {
    for (const turn of turns) {
      for (const [orientation, tile] of tiles) {
        const extra = turn === found && orientation === best.orientation ? [best.placing.shiftY] : [];
        const keepOff = keepOffAt(pattern, content, turn);
        const option = preferredShift(source.at(turn), keepOff, tile, fewest, extra);
        if (option === undefined) continue;
        if (chosen === undefined || isBetter(option, chosen.option)) {
          chosen = { grid: gridOf(orientation, turn, tile, option, content), option };
        }
      }
    }
    if (chosen !== undefined && isUndisturbed(chosen.option)) break;
  }
  if (chosen !== undefined) return chosen.grid;
  const { placing, orientation, tile } = best;
  const shift = { x: placing.shiftX, y: placing.shiftY };
  return gridOf(orientation, found, tile, { shift, cells: placing.cells }, content);
}

/** The grid with its own corner at the upper left of the first row and the first place. */
function gridOf(
  orientation: Orientation,
  turn: number,
  tile: Tile,
  { shift, cells }: Pick<Preference, 'shift' | 'cells'>,
  { centre }: Content,
): SheetGrid {
  const left = shift.x + Math.min(...cells.map((cell) => cell.column)) * tile.stepX;
  const top = shift.y + (Math.max(...cells.map((cell) => cell.row)) + 1) * tile.stepY;
  const c = Math.cos(turn);
  const s = Math.sin(turn);
  return {
    orientation,
    turn,
    shift: { x: -(c * centre.x - s * centre.y) - left, y: -(s * centre.x + c * centre.y) - top },
  };
}
