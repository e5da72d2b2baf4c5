import './no-eval.ts';
import { type Design, lookAtDesign, openSession, type Wanted } from '../../design/index.ts';
import { applyEdits } from '../state/history/edit.ts';
import { answerTo } from './answers/answer-to.ts';
import type { Answering } from './answers/answering.ts';
import { type Pass, passOf, viewsToCome, viewsWanted } from './answers/passes.ts';
import { DEEDS } from './deeds/index.ts';
import { createForeseer } from './foreseer.ts';
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

/** ms, longer than a frame, for which the next place of a pull is waited for before anything that hangs on joints is begun. */
const NEXT_PULL = 24;

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
/** Ends the wait for news. */
let wake = (): void => undefined;
const newsOr = (ms: number): Promise<void> =>
  new Promise((done) => {
    wake = done;
    setTimeout(done, ms);
  });
const session = openSession({ memo: known, pause });

const rehearsal = createRehearsal(nextTask);
const foreseer = createForeseer(pause);
let still: ReturnType<typeof setTimeout> | undefined;

scope.addEventListener('message', ({ data }) => {
  clearTimeout(still);
  rehearsal.stop();
  if (data.kind === 'do') {
    void doOnce(data);
    return;
  }
  const idle = newest === undefined;
  foreseer.stop();
  if (data.kind === 'foresee') {
    if (last?.turn !== data.turn) return;
    foreseer.expect({ number: data.number, design: applyEdits(last.design, data.edits) });
    if (idle) void foresee();
    return;
  }
  foreseer.drop();
  if (data.id !== sentOf) sent.clear();
  sentOf = data.id;
  for (const [key, answer] of foreseer.answersOf(data.came)) sent.set(key, answer);
  newest = data;
  last = data;
  wake();
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
  if (foreseer.isExpecting()) await foresee();
  else if (last !== undefined && last.pull === undefined) rehearseSoon(last.design);
}

function rehearseSoon(design: Design): void {
  clearTimeout(still);
  still = setTimeout(() => void rehearsal.go(design, last?.questions ?? []), STILL);
}

/** Computes what is to come and tells its answers, so that they can be shown the moment it comes. */
async function foresee(): Promise<void> {
  const found = await foreseer.go(last?.questions ?? [], known);
  if (found === undefined) return;
  const fresh = [...found.answers].filter(([key, answer]) => sent.get(key) !== answer);
  scope.postMessage({
    kind: 'foreseen',
    number: found.number,
    answers: fresh.map(([key, answer]) => ({ key, answer })),
  });
  rehearseSoon(found.design);
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
  if (pull?.end === false) await newsOr(NEXT_PULL);
  if (newest !== asked) return;
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
