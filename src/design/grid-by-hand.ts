import type { Vec } from '../geometry/index.ts';
import type { SheetPlan } from '../print/index.ts';
import type { Design } from './design-schema.ts';
import { keepGrid, pinGrid, unpinGrid, wordsForPaper } from './pin-grid.ts';

/** How the sheets are moved under a pattern. */
export interface GridChange {
  /** rad anticlockwise, added to the pattern's turn about `about`. */
  readonly turn?: number;
  /** Place in the plan's frame, mm, that stays where it is while the pattern turns; the frame's corner when absent. */
  readonly about?: Vec;
  /** mm, added to the pattern's shift. */
  readonly shift?: Vec;
  readonly orientation?: 'portrait' | 'landscape';
}

/**
 * The design with the pattern of a plan turned and shifted on its sheets by hand. Pinned as a searched grid is, to the last
 * bit as a design keeps it.
 */
export function moveGrid(design: Design, plan: SheetPlan, change: GridChange): Design {
  const { grid, paper, pattern } = plan;
  const turn = change.turn ?? 0;
  const { x, y } = change.about ?? { x: 0, y: 0 };
  const move = change.shift ?? { x: 0, y: 0 };
  const cos = Math.cos(turn);
  const sin = Math.sin(turn);
  const from = { x: grid.shift.x - x, y: grid.shift.y - y };
  const moved = {
    orientation: change.orientation ?? grid.orientation,
    turn: wholeTurn(grid.turn + turn),
    shift: {
      x: x + cos * from.x - sin * from.y + move.x,
      y: y + sin * from.x + cos * from.y + move.y,
    },
  };
  const grids = keepGrid(design.grids[pattern] ?? [], pinGrid(moved, paper));
  return { ...design, grids: { ...design.grids, [pattern]: grids } };
}

/** The design with the grid of a plan's pattern and paper left to the search again. */
export function searchGrid(design: Design, { pattern, paper }: SheetPlan): Design {
  const pinned = wordsForPaper(paper);
  const kept = (design.grids[pattern] ?? []).filter((grid) => grid.paper !== pinned);
  const { [pattern]: _, ...others } = design.grids;
  return { ...design, grids: kept.length === 0 ? others : { ...others, [pattern]: kept } };
}

/** Is the pattern of a plan pinned to its grid in the design? */
export function isGridPinned(design: Design, { pattern, paper }: SheetPlan): boolean {
  return unpinGrid(design.grids[pattern] ?? [], paper) !== undefined;
}

function wholeTurn(turn: number): number {
  return turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI));
}
