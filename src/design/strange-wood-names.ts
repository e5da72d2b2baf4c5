import type { BuiltBase } from '../base/index.ts';
import { nearestName, type Problem } from '../core/index.ts';
import type { TypedWood } from './design-schema.ts';

/** Names in the section that nothing is called by. */
export function strangeNames({ resaw = [], bookmatch = [], boards = [] }: TypedWood): readonly Problem[] {
  const plans = resaw.map(({ name }) => name);
  const named = boards.map(({ name }) => name);
  return bookmatch.flatMap((match, at) => [
    ...strange(match.resaw, plans, `wood.bookmatch.${at}.resaw`, 'a resaw plan'),
    ...(match.boards ?? []).flatMap((board, k) =>
      strange(board, named, `wood.bookmatch.${at}.boards.${k}`, 'a board of the design'),
    ),
  ]);
}

/** Parts and pieces that the base does not have. */
export function strangersIn({ bookmatch = [] }: TypedWood, { made }: BuiltBase): readonly Problem[] {
  const names = made.map(({ name }) => name);
  return bookmatch.flatMap(({ parts, boards = [], leaves = [] }, at) => {
    const path = `wood.bookmatch.${at}`;
    const members = made
      .filter(({ name }) => parts.some(({ part }) => part === name))
      .flatMap((each) => each.members);
    const pieces = members.flatMap(({ part, mark }) => (mark === '' ? [part] : [mark, part]));
    return [
      ...parts.flatMap(({ part }, k) =>
        strange(part, names, `${path}.parts.${k}.part`, 'a part as it is made'),
      ),
      ...leaves.flatMap(({ piece, face, board }, k) => {
        if (board !== undefined && boards.length > 0 && !boards.includes(board))
          return strange(board, boards, `${path}.leaves.${k}.board`, 'a board of the match');
        const stranger = strange(piece, pieces, `${path}.leaves.${k}.piece`, 'a piece of its parts');
        if (stranger.length > 0) return stranger;
        const id = members.find(({ part, mark }) => part === piece || mark === piece)!.part;
        const part = made.find((each) => each.members.some((member) => member.part === id))!.name;
        const faces = parts.find((each) => each.part === part)!.faces;
        return strange(face, faces, `${path}.leaves.${k}.face`, 'a face that carries a leaf');
      }),
    ];
  });
}

function strange(found: string, known: readonly string[], path: string, what: string): readonly Problem[] {
  if (known.includes(found)) return [];
  const near = nearestName(found, known);
  const expected =
    near !== undefined
      ? `"${near}"`
      : known.length === 0
        ? `${what}: there is none`
        : `one of: ${known.join(', ')}`;
  const message = `${path}: found "${found}", expected ${expected}.`;
  return [{ code: 'design.unknown-name', message, path, found, expected }];
}
