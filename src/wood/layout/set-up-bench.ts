import type { Board, LayRules, Lying, ToLay } from '../boards/api.ts';
import type { LayTask } from './api.ts';
import { type Ground, groundOf, standOn } from './ground.ts';
import type { Bench } from './lay-in-order.ts';
import { type Shape, shapeOf } from './shape.ts';
import { waysToLie } from './ways.ts';

/** Shapes of everything in each of its ways, and boards with what was laid by hand. What is alike shares its shapes. */
export function setUpBench({ boards, toLay, pinned, rules }: LayTask): Bench {
  let key = 0;
  const nextKey = () => key++;
  const byHand = new Set(pinned.map(({ id }) => id));
  const free = toLay.filter(({ id }) => !byHand.has(id));
  const grounds = boards.map((board) => groundOf(board, rules, nextKey));
  const shapesFor = shapeMaker(rules, nextKey);
  for (const lying of pinned) standByHand(grounds, toLay, lying, rules, nextKey);
  return {
    toLay: free,
    boards,
    grounds,
    shapes: free.map((each) =>
      boards.map((board) => (each.boards.includes(board.name) ? shapesFor(each, board) : [])),
    ),
    bars: new Map(),
  };
}

function standByHand(
  grounds: readonly Ground[],
  toLay: readonly ToLay[],
  lying: Lying,
  { between }: LayRules,
  nextKey: () => number,
): void {
  const ground = grounds.find(({ board }) => board.name === lying.board);
  const what = toLay.find(({ id }) => id === lying.id);
  // What names no board or nothing to lay is for the check to say.
  if (ground === undefined || what === undefined) return;
  standOn(ground, shapeOf(what, lying, between, nextKey), lying.at.x, lying.at.y);
}

function shapeMaker(
  rules: LayRules,
  nextKey: () => number,
): (toLay: ToLay, board: Board) => readonly Shape[] {
  const known: { readonly toLay: ToLay; readonly board: Board; readonly shapes: readonly Shape[] }[] = [];
  return (toLay, board) => {
    const found = known.find(
      (each) =>
        areAlike(each.toLay, toLay) && each.board.kind === board.kind && each.board.grain === board.grain,
    );
    if (found !== undefined) return found.shapes;
    const shapes = waysToLie(toLay, board, rules).map((way) => shapeOf(toLay, way, rules.between, nextKey));
    known.push({ toLay, board, shapes });
    return shapes;
  };
}

/** Would it make no difference to exchange the two? */
export function areAlike(a: ToLay, b: ToLay): boolean {
  return (
    a.region === b.region &&
    a.blank === b.blank &&
    a.grain === b.grain &&
    a.face === b.face &&
    a.boards.length === b.boards.length &&
    a.boards.every((name, i) => name === b.boards[i])
  );
}
