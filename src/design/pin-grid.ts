import { RAD_PER_DEGREE } from '../measure/index.ts';
import type { Paper, SheetGrid } from '../print/index.ts';
import type { PinnedGrid } from './design-schema.ts';

/** Decimals of a degree: 1e-9° moves a point 3 m away by less than 1e-7 mm. */
const DECIMALS = 9;

/** A grid as it is kept in a design. */
export function pinGrid(grid: SheetGrid, paper: Paper): PinnedGrid {
  return {
    paper: wordsForPaper(paper),
    orientation: grid.orientation,
    turn: Number((grid.turn / RAD_PER_DEGREE).toFixed(DECIMALS)),
    shift: { x: grid.shift.x, y: grid.shift.y },
  };
}

/** The grid kept in a design for this paper, unless it lies against the orientation now asked for. */
export function unpinGrid(pinned: readonly PinnedGrid[], paper: Paper): SheetGrid | undefined {
  const kept = pinned.find((grid) => grid.paper === wordsForPaper(paper));
  if (kept === undefined) return undefined;
  if (paper.orientation !== 'fewest' && paper.orientation !== kept.orientation) return undefined;
  return { orientation: kept.orientation, turn: kept.turn * RAD_PER_DEGREE, shift: kept.shift };
}

/** The grids with one more, in place of the one for the same paper. */
export function keepGrid(pinned: readonly PinnedGrid[], grid: PinnedGrid): readonly PinnedGrid[] {
  const others = pinned.filter(({ paper }) => paper !== grid.paper);
  return [...others, grid].sort((a, b) => compareText(a.paper, b.paper));
}

/** Order of texts by their characters' codes, alike on every machine. */
export function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}

/** All of a paper that decides where seams may fall. Its calibration does not: a corrected print fits the same grid. */
export function wordsForPaper({ size, margins, overlap }: Paper): string {
  const sides =
    size.kind === 'sheet'
      ? `${neat(size.short)} × ${neat(size.long)}`
      : `roll ${neat(size.width)}, up to ${neat(size.most)}`;
  const { top, right, bottom, left } = margins;
  return `${sides}; margins ${[top, right, bottom, left].map(neat).join(' ')}; overlap ${neat(overlap)}`;
}

function neat(mm: number): string {
  return String(Number(mm.toFixed(3)));
}
