import { type Command, Option } from 'commander';
import type { Result } from '../../core/index.ts';
import { type PatternRequest, SETTING_OUT_VIEWS, type SettingOutView } from '../../design/index.ts';
import { readLettering } from '../../drawing/index.ts';
import { type Session, withExample } from '../command.ts';
import { loadDesign } from '../design-files.ts';
import { type Made, type MakeChoice, makeDesign } from '../make/make-design.ts';
import type { Letters } from '../make/output-files.ts';
import { folderFor, loadResult } from '../make/output-folder.ts';
import { sayMade, summaryOf } from '../make/say-made.ts';
import { readSheetName } from '../make/sheet-name.ts';
import { readFonts } from '../package-files.ts';
import { readPaperOption } from '../paper-option.ts';
import { PAPER_HELP } from '../paper-size.ts';
import { watchProgress } from '../progress.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';

interface MakeOptions {
  readonly output: string;
  readonly part?: readonly string[];
  readonly view?: readonly PatternRequest['view'][];
  readonly mirrored?: true;
  readonly paper?: string;
  readonly sheet?: string;
  readonly since?: string;
  readonly settingOut?: readonly SettingOutView[];
  readonly force?: true;
  readonly quiet?: true;
  readonly json?: true;
}

/** `legwright make`: everything that comes of a design, into a folder. */
export function addMake(program: Command, session: Session): void {
  const command = program
    .command('make')
    .summary('write patterns, drawings and the result into a folder')
    .description(
      'Writes everything that comes of a design into a folder: a PDF of full-size sheets for each pattern, drawings in\none piece as SVG, outlines for a machine to cut, the findings, and result.json with its JSON Schema.\nOf several designs each gets a folder of its own. The grid of the sheets is pinned in the design, so that a later\nprint fits the sheets already taped.',
    )
    .argument('<design...>', 'design files')
    .requiredOption('-o, --output <folder>', 'the folder to write into')
    .option('--part <name...>', 'only the patterns of these parts')
    .addOption(
      new Option('--view <view...>', 'these views instead of the design’s').choices([
        'part',
        'template',
        'as-routed',
        'all',
      ]),
    )
    .option('--mirrored', 'patterns turned over, for the other hand')
    .option('--paper <size>', `this paper instead of the design’s: ${PAPER_HELP}`)
    .option('--sheet <name>', 'only one sheet, as a trial: "row 2, sheet 3"')
    .option(
      '--since <result.json>',
      'beside all sheets, print alone those that changed since this earlier result',
    )
    .addOption(
      new Option('--setting-out <view...>', 'views of a base at full size, to lay it on').choices(
        SETTING_OUT_VIEWS,
      ),
    )
    .option('--force', 'write over the output of another design, or compare with it')
    .option('--quiet', 'print nothing but problems')
    .option('--json', 'print what was written as JSON')
    .action(async (paths: string[], options: MakeOptions) => {
      session.end(await make(session.terminal, paths, options));
    });
  withExample(
    command,
    'legwright make desk-leg.json -o desk-leg',
    'legwright make desk-leg.json -o trial --sheet "row 1, sheet 2"',
    'legwright make desk-leg.json -o desk-leg --since desk-leg/result.json',
  );
}

async function make(terminal: Terminal, paths: readonly string[], options: MakeOptions): Promise<ExitCode> {
  const choice = readChoice(terminal, options);
  if (!choice.ok) return showProblems(terminal, choice.problems);
  const fonts = readFonts();
  const letters: Letters = { fonts, lettering: readLettering(fonts) };
  const made: Made[] = [];
  let code: ExitCode = EXIT.fine;
  const taken = new Map<string, string>();
  for (const path of paths) {
    const folder = folderFor(path, options.output, paths.length > 1);
    const other = taken.get(folder);
    if (other !== undefined) {
      const message = `Its output would go into ${folder}, as that of ${other} does: make it by itself, into another folder.`;
      code = gravest(code, showProblems(terminal, [{ code: 'make.same-folder', message, file: path }]));
      continue;
    }
    taken.set(folder, path);
    const one = await makeOne(terminal, { path, folder, choice: choice.value, letters, options });
    if (!one.ok) {
      code = gravest(code, showProblems(terminal, one.problems));
      continue;
    }
    made.push(one.value);
    if (one.value.computed.findings.some(({ severity }) => severity === 'stop'))
      code = gravest(code, EXIT.stop);
    if (!options.quiet && !options.json) sayMade(terminal, path, one.value);
  }
  if (options.json) say(terminal, JSON.stringify(made.map(summaryOf), null, 2));
  return code;
}

interface One {
  readonly path: string;
  readonly folder: string;
  readonly choice: MakeChoice;
  readonly letters: Letters;
  readonly options: MakeOptions;
}

async function makeOne(
  terminal: Terminal,
  { path, folder, choice, letters, options }: One,
): Promise<Result<Made>> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return file;
  const progress = watchProgress(terminal, options.quiet === true);
  try {
    return await makeDesign(terminal, { file: file.value, path, folder, choice }, letters, progress.step);
  } finally {
    progress.end();
  }
}

function readChoice(terminal: Terminal, options: MakeOptions): Result<MakeChoice> {
  const sheet = options.sheet === undefined ? undefined : readSheetName(options.sheet);
  if (sheet && !sheet.ok) return sheet;
  const since = options.since === undefined ? undefined : loadResult(terminal, options.since);
  if (since && !since.ok) return since;
  const { part, view, mirrored, force, settingOut } = options;
  // Bare numbers are of the design's own unit, which is not known yet: whether the words can be read does not depend on it.
  const paper = options.paper === undefined ? undefined : readPaperOption(options.paper, 'mm');
  if (paper && !paper.ok) return paper;
  return {
    ok: true,
    value: {
      part,
      view,
      mirrored,
      paper: paper?.value,
      force,
      sheet: sheet?.value,
      since: since?.value,
      settingOut,
    },
  };
}

function gravest(a: ExitCode, b: ExitCode): ExitCode {
  return a > b ? a : b;
}
