import type { FromWorker, ToWorker } from './protocol.ts';

const worker = new Worker(new URL('./engine-worker.ts', import.meta.url), { type: 'module', name: 'engine' });

export function send(message: ToWorker): void {
  worker.postMessage(message);
}

/** Calls for everything that the engine's worker says, and for a fault of its own. */
export function hearEngine(hear: (news: FromWorker) => void): void {
  worker.addEventListener('message', ({ data }: MessageEvent<FromWorker>) => hear(data));
  worker.addEventListener('error', ({ message }) => hear({ kind: 'fault', message }));
}
