import { batch, effect, type Signal, signal, untracked } from '@preact/signals';
import type { Problem } from '../../core/index.ts';
import { change, currentId, design } from '../state/current.ts';
import type { Edit } from '../state/history/edit.ts';
import { pull, pulledTo } from '../state/pulling.ts';
import { words } from '../words/en.ts';
import { isOfRest } from './answers/passes.ts';
import { cameAsForeseen, foreseeChange } from './foresight.ts';
import { patientDo } from './patient/patient-do.ts';
import { hearEngine, send } from './port.ts';
import type { AskedQuestion, FromWorker, OptionsOf, Progress, Pull, PulledTo, Question } from './protocol.ts';

/** Problems of the design in hand: while there are any, all but its views are those of the last design without. */
export const problems = signal<readonly Problem[]>([]);
/** How far the engine is with the design in hand. */
export const progress = signal<Progress>('reckoning');
/** A fault of the program itself, to be reported. */
export const fault = signal<string | undefined>(undefined);

/** What is asked, by key; how many places of the page want it; and the answers. */
const wanted = signal<ReadonlyMap<string, AskedQuestion>>(new Map());
const places = new Map<string, number>();
const answers = new Map<string, Signal<unknown>>();

let turn = 0;
let asking = false;
/** The first turn of the design in hand: answers of earlier turns are of another one. */
let firstTurn = 0;

effect(() => {
  if (currentId.value === undefined) return;
  firstTurn = turn + 1;
  for (const answer of answers.values()) answer.value = undefined;
});

// All changes of one moment make one message.
effect(() => {
  void pull.value;
  if (design.value === undefined || wanted.value.size === 0) return;
  turn += 1;
  if (asking) return;
  asking = true;
  queueMicrotask(ask);
});

function ask(): void {
  asking = false;
  const now = untracked(() => design.value);
  if (now === undefined) return;
  progress.value = 'reckoning';
  const questions = [...untracked(() => wanted.value).values()];
  const pulling = untracked(() => pull.value);
  // Laid aside and taken up again it counts as another one: the page has let go of its answers.
  const id = `${untracked(() => currentId.value)} ${firstTurn}`;
  const foreseen = pulling === undefined ? cameAsForeseen(turn, now) : undefined;
  send({
    kind: 'ask',
    turn,
    id,
    design: now,
    questions,
    ...(pulling === undefined ? {} : { pull: pulling }),
    ...(foreseen === undefined ? {} : { came: foreseen.number }),
  });
  if (foreseen !== undefined)
    hearFound({ kind: 'found', turn, answers: foreseen.answers, problems: [], far: 'settled' });
}

/** Has a change computed that is not made yet, though it seems that it will be: once it is, all that follows is known. */
export function foresee(edits: readonly Edit[]): void {
  const now = design.peek();
  if (now !== undefined) foreseeChange(turn, now, edits);
}

hearEngine((news) => {
  switch (news.kind) {
    case 'found':
      hearFound(news);
      return;
    case 'pulled':
      if (JSON.stringify(news.pull) === JSON.stringify(pull.value)) hearPulled(news.pull, news.to);
      else if (pull.value?.end === false && !news.pull.end) pulledTo.value = news.to;
      return;
    case 'fault':
      if (news.id === undefined) fault.value = news.message;
  }
});

function hearFound(found: Extract<FromWorker, { kind: 'found' }>): void {
  if (found.turn < firstTurn) return;
  batch(() => {
    for (const { key, answer } of found.answers) answerOf(key).value = answer;
    const now = found.problems ?? problems.peek();
    if (now.length > 0 || problems.peek().length > 0) problems.value = now;
    // What came as it was foreseen is all there before it is answered.
    if (found.turn === turn && progress.peek() !== 'settled') progress.value = found.far;
  });
  if (found.turn === turn && found.far === 'settled' && pull.peek()?.end !== false) restSoon();
}

/** ms without news before what may follow later (weights, standing) is begun. */
const QUIET = 400;
let quiet: ReturnType<typeof setTimeout> | undefined;
/** One at a time: of what changes meanwhile only the newest is worth the work. */
let resting: Promise<void> = Promise.resolve();

function restSoon(): void {
  clearTimeout(quiet);
  const own = turn;
  quiet = setTimeout(() => {
    resting = resting.then(() => (turn === own ? askRest(own) : undefined));
  }, QUIET);
}

/** What hangs on weights and standing is reckoned beside the engine, which goes on answering. */
async function askRest(own: number): Promise<void> {
  const now = design.peek();
  if (now === undefined) return;
  const questions = [...wanted.peek().values()].filter(isOfRest);
  try {
    const answers = await patientDo('rest', { design: now, questions });
    if (turn !== own) return;
    batch(() => {
      for (const { key, answer } of answers) answerOf(key).value = answer;
      progress.value = 'whole';
    });
  } catch (cause) {
    fault.value = String(cause);
  }
}

/** While it is pulled the figures are only shown; let go, they are set, in one step to take back. */
function hearPulled({ handle, end }: Pull, to: PulledTo | undefined): void {
  pulledTo.value = to;
  if (!end) return;
  batch(() => {
    pull.value = undefined;
    pulledTo.value = undefined;
    const before = design.peek()?.parameters ?? {};
    const edits = Object.entries(to?.parameters ?? {}).flatMap(([name, typed]) =>
      before[name] === typed ? [] : [{ path: ['parameters', name], to: typed }],
    );
    if (edits.length > 0) change(words.pulled(handle.replaceAll('_', ' ')), edits);
  });
}

export const keyOf = <Q extends Question>(question: Q, options: OptionsOf<Q>): string =>
  options === undefined ? question : `${question} ${JSON.stringify(options)}`;

/** Keeps a question asked until the function that it gives is called. */
export function want<Q extends Question>(question: Q, options: OptionsOf<Q>): () => void {
  const key = keyOf(question, options);
  const count = (by: number): void => {
    const before = places.get(key) ?? 0;
    places.set(key, before + by);
    if (before > 0 && before + by > 0) return;
    const next = new Map(wanted.peek());
    if (by > 0) next.set(key, { key, question, options });
    else next.delete(key);
    wanted.value = next;
  };
  count(1);
  return () => count(-1);
}

/** The last answer to a question of the design in hand, as it comes. */
export function answerOf(key: string): Signal<unknown> {
  const known = answers.get(key) ?? signal(undefined);
  answers.set(key, known);
  return known;
}
