import './no-eval.ts';
import wasmUrl from 'manifold-3d/manifold.wasm?url';
import { loadSolids, type SolidKernel } from '../../base/index.ts';
import { compute, type Memo } from '../../design/index.ts';
import type { Answering } from './answers/answering.ts';
import { ANSWERS } from './answers/index.ts';
import { DEEDS } from './deeds/index.ts';
import type { FromWorker, ToWorker } from './protocol.ts';

/** Of the worker's own scope, what is used here. */
interface Scope {
  postMessage(message: FromWorker): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToWorker>) => void): void;
}
const scope = self as unknown as Scope;

type Asked = Extract<ToWorker, { kind: 'ask' }>;
type Answer = (from: Answering, options: unknown) => unknown;

/** ms without news before what may follow later (weights, standing) is begun. */
const QUIET = 250;

const memo: Memo = new Map();
let newest: Asked | undefined;
let solids: SolidKernel | undefined;
/** What each question was answered last: what is the very same is not sent again. */
const sent = new Map<string, unknown>();
let sentOf = '';

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
});

async function doOnce({ id, deed, input }: Extract<ToWorker, { kind: 'do' }>): Promise<void> {
  try {
    const run = DEEDS[deed] as (input: unknown) => unknown;
    scope.postMessage({ kind: 'done', id, outcome: await run(input) });
  } catch (cause) {
    scope.postMessage({ kind: 'fault', id, message: messageOf(cause) });
  }
}

/** Answers the newest state of things until there is no newer one, then once more with all that may follow later. */
async function answerAll(): Promise<void> {
  for (let asked = newest; asked !== undefined; asked = newest) {
    try {
      const done = await answer(asked, solids);
      if (!done) continue;
      scope.postMessage({ kind: 'settled', turn: asked.turn, whole: solids !== undefined });
      if (solids === undefined && (await quiet(asked))) {
        solids = await loadSolids(wasmUrl);
        continue;
      }
    } catch (cause) {
      scope.postMessage({ kind: 'fault', message: messageOf(cause) });
    }
    if (newest === asked) newest = undefined;
  }
}

/** False when newer news came before all was answered. */
async function answer(asked: Asked, kernel: SolidKernel | undefined): Promise<boolean> {
  const { design, turn, questions } = asked;
  const result = compute(design, { memo, ...(kernel === undefined ? {} : { solids: kernel }) });
  const problems = result.ok ? [] : result.problems;
  const from: Answering = { design, computed: result.ok ? result.value : undefined, problems };
  scope.postMessage({ kind: 'computed', turn, problems });
  for (const { key, question, options } of questions) {
    if (await isStale(asked)) return false;
    const found = (ANSWERS[question] as Answer)(from, options);
    if (found === undefined || (sent.get(key) === found && typeof found === 'object')) continue;
    sent.set(key, found);
    scope.postMessage({ kind: 'answer', turn, key, answer: found });
  }
  return !(await isStale(asked));
}

/** Lets messages in that have come meanwhile. */
async function isStale(asked: Asked): Promise<boolean> {
  await nextTask();
  return newest !== asked;
}

async function quiet(asked: Asked): Promise<boolean> {
  await new Promise((done) => setTimeout(done, QUIET));
  return newest === asked;
}

const { port1, port2 } = new MessageChannel();
port1.start();

/** After the messages that wait already; a timer would take four milliseconds. */
function nextTask(): Promise<void> {
  return new Promise((done) => {
    port1.addEventListener('message', () => done(), { once: true });
    port2.postMessage(undefined);
  });
}

function messageOf(cause: unknown): string {
  return cause instanceof Error ? `${cause.message}\n${cause.stack ?? ''}` : String(cause);
}
