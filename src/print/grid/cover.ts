/** A place in the grid: column from the left, row upwards, both whole numbers of any sign. */
export interface Cell {
  readonly column: number;
  readonly row: number;
}

/** Choices tried before the search gives up: keeps hostile content in bounded time. */
const MOST_TRIALS = 20_000;

/** What a search has cost so far, in spans, sheets and choices looked at. */
export interface Effort {
  spent: number;
}

/** Sorting the cells of a wish by what else they grant looks at every other wish. */
const WISH_COST = 4;

export interface FewestCells {
  /** Nothing when more than the greatest number allowed would be needed. */
  readonly cells: Cell[] | undefined;
  /** The search was not cut short: there is nothing smaller, or nothing at all. */
  readonly isCertain: boolean;
}

/**
 * The smallest set of cells that has every forced cell, at least one cell of every wish, and hangs together by seams
 * (cells that share a side), if it has no more than `most` cells. Pieces are joined two by two, the nearest first, which
 * is exact for two pieces.
 */
export function fewestCells(
  forced: readonly Cell[],
  wishes: readonly (readonly Cell[])[],
  most: number,
  effort: Effort = { spent: 0 },
): FewestCells {
  const open = wishes.filter((wish) => !wish.some((cell) => forced.some((known) => isSame(known, cell))));
  const state: Search = { best: undefined, most, trials: 0, effort };
  choose([...forced], open, state);
  return { cells: state.best, isCertain: state.trials <= MOST_TRIALS };
}

interface Search {
  best: Cell[] | undefined;
  most: number;
  trials: number;
  readonly effort: Effort;
}

function choose(chosen: readonly Cell[], open: readonly (readonly Cell[])[], state: Search): void {
  if (chosen.length > state.most) return;
  // The first descent is always finished, so that without a limit there is an answer.
  if (state.trials > MOST_TRIALS && (state.best !== undefined || Number.isFinite(state.most))) return;
  state.trials++;
  state.effort.spent += chosen.length + WISH_COST * open.length;
  const [wish, ...others] = open;
  if (wish === undefined) {
    const joined = joinUp(chosen, state.most);
    if (joined !== undefined && joined.length <= state.most) {
      state.best = joined;
      state.most = joined.length - 1;
    }
    return;
  }
  const granting = [...wish].sort((a, b) => granted(b, others) - granted(a, others));
  for (const cell of granting) {
    const left = others.filter((other) => !other.some((known) => isSame(known, cell)));
    choose([...chosen, cell], left, state);
  }
}

function granted(cell: Cell, wishes: readonly (readonly Cell[])[]): number {
  return wishes.filter((wish) => wish.some((known) => isSame(known, cell))).length;
}

/** The cells with as few more as join all of them by sides: the two nearest pieces first. */
function joinUp(cells: readonly Cell[], most: number): Cell[] | undefined {
  let pieces = piecesOf(cells);
  let all = [...cells];
  while (pieces.length > 1) {
    const between = shortestJoin(pieces);
    all = [...all, ...between];
    if (all.length > most) return undefined;
    pieces = piecesOf(all);
  }
  return all;
}

function piecesOf(cells: readonly Cell[]): Cell[][] {
  const left = new Map(cells.map((cell) => [keyOf(cell), cell]));
  const pieces: Cell[][] = [];
  for (const start of cells) {
    if (!left.delete(keyOf(start))) continue;
    const piece = [start];
    for (const cell of piece) {
      for (const beside of neighboursOf(cell)) {
        const known = left.get(keyOf(beside));
        if (known !== undefined && left.delete(keyOf(beside))) piece.push(known);
      }
    }
    pieces.push(piece);
  }
  return pieces;
}

function shortestJoin(pieces: readonly (readonly Cell[])[]): Cell[] {
  let best: { from: Cell; to: Cell; apart: number } | undefined;
  for (let i = 0; i < pieces.length; i++) {
    for (const from of pieces[i]!) {
      for (const to of pieces.slice(i + 1).flat()) {
        const apart = Math.abs(from.column - to.column) + Math.abs(from.row - to.row);
        if (best === undefined || apart < best.apart) best = { from, to, apart };
      }
    }
  }
  if (best === undefined) return [];
  const cells: Cell[] = [];
  let { column, row } = best.from;
  while (column !== best.to.column || row !== best.to.row) {
    if (column !== best.to.column) column += Math.sign(best.to.column - column);
    else row += Math.sign(best.to.row - row);
    if (column !== best.to.column || row !== best.to.row) cells.push({ column, row });
  }
  return cells;
}

export function neighboursOf({ column, row }: Cell): Cell[] {
  return [
    { column: column - 1, row },
    { column: column + 1, row },
    { column, row: row - 1 },
    { column, row: row + 1 },
  ];
}

/** Rows and columns lie well within this of 0: a pattern of more sheets is refused long before. */
const MOST_AWAY = 2 ** 20;

function keyOf({ column, row }: Cell): number {
  return (column + MOST_AWAY) * 2 * MOST_AWAY + row + MOST_AWAY;
}

export function isSame(a: Cell, b: Cell): boolean {
  return a.column === b.column && a.row === b.row;
}
