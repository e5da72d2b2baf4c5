import { SingleBar } from 'cli-progress';
import type { Terminal } from './terminal.ts';

/** Shows how far a long task has come. Silent for the first second, and where nobody watches. */
export interface Progress {
  readonly step: (done: number, total: number, words: string) => void;
  readonly end: () => void;
}

/** ms. Shorter tasks show nothing. */
const PATIENCE = 1000;

export function watchProgress(terminal: Terminal, quiet: boolean): Progress {
  if (quiet || !terminal.err.isTTY) return { step: () => {}, end: () => {} };
  const start = performance.now();
  let bar: SingleBar | undefined;
  return {
    step: (done, total, words) => {
      if (bar === undefined && performance.now() - start > PATIENCE) {
        bar = new SingleBar({
          stream: process.stderr,
          format: '{words} · {value} of {total}  {bar}',
          barCompleteChar: '━',
          barIncompleteChar: '·',
          barsize: 30,
          hideCursor: true,
          clearOnComplete: true,
          // The work keeps the thread busy: no timer would ever fire.
          noTTYOutput: false,
          synchronousUpdate: true,
        });
        bar.start(total, done, { words });
      }
      bar?.setTotal(total);
      bar?.update(done, { words });
    },
    end: () => bar?.stop(),
  };
}
