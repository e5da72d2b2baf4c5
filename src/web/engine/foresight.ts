import { type Design, sameValue } from '../../design/index.ts';
import { applyEdits, type Edit } from '../state/history/edit.ts';
import { hearEngine, send } from './port.ts';
import type { ToldAnswer } from './protocol.ts';

/** What a maker seems to be about to change, and what will be told then, once it is known. */
interface Foreseen {
  readonly number: number;
  readonly turn: number;
  readonly design: Design;
  readonly answers?: readonly ToldAnswer[];
}

let newest: Foreseen | undefined;
let count = 0;

/** Has a change of the design of a turn computed that is not made yet. */
export function foreseeChange(turn: number, design: Design, edits: readonly Edit[]): void {
  count += 1;
  newest = { number: count, turn, design: applyEdits(design, edits) };
  send({ kind: 'foresee', number: count, turn, edits });
}

/** What was foreseen, where it is this very design that has come in the turn after, and all about it is known. */
export function cameAsForeseen(turn: number, design: Design): Required<Foreseen> | undefined {
  const now = newest;
  newest = undefined;
  if (now?.answers === undefined || now.turn + 1 !== turn || !sameValue(now.design, design)) return undefined;
  return { ...now, answers: now.answers };
}

hearEngine((news) => {
  if (news.kind === 'foreseen' && news.number === newest?.number)
    newest = { ...newest, answers: news.answers };
});
