import type { Finding } from '../../core/index.ts';
import type { ResawStack } from '../resaw/api.ts';
import type { LeafMap, LeafPlace } from './api.ts';
import { stop } from './words.ts';

/** Leaves used twice or that no board gives, and faces that want a leaf or have two. */
export function leavesCounted({ match, pieces, places }: LeafMap, { plan }: ResawStack): readonly Finding[] {
  const nameOf = (id: string): string => pieces.find((each) => each.id === id)?.name ?? id;
  const sayAll = (all: readonly LeafPlace[]): string =>
    all.map(({ piece, face }) => `the ${face} of ${nameOf(piece)}`).join(' and ');
  const findings: Finding[] = [];
  const leaves = new Map<string, LeafPlace[]>();
  for (const place of places) {
    if (place.board === undefined) continue;
    const key = `${place.board}\0${place.leaf}`;
    leaves.set(key, [...(leaves.get(key) ?? []), place]);
  }
  for (const same of leaves.values()) {
    const [{ board, leaf }] = same as [LeafPlace];
    if (same.length > 1)
      findings.push(
        stop(
          'wood.leaf-twice',
          `${match.name}: leaf ${leaf} of board ${board} is to go on ${sayAll(same)}.`,
          'Give each face a leaf of its own.',
        ),
      );
    if (leaf > plan.leaves)
      findings.push(
        stop(
          'wood.no-such-leaf',
          `${match.name}: ${sayAll(same)} is to carry leaf ${leaf} of board ${board}, which gives ${plan.leaves}.`,
          'Take another leaf, or resaw more leaves from the board.',
        ),
      );
  }
  const without = places.filter(({ board }) => board === undefined);
  const bare = pieces.flatMap((piece) =>
    match.parts
      .filter(({ part }) => part === piece.part)
      .flatMap(({ faces }) => faces.map((face) => ({ piece: piece.id, face })))
      .filter(({ face }) => !places.some((each) => each.piece === piece.id && each.face === face)),
  );
  const missing = [...without, ...bare] as readonly LeafPlace[];
  if (missing.length > 0)
    findings.push(
      stop(
        'wood.too-few-leaves',
        `${match.name}: ${missing.length === 1 ? 'a leaf is' : `${missing.length} leaves are`} missing, for ${sayAll(missing)}.`,
        `Each board gives ${plan.leaves}${match.arrangement === 'book' ? ', and the two leaves of a frame come from one board' : ''}: name more boards, or resaw more leaves.`,
      ),
    );
  const twice = places.filter(
    (a, at) => places.findIndex((b) => b.piece === a.piece && b.face === a.face) !== at,
  );
  if (twice.length > 0)
    findings.push(
      stop(
        'wood.face-twice',
        `${match.name}: more than one leaf is to go on ${sayAll(twice)}.`,
        'Leave one.',
      ),
    );
  return findings;
}
