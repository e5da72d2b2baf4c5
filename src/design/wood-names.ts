import type { TypedWood } from './design-schema.ts';

/** The wood with a board under another name, wherever it is named: placements, bookmatches, leaves laid by hand, patches. */
export function renameBoard(wood: TypedWood, from: string, to: string): TypedWood {
  const renamed = (name: string): string => (name === from ? to : name);
  return withBoards(wood, (boards) => boards.map((board) => ({ ...board, name: renamed(board.name) })))({
    placement: (each) => [{ ...each, board: renamed(each.board) }],
    names: (names) => names.map(renamed),
    named: (name) => renamed(name),
  });
}

/** The wood without a board: what lay on it has no place, and no match or patch names it any more. */
export function removeBoard(wood: TypedWood, name: string): TypedWood {
  return withBoards(wood, (boards) => boards.filter((board) => board.name !== name))({
    placement: (each) => (each.board === name ? [] : [each]),
    names: (names) => names.filter((each) => each !== name),
    named: (each) => (each === name ? undefined : each),
  });
}

type Boards = NonNullable<TypedWood['boards']>;
type Placement = NonNullable<TypedWood['placements']>[number];

interface Change {
  readonly placement: (each: Placement) => readonly Placement[];
  readonly names: (names: readonly string[]) => readonly string[];
  readonly named: (name: string) => string | undefined;
}

const withBoards =
  (wood: TypedWood, boards: (before: Boards) => Boards) =>
  ({ placement, names, named }: Change): TypedWood => ({
    ...wood,
    ...(wood.boards === undefined ? {} : { boards: boards(wood.boards) }),
    ...(wood.placements === undefined ? {} : { placements: wood.placements.flatMap(placement) }),
    ...(wood.bookmatch === undefined
      ? {}
      : {
          bookmatch: wood.bookmatch.map(({ boards: own, leaves, ...match }) => {
            const left = own === undefined ? [] : names(own);
            return {
              ...match,
              ...(left.length === 0 ? {} : { boards: left }),
              ...(leaves === undefined ? {} : { leaves: leaves.map((leaf) => withBoard(leaf, named)) }),
            };
          }),
        }),
    ...(wood.patches === undefined ? {} : { patches: wood.patches.map((patch) => withBoard(patch, named)) }),
  });

function withBoard<T extends { readonly board?: string | undefined }>(
  { board, ...rest }: T,
  named: Change['named'],
): T {
  const name = board === undefined ? undefined : named(board);
  return (name === undefined ? rest : { ...rest, board: name }) as T;
}
