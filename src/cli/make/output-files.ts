import { join } from 'node:path';
import {
  type Computed,
  cutListCsv,
  printBook,
  printPattern,
  printSettingOut,
  resultJsonSchema,
  resultOf,
  type SettingOutView,
  type WrittenResult,
  writeResult,
} from '../../design/index.ts';
import { basePicture, type Lettering, sceneToSvg, viewScene } from '../../drawing/index.ts';
import type { PrintFonts, SheetName } from '../../print/index.ts';
import { findingsTable } from '../findings-table.ts';
import type { FileToWrite } from '../write-together.ts';
import { woodFiles } from './wood-files.ts';

/** The lettering in both its forms: to be embedded in a PDF, and as shapes for SVG. */
export interface Letters {
  readonly fonts: PrintFonts;
  readonly lettering: Lettering;
}

/** A PDF to print. */
export interface PrintJob {
  /** Name of its pattern. */
  readonly pattern: string;
  /** Beside the result: `leg.pdf`. */
  readonly file: string;
  /** Only these sheets; all when absent. */
  readonly only?: readonly SheetName[];
}

/** Columns of the table of findings in a text file. */
const FILE_WIDTH = 110;

/** Everything that `make` writes of one design into its folder, the result last. */
export async function outputFiles(
  computed: Computed,
  {
    jobs,
    designFile,
    settingOut: views = [],
  }: {
    readonly jobs: readonly PrintJob[];
    readonly designFile: string;
    readonly settingOut?: readonly SettingOutView[] | undefined;
  },
  letters: Letters,
  onStep: (words: string) => void,
): Promise<{ readonly files: readonly FileToWrite[]; readonly result: WrittenResult }> {
  const files: FileToWrite[] = [];
  for (const job of jobs) {
    onStep(`printing ${job.file}`);
    files.push({ path: job.file, content: await printJob(computed, job, letters) });
  }
  if (computed.base !== undefined) {
    onStep('writing the shop book');
    files.push(...(await bookFiles(computed, computed.base, letters)));
    files.push(...(await woodFiles(computed, letters.fonts, letters.lettering)));
    for (const side of views) {
      onStep(`setting out the view ${side}`);
      const content = await printSettingOut(computed, side, letters.fonts);
      files.push({ path: `setting-out-${side}.pdf`, content });
    }
  }
  onStep('drawing SVG');
  files.push(...svgFiles(computed, letters.lettering));
  files.push({
    path: 'findings.txt',
    content: `${findingsTable(computed, FILE_WIDTH)}\n`,
  });
  files.push({ path: 'result.schema.json', content: `${JSON.stringify(resultJsonSchema(), null, 2)}\n` });
  const whole = jobs.filter(({ only }) => only === undefined);
  const result = resultOf(computed, {
    patterns: new Map(whole.map(({ pattern, file }) => [pattern, file])),
    all: [...files.map(({ path }) => path), 'result.json'],
    design: designFile,
  });
  files.push({ path: 'result.json', content: writeResult(result) });
  return { files, result };
}

/** The shop book of a base, its cut list for a spreadsheet, and its views as SVG. */
async function bookFiles(
  computed: Computed,
  base: NonNullable<Computed['base']>,
  { fonts, lettering }: Letters,
): Promise<readonly FileToWrite[]> {
  const views = (['front', 'left', 'plan'] as const).map((side) => ({
    path: join('drawings', `view-${side}.svg`),
    content: sceneToSvg(viewScene(basePicture(base.base, side), computed.lengths), lettering, {
      title: `${computed.design.name}, ${side}`,
    }),
  }));
  return [
    { path: 'shop-book.pdf', content: await printBook(computed, fonts) },
    { path: 'cut-list.csv', content: cutListCsv(base, { lengths: computed.lengths }) },
    ...views,
  ];
}

/** The sheets of one pattern as PDF. */
export function printJob(computed: Computed, job: PrintJob, { fonts }: Letters): Promise<Uint8Array> {
  return printPattern(computed, job.pattern, fonts, job.only === undefined ? {} : { only: job.only });
}

/** Drawings in one piece, and beside them the bare outlines for a laser or a router table to cut. */
function svgFiles({ drawings }: Computed, lettering: Lettering): readonly FileToWrite[] {
  return drawings.flatMap(({ pattern }) => {
    const { name, title, view, scene, withNotes } = pattern;
    const drawing = {
      path: join('drawings', `${name}.svg`),
      content: sceneToSvg(withNotes, lettering, { title }),
    };
    if (view === 'all' || view === 'as-routed') return [drawing];
    const cut = {
      path: join('cutting', `${name}.svg`),
      content: sceneToSvg(scene, lettering, { title, cutting: view }),
    };
    return [drawing, cut];
  });
}
