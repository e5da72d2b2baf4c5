import { basename, join } from 'node:path';
import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import type {
  Computed,
  Design,
  DesignFile,
  SettingOutView,
  TypedPaper,
  WrittenResult,
} from '../../design/index.ts';
import { computeInFile, designToWrite } from '../design-files.ts';
import { ofPaperOption } from '../paper-option.ts';
import { solidsFor } from '../solids.ts';
import { pathIn, type Terminal } from '../terminal.ts';
import { writeTogether } from '../write-together.ts';
import { changedSheets, droppedSheets, patternsWithSameOutlines } from './changed-sheets.ts';
import { type Letters, outputFiles, type PrintJob, printJob } from './output-files.ts';
import { type DesignIdentity, identityWords, isSameDesign, staleFiles } from './output-folder.ts';
import { everyView, type PatternChoice, requestPatterns } from './request-patterns.ts';
import type { SheetPlace } from './sheet-name.ts';

export interface MakeChoice extends PatternChoice {
  readonly paper?: TypedPaper['size'] | undefined;
  readonly force?: boolean | undefined;
  /** Only this sheet, as a trial. */
  readonly sheet?: SheetPlace | undefined;
  readonly since?: WrittenResult | undefined;
  /** Views of a base to print at full size. */
  readonly settingOut?: readonly SettingOutView[] | undefined;
}

/** What was written of one design. */
export interface Made {
  readonly computed: Computed;
  readonly folder: string;
  /** In the folder. */
  readonly files: readonly string[];
  readonly jobs: readonly PrintJob[];
  /** Grids were pinned in the design's own file. */
  readonly pinned: boolean;
  /** Compared with an earlier result. */
  readonly since: boolean;
  /** With an earlier result: sheets in hand that are no longer part of a pattern. */
  readonly dropped: readonly string[];
  /** With an earlier result: patterns whose outlines are as before. */
  readonly sameOutlines: readonly string[];
}

export interface MakeTask {
  readonly file: DesignFile;
  /** The design's file and the folder for the output, as the maker named them. */
  readonly path: string;
  readonly folder: string;
  readonly choice: MakeChoice;
}

/** Computes a design and writes all its output and, where a grid is new, the design with its grids: whole or not at all. */
export async function makeDesign(
  terminal: Terminal,
  { file, path, folder, choice }: MakeTask,
  letters: Letters,
  onStep: (done: number, total: number, words: string) => void,
): Promise<Result<Made>> {
  const design: Design =
    choice.paper === undefined
      ? file.design
      : { ...file.design, paper: { ...file.design.paper, size: choice.paper } };
  const patterns = requestPatterns(design, choice);
  if (patterns.length === 0) return fail(noPattern(path, design, choice));
  const identity: DesignIdentity = { name: design.name, form: design.form.name, file: basename(path) };
  const drawings = choice.sheet === undefined ? everyView(patterns) : [];
  const outcome = computeInFile(file, design, {
    // Cauls are asked for by name, or come with all that the design wants.
    wanted: {
      patterns,
      drawings,
      cauls: choice.part === undefined && choice.view === undefined && choice.mirrored !== true,
    },
    onStep,
    ...(await solidsFor(design)),
  });
  if (!outcome.ok) {
    return choice.paper === undefined ? outcome : fail(...outcome.problems.map(ofPaperOption));
  }
  const computed = outcome.value;
  const strange = choice.since === undefined ? undefined : strangeResult(choice.since, identity, computed);
  if (strange !== undefined && choice.force !== true) return fail({ ...strange, file: path });
  if (choice.settingOut !== undefined && computed.base === undefined) return fail(noBase(path, design));
  const jobs = printJobs(computed, choice);
  if (choice.sheet !== undefined && jobs.length === 0) return fail(noSheet(path, computed, choice.sheet));

  let done = 0;
  const total = jobs.length + 1;
  const printing = (words: string): void => onStep(done++, total, words);
  const whole =
    choice.sheet === undefined
      ? await outputFiles(
          computed,
          { jobs, designFile: basename(path), settingOut: choice.settingOut },
          letters,
          printing,
        )
      : undefined;
  const output =
    whole?.files ??
    (await Promise.all(
      jobs.map(async (job) => ({ path: job.file, content: await printJob(computed, job, letters) })),
    ));
  const names = output.map((each) => each.path);
  const own = names.find((name) => pathIn(terminal, join(folder, name)) === pathIn(terminal, path));
  if (own !== undefined) {
    const message = `The output would write over the design itself, ${own}. Choose another folder.`;
    return fail({ code: 'make.over-design', message, file: path });
  }
  const next = { design: identity, files: names };
  const stale = choice.sheet !== undefined ? ok([]) : staleFiles(terminal, folder, next);
  if (!stale.ok && choice.force !== true) return stale;
  const pinned = JSON.stringify(computed.grids) !== JSON.stringify(file.design.grids);
  const written = writeTogether(
    [
      ...output.map((each) => ({ ...each, path: pathIn(terminal, join(folder, each.path)) })),
      ...(pinned ? [designToWrite(terminal, path, { ...file.design, grids: computed.grids })] : []),
    ],
    (stale.ok ? stale.value : []).map((name) => pathIn(terminal, join(folder, name))),
  );
  if (!written.ok) return written;
  const since = choice.since !== undefined;
  const dropped = droppedNames(computed, choice.since);
  const sameOutlines =
    whole === undefined || choice.since === undefined
      ? []
      : patternsWithSameOutlines(whole.result, choice.since);
  return ok({ computed, folder, files: names, jobs, pinned, since, dropped, sameOutlines });
}

