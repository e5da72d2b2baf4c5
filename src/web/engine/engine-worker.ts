import './no-eval.ts';
import { type Design, lookAtDesign, openSession, type Wanted } from '../../design/index.ts';
import { applyEdits } from '../state/history/edit.ts';
import { createAhead } from './ahead.ts';
import { answerTo } from './answers/answer-to.ts';
import type { Answering } from './answers/answering.ts';
import { type Pass, passOf, viewsToCome, viewsWanted } from './answers/passes.ts';
import { DEEDS } from './deeds/index.ts';
import { known } from './known.ts';
import { nextTask } from './next-task.ts';
import type { AskedQuestion, FromWorker, Progress, ToldAnswer, ToWorker } from './protocol.ts';
import type { Puller } from './pull-design.ts';
import { createRehearsal } from './rehearsal.ts';

/** Of the worker's own scope, what is used here. */
interface Scope {
  postMessage(message: FromWorker): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToWorker>) => void): void;
}
const scope = self as unknown as Scope;

type Asked = Extract<ToWorker, { kind: 'ask' }>;
type Found = Extract<FromWorker, { kind: 'found' }>;

/** ms without news after which there is time to rehearse. */
const STILL = 1500;
/** ms of work after which messages that wait are heard. */
const SPELL = 6;

/** What is to be answered, and what was asked last. */
let newest: Asked | undefined;
let last: Asked | undefined;
/** What each question was answered last: what is the very same is not sent again. */
const sent = new Map<string, unknown>();
let sentOf = '';
let rested = 0;
/** Fetched with the first pull. */
let puller: Puller | undefined;
const pause = (): Promise<void> | undefined => {
  if (performance.now() - rested < SPELL) return undefined;
  return nextTask().then(() => {
    rested = performance.now();
  });
};
const session = openSession({ memo: known, pause });

const rehearsal = createRehearsal(nextTask);
const foresight = createAhead(pause);
/** What is to come, as far as it can be told; and the last of it that was gone through, with its answers. */
let coming: { readonly number: number; readonly design: Design } | undefined;
let foreseen: { readonly number: number; readonly answers: ReadonlyMap<string, unknown> } | undefined;
let still: ReturnType<typeof setTimeout> | undefined;

scope.addEventListener('message', ({ data }) => {
  clearTimeout(still);
  rehearsal.stop();
  if (data.kind === 'do') {
    void doOnce(data);
    return;
  }
  const idle = newest === undefined;
  foresight.stop();
  if (data.kind === 'foresee') {
    if (last?.turn !== data.turn) return;
    coming = { number: data.number, design: applyEdits(last.design, data.edits) };
    if (idle) void foresee();
    return;
  }
  coming = undefined;
  if (data.id !== sentOf) sent.clear();
  sentOf = data.id;
  if (data.came !== undefined && data.came === foreseen?.number) {
    for (const [key, answer] of foreseen.answers) sent.set(key, answer);
  }
  newest = data;
  last = data;
  if (idle) void answerAll();
  else session.abandon();
});

async function doOnce({ id, deed, input }: Extract<ToWorker, { kind: 'do' }>): Promise<void> {
  try {
    const run = (await DEEDS[deed]()) as (input: unknown) => unknown;
    scope.postMessage({ kind: 'done', id, outcome: await run(input) });
  } catch (cause) {
    scope.postMessage({ kind: 'fault', id, message: messageOf(cause) });
  }
}

/** Answers the newest state of things until there is no newer one. */
async function answerAll(): Promise<void> {
  for (let asked = newest; asked !== undefined; asked = newest) {
    try {
      await answer(asked);
    } catch (cause) {
      scope.postMessage({ kind: 'fault', message: messageOf(cause) });
    }
    if (newest === asked) newest = undefined;
  }
  if (coming !== undefined) await foresee();
  else if (last !== undefined && last.pull === undefined) rehearseSoon(last.design);
}

function rehearseSoon(design: Design): void {
  clearTimeout(still);
  still = setTimeout(() => void rehearsal.go(design, last?.questions ?? []), STILL);
}

/** Computes what is to come and tells its answers, so that they can be shown the moment it comes. */
async function foresee(): Promise<void> {
  const now = coming;
  coming = undefined;
  if (now === undefined) return;
  const { number, design } = now;
  try {
    const answers = await foresight.goThrough(design, last?.questions ?? [], known);
    if (answers === undefined) return;
    foreseen = { number, answers };
    const fresh = [...answers].filter(([key, answer]) => sent.get(key) !== answer);
    scope.postMessage({
      kind: 'foreseen',
      number,
      answers: fresh.map(([key, answer]) => ({ key, answer })),
    });
    rehearseSoon(design);
  } catch {
    // Should it be asked, the fault will show again, and is told then.
  }
}

/** Answers pass by pass (see `passOf`); left where newer news comes. */
async function answer(asked: Asked): Promise<void> {
  const { turn, questions, pull } = asked;
  const design = pull === undefined ? asked.design : await pulled(asked.design, pull, turn);
  const views = viewsWanted(questions);
  const seen = lookAtDesign(design, views, known);
  const looked = seen.ok ? seen.value : undefined;
  const ofPass = (pass: Pass) => questions.filter((each) => passOf(each) === pass);
  await tell(asked, { design, looked, computed: undefined }, ofPass('seen'), { far: 'reckoning' });
  lookAtDesign(design, viewsToCome(questions), known);
  const checked = { patterns: [], standing: false };
  if (!(await answerFrom(asked, { design, looked }, ofPass('checked'), checked, 'reckoning'))) return;
  await answerFrom(asked, { design, looked }, ofPass('laid'), { standing: false }, 'settled');
}

async function pulled(design: Design, pull: NonNullable<Asked['pull']>, turn: number): Promise<Design> {
  puller ??= (await import('./pull-design.ts')).createPuller();
  const led = puller.pull(design, pull);
  scope.postMessage({ kind: 'pulled', turn, pull, to: led?.to });
  return led?.design ?? design;
}

/** False when newer news came before all was answered. */
async function answerFrom(
  asked: Asked,
  { design, looked }: Pick<Answering, 'design' | 'looked'>,
  questions: readonly AskedQuestion[],
  wanted: Wanted,
  far: Progress,
): Promise<boolean> {
  const outcome = await session.compute(design, { wanted });
  if (outcome.kind === 'abandoned' || newest !== asked) return false;
  const { result } = outcome;
  const computed = result.ok ? result.value : undefined;
  const problems = result.ok ? [] : result.problems;
  await tell(asked, { design, looked, computed }, questions, { problems, far });
  return newest === asked;
}

/** Tells the page what is new of the answers to some questions, in one message. */
async function tell(
  { turn, id }: Asked,
  from: Answering,
  questions: readonly AskedQuestion[],
  how: Pick<Found, 'problems' | 'far'>,
): Promise<void> {
  const answers: ToldAnswer[] = [];
  for (const { key, question, options } of questions) {
    const answered = await answerTo(question);
    // Another design was taken in hand meanwhile: nothing of this one has been told to it.
    if (id !== sentOf) return;
    const found = answered(from, options);
    if (found === undefined || sent.get(key) === found) continue;
    sent.set(key, found);
    answers.push({ key, answer: found });
  }
  scope.postMessage({ kind: 'found', turn, answers, ...how });
}

function messageOf(cause: unknown): string {
  return cause instanceof Error ? `${cause.message}\n${cause.stack ?? ''}` : String(cause);
}
