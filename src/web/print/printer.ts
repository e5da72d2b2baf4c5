import { signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { type FromPrinter, fileNameOf, type Printable, type ToPrinter } from './print-job.ts';

/** What is being printed, how far it is (0 to 1) and at what. */
export interface Printing {
  readonly file: string;
  readonly share: number;
  readonly words: string;
}

export const printing = signal<Printing | undefined>(undefined);
/** Why the last print could not be made. */
export const printFault = signal<string | undefined>(undefined);

/** Begun with the first print: what writes PDF is fetched only then. */
let worker: Worker | undefined;
let count = 0;
let stop: (() => void) | undefined;

/** Makes a PDF in a worker of its own; undefined when it failed (`printFault` says why) or was stopped. */
export function print(design: Design, what: Printable): Promise<Blob | undefined> {
  stopPrinting();
  count += 1;
  const id = count;
  const file = fileNameOf(what);
  printFault.value = undefined;
  printing.value = { file, share: 0, words: '' };
  const own = printerWorker();
  return new Promise((done) => {
    const finish = (pdf: Blob | undefined, message?: string): void => {
      own.removeEventListener('message', hear);
      own.removeEventListener('error', hearError);
      stop = undefined;
      printing.value = undefined;
      printFault.value = message;
      done(pdf);
    };
    const hear = ({ data }: MessageEvent<FromPrinter>): void => {
      if (data.id !== id) return;
      if (data.kind === 'step') printing.value = { file, share: data.share, words: data.words };
      else if (data.kind === 'failed') finish(undefined, data.message);
      else finish(new Blob([data.pdf], { type: 'application/pdf' }));
    };
    const hearError = ({ message }: ErrorEvent): void => finish(undefined, message);
    own.addEventListener('message', hear);
    own.addEventListener('error', hearError);
    stop = () => {
      worker = undefined;
      own.terminate();
      finish(undefined);
    };
    own.postMessage({ id, design, what } satisfies ToPrinter);
  });
}

/** Gives up the print under way, if there is one. */
export function stopPrinting(): void {
  stop?.();
}

/** Makes a PDF and hands it to the browser as a file. */
export async function printToFile(design: Design, what: Printable): Promise<void> {
  const pdf = await print(design, what);
  if (pdf === undefined) return;
  const link = document.createElement('a');
  link.href = URL.createObjectURL(pdf);
  link.download = fileNameOf(what);
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
}

function printerWorker(): Worker {
  worker ??= new Worker(new URL('./print-worker.ts', import.meta.url), { type: 'module', name: 'printer' });
  return worker;
}
