import type { FromPhotoWorker, PhotoAnswers, PhotoAsk, ToPhotoWorker } from './photo-protocol.ts';

let worker: Worker | undefined;
let asked = 0;
const waiting = new Map<
  number,
  { readonly done: (answer: never) => void; readonly fail: (cause: Error) => void }
>();

/** A worker for what is too large for the page: begun when the first photograph is looked at. */
function photoWorker(): Worker {
  if (worker !== undefined) return worker;
  const own = new Worker(new URL('./photo-worker.ts', import.meta.url), {
    type: 'module',
    name: 'photographs',
  });
  own.addEventListener('message', ({ data }: MessageEvent<FromPhotoWorker>) => {
    if ('fault' in data) waiting.get(data.id)?.fail(new Error(data.fault));
    else waiting.get(data.id)?.done(data.answer as never);
    waiting.delete(data.id);
  });
  worker = own;
  return own;
}

/** Has something done with a photograph. Rejects where it cannot be read as a picture. */
export function photoDo<K extends PhotoAsk['kind']>(
  ask: Extract<PhotoAsk, { kind: K }>,
): Promise<PhotoAnswers[K]> {
  asked += 1;
  const id = asked;
  photoWorker().postMessage({ ...ask, id } satisfies ToPhotoWorker);
  return new Promise((done, fail) => waiting.set(id, { done, fail }));
}
