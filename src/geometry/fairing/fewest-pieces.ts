/** A way to get from one state to another, and how far it strays, mm. */
export interface Piece<T> {
  readonly shape: T;
  readonly stray: number;
}

/** A state: which node, and which of its directions. */
export interface State {
  readonly node: number;
  readonly way: number;
}

/** A node that so many in a row could not be reached past is taken for out of reach. */
const GIVE_UP_AFTER = 6;

/**
 * The fewest pieces that lead from one of the starts to the last node, in one of the ways allowed there; of two with the same
 * number to the same state the one that strays less in its last piece. Every state is left once only. Undefined
 * when no chain of pieces leads there.
 */
export function fewestPieces<T>(
  nodes: number,
  ways: number,
  starts: readonly State[],
  isEnd: (state: State) => boolean,
  pieceBetween: (from: State, to: State) => Piece<T> | undefined,
): T[] | undefined {
  interface Reached {
    readonly state: State;
    readonly from: Reached | undefined;
    readonly piece: Piece<T> | undefined;
  }
  const done = new Set<number>();
  const keyOf = ({ node, way }: State): number => node * ways + way;
  let frontier: Reached[] = starts.map((state) => ({ state, from: undefined, piece: undefined }));
  for (const { state } of frontier) done.add(keyOf(state));
  while (frontier.length > 0) {
    const next = new Map<number, Reached>();
    for (const from of frontier) {
      let missed = 0;
      for (let node = from.state.node + 1; node < nodes && missed < GIVE_UP_AFTER; node++) {
        let isReached = false;
        for (let way = 0; way < ways; way++) {
          const state = { node, way };
          const key = keyOf(state);
          if (done.has(key)) {
            isReached = true;
            continue;
          }
          const piece = pieceBetween(from.state, state);
          if (piece === undefined) continue;
          isReached = true;
          const known = next.get(key);
          if (known === undefined || piece.stray < known.piece!.stray) next.set(key, { state, from, piece });
        }
        missed = isReached ? 0 : missed + 1;
      }
    }
    frontier = [...next.values()];
    for (const { state } of frontier) done.add(keyOf(state));
    const ends = frontier.filter(({ state }) => state.node === nodes - 1 && isEnd(state));
    const best = ends.sort((a, b) => a.piece!.stray - b.piece!.stray)[0];
    if (best === undefined) continue;
    const shapes: T[] = [];
    for (let at: Reached | undefined = best; at?.piece !== undefined; at = at.from)
      shapes.push(at.piece.shape);
    return shapes.reverse();
  }
  return undefined;
}
