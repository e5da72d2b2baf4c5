import { type Command, Option } from 'commander';
import { type DesignLayout, layDesign } from '../../design/index.ts';
import { boardDrawing, readLettering, sceneToSvg } from '../../drawing/index.ts';
import { USUAL_STEPS } from '../../wood/index.ts';
import { type Session, withExample } from '../command.ts';
import { computeInFile, designToWrite, loadDesign } from '../design-files.ts';
import { layoutJson, layoutWords } from '../lay/say-layout.ts';
import { wholeNumber } from '../lay/whole-number.ts';
import { readFonts } from '../package-files.ts';
import { watchProgress } from '../progress.ts';
import { showProblems } from '../show-problems.ts';
import { solidsFor } from '../solids.ts';
import { EXIT, type ExitCode, pathIn, say, type Terminal, widthOf } from '../terminal.ts';
import { type FileToWrite, writeTogether } from '../write-together.ts';

interface LayChoice {
  readonly anew?: true;
  readonly seed?: number;
  readonly steps: number;
  readonly seconds?: number;
  readonly output?: string;
  readonly dryRun?: true;
  readonly quiet?: true;
  readonly json?: true;
}

/** `legwright lay`: parts on boards. */
export function addLay(program: Command, session: Session): void {
  const command = program
    .command('lay')
    .summary('lay the parts on the boards at hand')
    .description(
      'Lays every part on the boards that the design names (wood.boards), by true outline and saw allowance, with the grain,\nclear of defects, and the templates on its sheets. Places that are sound stay; the rest is searched and kept in the\ndesign. Prints yield, board feet, cubic metres, price, and what is left. The same seed gives the same layout.',
    )
    .argument('<design>', 'the design file')
    .option('--anew', 'throw away all places but those laid by hand')
    .addOption(
      new Option('--seed <number>', 'where the search begins (otherwise the design’s)').argParser(
        wholeNumber,
      ),
    )
    .addOption(
      new Option('--steps <number>', 'places to try before it ends')
        .argParser(wholeNumber)
        .default(USUAL_STEPS),
    )
    .addOption(
      new Option('--seconds <number>', 'longest time, whatever the steps (otherwise the design’s)').argParser(
        wholeNumber,
      ),
    )
    .option('-o, --output <folder>', 'also draw each board to scale into this folder, as SVG')
    .option('--dry-run', 'say what would come of it, write nothing')
    .option('--quiet', 'print nothing but problems')
    .option('--json', 'print the layout as JSON')
    .action(async (path: string, options: LayChoice) => {
      session.end(await lay(session.terminal, path, options));
    });
  withExample(command, 'legwright lay table.json', 'legwright lay table.json --anew --seed 7 -o boards');
}

async function lay(terminal: Terminal, path: string, options: LayChoice): Promise<ExitCode> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const { design } = file.value;
  const computed = computeInFile(file.value, design, {
    wanted: { patterns: [] },
    ...(await solidsFor(design)),
  });
  if (!computed.ok) return showProblems(terminal, computed.problems);
  if ((design.wood?.boards ?? []).length === 0) {
    const message =
      'The design names no boards. Write those at hand under wood.boards: name, length, width, thickness.';
    return showProblems(terminal, [{ code: 'lay.no-boards', message, file: path }]);
  }
  const progress = watchProgress(terminal, options.quiet === true);
  const end = performance.now() + 1000 * (options.seconds ?? design.wood?.search?.seconds ?? Infinity);
  const laid = layDesign(computed.value, {
    steps: options.steps,
    ...(options.anew === undefined ? {} : { anew: true }),
    ...(options.seed === undefined ? {} : { seed: options.seed }),
    shouldStop: () => performance.now() > end,
    onStep: (done, of) => progress.step(done, of, 'laying parts on boards'),
  });
  progress.end();
  if (!laid.ok) return showProblems(terminal, laid.problems);
  const { layout, found } = laid.value;
  if (options.dryRun !== true) {
    const drawings =
      options.output === undefined
        ? []
        : drawingsOf(terminal, options.output, layout, computed.value.lengths);
    const saved = writeTogether([...drawings, designToWrite(terminal, path, laid.value.design)]);
    if (!saved.ok) return showProblems(terminal, saved.problems);
  }
  if (options.json) say(terminal, JSON.stringify(layoutJson(layout, found), null, 2));
  else if (!options.quiet)
    say(terminal, layoutWords(layout, found, computed.value.lengths, widthOf(terminal)));
  return layout.unlaid.length > 0 || layout.faults.length > 0 ? EXIT.stop : EXIT.fine;
}

function drawingsOf(
  terminal: Terminal,
  folder: string,
  { account, search }: DesignLayout,
  lengths: Parameters<typeof boardDrawing>[1]['lengths'],
): readonly FileToWrite[] {
  const lettering = readLettering(readFonts());
  return account.boards.map((each) => {
    const { scene, scale } = boardDrawing(each, { lengths, allowed: search.rules.allowed });
    const title = `Board ${each.board.name}, ${scale}`;
    const name = each.board.name.replaceAll(/[^\p{L}\p{N}_-]+/gu, '-');
    return {
      path: pathIn(terminal, `${folder}/board-${name}.svg`),
      content: sceneToSvg(scene, lettering, { title, margin: 5 }),
    };
  });
}
