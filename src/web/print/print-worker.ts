import '../engine/no-eval.ts';
import wasmUrl from 'manifold-3d/manifold.wasm?url';
import regularUrl from '../../../shared/fonts/IBMPlexSansCondensed-Regular.woff?url';
import semiboldUrl from '../../../shared/fonts/IBMPlexSansCondensed-SemiBold.woff?url';
import { loadSolids } from '../../base/index.ts';
import type { Problem } from '../../core/index.ts';
import {
  type Computed,
  compute,
  type Design,
  type Memo,
  printBook,
  printCalibration,
  printPatch,
  printPattern,
  printSettingOut,
} from '../../design/index.ts';
import type { PrintFonts } from '../../print/index.ts';
import { isBaseForm } from '../../sketch/index.ts';
import type { FromPrinter, Printable, ToPrinter } from './print-job.ts';

interface Scope {
  postMessage(message: FromPrinter, transfer?: readonly Transferable[]): void;
  addEventListener(kind: 'message', hear: (event: MessageEvent<ToPrinter>) => void): void;
}
const scope = self as unknown as Scope;

/** Share of the work that is done when all is reckoned and only the pages are left to write. */
const RECKONED = 0.7;

const memo: Memo = new Map();
let fonts: Promise<PrintFonts> | undefined;
let solids: ReturnType<typeof loadSolids> | undefined;

scope.addEventListener('message', ({ data }) => void print(data));

async function print({ id, design, what }: ToPrinter): Promise<void> {
  const tell = (share: number, words: string): void => scope.postMessage({ kind: 'step', id, share, words });
  try {
    fonts ??= readFonts();
    if (what.kind === 'calibration') {
      send(id, await printCalibration(design, await fonts));
      return;
    }
    if (what.kind === 'patch') {
      const printed = await printPatch(design, design.wood!.patches![what.at]!, await fonts);
      if (printed.ok) send(id, printed.value.pdf);
      else scope.postMessage({ kind: 'failed', id, message: wordsOf(printed.problems) });
      return;
    }
    const computed = await reckon(design, tell);
    if (typeof computed === 'string') {
      scope.postMessage({ kind: 'failed', id, message: computed });
      return;
    }
    tell(RECKONED, '');
    send(id, await pdfOf(computed, what, await fonts));
  } catch (cause) {
    scope.postMessage({
      kind: 'failed',
      id,
      message: cause instanceof Error ? cause.message : String(cause),
    });
  }
}

/** All that follows from the design, as the command line finds it; or why it cannot be used. */
async function reckon(
  design: Design,
  tell: (share: number, words: string) => void,
): Promise<Computed | string> {
  const isBase = isBaseForm(design.form.text.join('\n'));
  if (isBase) solids ??= loadSolids(wasmUrl);
  const kernel = isBase ? await solids : undefined;
  const outcome = compute(design, {
    memo,
    ...(kernel === undefined ? {} : { solids: kernel }),
    onStep: (done, total, words) => tell((RECKONED * done) / total, words),
  });
  return outcome.ok ? outcome.value : wordsOf(outcome.problems);
}

const wordsOf = (problems: readonly Problem[]): string => problems.map(({ message }) => message).join('\n');

function pdfOf(
  computed: Computed,
  what: Exclude<Printable, { kind: 'calibration' | 'patch' }>,
  letters: PrintFonts,
) {
  switch (what.kind) {
    case 'pattern':
      return printPattern(computed, what.pattern, letters);
    case 'sheet':
      return printPattern(computed, what.pattern, letters, { only: [what] });
    case 'book':
      return printBook(computed, letters);
    case 'setting-out':
      return printSettingOut(computed, what.view, letters);
    default:
      return what satisfies never;
  }
}

function send(id: number, written: Uint8Array): void {
  const pdf = new Uint8Array(written);
  scope.postMessage({ kind: 'printed', id, pdf }, [pdf.buffer]);
}

async function readFonts(): Promise<PrintFonts> {
  const read = async (url: string) => new Uint8Array(await (await fetch(url)).arrayBuffer());
  const [regular, semibold] = await Promise.all([read(regularUrl), read(semiboldUrl)]);
  return { regular, semibold };
}
