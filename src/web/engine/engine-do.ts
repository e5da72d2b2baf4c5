import { hearEngine, send } from './port.ts';
import type { Deed, InputOf, OutcomeOf } from './protocol.ts';

const waiting = new Map<
  number,
  { readonly done: (outcome: never) => void; readonly fail: (cause: Error) => void }
>();
let deeds = 0;

/** Has something done in the worker once. Rejects on a fault of the program; what is wrong with the input is part of the outcome. */
export function engineDo<D extends Deed>(deed: D, input: InputOf<D>): Promise<OutcomeOf<D>> {
  deeds += 1;
  const id = deeds;
  send({ kind: 'do', id, deed, input });
  return new Promise((done, fail) => waiting.set(id, { done, fail }));
}

hearEngine((news) => {
  if (news.kind !== 'done' && news.kind !== 'fault') return;
  if (news.id === undefined) return;
  const asked = waiting.get(news.id);
  waiting.delete(news.id);
  if (news.kind === 'done') asked?.done(news.outcome as never);
  else asked?.fail(new Error(news.message));
});