/** What to print: each pattern whole; with an earlier result also its changed sheets alone; or only the sheet asked for. */
function printJobs(computed: Computed, { sheet, since }: MakeChoice): readonly PrintJob[] {
  return computed.patterns.flatMap((laid): PrintJob[] => {
    const pattern = laid.pattern.name;
    if (sheet !== undefined) {
      const { row, place } = sheet;
      const exists = laid.plan.sheets.some((each) => each.row === row && each.place === place);
      const only = [{ pattern: laid.plan.pattern, row, place }];
      return exists ? [{ pattern, file: `${pattern}-row-${row}-sheet-${place}.pdf`, only }] : [];
    }
    const whole = { pattern, file: `${pattern}.pdf` };
    const changed = since === undefined ? [] : changedSheets(laid, since);
    return changed.length === 0
      ? [whole]
      : [whole, { pattern, file: `${pattern}-changed.pdf`, only: changed }];
  });
}

/** Why an earlier result says nothing of which sheets have changed; undefined when it is this design's. */
function strangeResult(since: WrittenResult, next: DesignIdentity, computed: Computed): Problem | undefined {
  const cure =
    'Name an earlier result of this design, leave --since out, or compare all the same with --force.';
  if (!isSameDesign(since, next)) {
    const found = identityWords(since);
    const message = `The result after --since is of another design, ${found}. ${cure}`;
    return { code: 'make.since-other-design', message, found };
  }
  const names = since.patterns.map(({ name }) => name);
  if (computed.patterns.some(({ pattern }) => names.includes(pattern.name))) return undefined;
  const wanted = computed.patterns.map(({ pattern }) => pattern.name).join(', ');
  const found = names.join(', ');
  const message = `The result after --since has no pattern ${wanted}, only ${found || 'none at all'}. ${cure}`;
  return { code: 'make.since-other-pattern', message, found, expected: wanted };
}

function droppedNames(computed: Computed, since: WrittenResult | undefined): readonly string[] {
  if (since === undefined) return [];
  return computed.patterns
    .flatMap((laid) => droppedSheets(laid, since))
    .map(({ pattern, row, place }) => `${pattern}, row ${row}, sheet ${place}`);
}

function noPattern(path: string, design: Design, { part }: MakeChoice): Problem {
  const expected = `one of: ${[...new Set(design.patterns.map((each) => each.part))].join(', ')}`;
  const found = part?.join(', ') ?? 'nothing';
  const message = `The design asks for no pattern of "${found}": expected ${expected}.`;
  return { code: 'make.no-pattern', message, file: path, found, expected };
}

function noBase(file: string, { form }: Design): Problem {
  const message = `--setting-out shows a base, and ${form.name} draws single parts: expected a design of a base form.`;
  return { code: 'make.no-base', message, file, found: form.name, expected: 'a base form' };
}

function noSheet(path: string, computed: Computed, { row, place }: SheetPlace): Problem {
  const counts = computed.patterns.map(
    ({ pattern, plan }) => `${pattern.name} has ${plan.rows} rows of up to ${plan.places} sheets`,
  );
  const message = `No pattern has a sheet "row ${row}, sheet ${place}": ${counts.join('; ')}.`;
  return { code: 'make.no-sheet', message, file: path, found: `row ${row}, sheet ${place}` };
}
