import './no-eval.ts';
import wasmUrl from 'manifold-3d/manifold.wasm?url';
import { loadSolids, type SolidKernel } from '../../base/index.ts';
import { type Design, openSession, type Wanted } from '../../design/index.ts';
import type { Answering } from './answers/answering.ts';
import { ANSWERS, FURTHER } from './answers/index.ts';
import { isEarly, isLast, viewsWanted } from './answers/wanted.ts';
import { DEEDS } from './deeds/index.ts';
import { known } from './known.ts';
import { nextTask } from './next-task.ts';
import type { AskedQuestion, FromWorker, ToWorker } from './protocol.ts';
import type { Puller } from './pull-design.ts';

/** Of the worker's own scope, what is used here. */
interface Scope {
  postMessage(message: FromWorker): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToWorker>) => void): void;
}
const scope = self as unknown as Scope;

type Asked = Extract<ToWorker, { kind: 'ask' }>;
type Answer = (from: Answering, options: unknown) => unknown;

/** ms without news before what may follow later (weights, standing) is begun. */
const QUIET = 400;
/** ms of work after which messages that wait are heard. */
const SPELL = 6;

let newest: Asked | undefined;
let solids: SolidKernel | undefined;
/** What each question was answered last: what is the very same is not sent again. */
const sent = new Map<string, unknown>();
let sentOf = '';
let rested = 0;
/** Fetched with the first pull. */
let puller: Puller | undefined;
const session = openSession({
  memo: known,
  pause: () => {
    if (performance.now() - rested < SPELL) return undefined;
    return nextTask().then(() => {
      rested = performance.now();
    });
  },
});

scope.addEventListener('message', ({ data }) => {
  if (data.kind === 'do') {
    void doOnce(data);
    return;
  }
  const idle = newest === undefined;
  if (data.id !== sentOf) sent.clear();
  sentOf = data.id;
  newest = data;
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
}

/** What one looks at first, then the sheets of paper, then, once it is quiet, weights and standing. Left where newer news comes. */
async function answer(asked: Asked): Promise<void> {
  const { turn, questions, pull } = asked;
  const design = pull === undefined ? asked.design : await pulled(asked.design, pull, turn);
  const views = viewsWanted(questions);
  const early = await answerFrom(asked, design, questions.filter(isEarly), {
    views,
    patterns: [],
    standing: false,
  });
  if (!early) return;
  const soon = questions.filter((each) => !isLast(each));
  const late = await answerFrom(asked, design, soon, { views, standing: false });
  if (!late) return;
  scope.postMessage({ kind: 'settled', turn, whole: false });
  if (pull?.end === false || !(await quiet(asked))) return;
  solids ??= await loadSolids(wasmUrl);
  if (await answerFrom(asked, design, questions, { views })) {
    scope.postMessage({ kind: 'settled', turn, whole: true });
  }
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
  design: Design,
  questions: readonly AskedQuestion[],
  wanted: Wanted,
): Promise<boolean> {
  const outcome = await session.compute(design, { wanted, ...(solids === undefined ? {} : { solids }) });
  if (outcome.kind === 'abandoned' || newest !== asked) return false;
  const { result } = outcome;
  const problems = result.ok ? [] : result.problems;
  const from: Answering = {
    design,
    computed: result.ok ? result.value : undefined,
    problems,
    ...(solids && { solids }),
  };
  scope.postMessage({ kind: 'computed', turn: asked.turn, problems });
  for (const { key, question, options } of questions) {
    const found = (await answerTo(question))(from, options);
    if (found === undefined || sent.get(key) === found) continue;
    sent.set(key, found);
    scope.postMessage({ kind: 'answer', turn: asked.turn, key, answer: found });
    if (performance.now() - rested > SPELL) {
      await nextTask();
      rested = performance.now();
      if (newest !== asked) return false;
    }
  }
  return true;
}

async function answerTo(question: AskedQuestion['question']): Promise<Answer> {
  const own = question in ANSWERS ? ANSWERS[question as keyof typeof ANSWERS] : undefined;
  return (own ?? (await FURTHER[question as keyof typeof FURTHER]())) as Answer;
}

async function quiet(asked: Asked): Promise<boolean> {
  await new Promise((done) => setTimeout(done, QUIET));
  return newest === asked;
}

function messageOf(cause: unknown): string {
  return cause instanceof Error ? `${cause.message}\n${cause.stack ?? ''}` : String(cause);
}
