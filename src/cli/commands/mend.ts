import { type Command, Option } from 'commander';
import { lengthStyleOf, printPatch, type TypedPatch } from '../../design/index.ts';
import { formatLength } from '../../measure/index.ts';
import { PATCH_CAUTIONS } from '../../wood/index.ts';
import { type Session, withExample } from '../command.ts';
import { loadDesign } from '../design-files.ts';
import { readFonts } from '../package-files.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, pathIn, say, type Terminal } from '../terminal.ts';
import { writeTogether } from '../write-together.ts';

interface MendChoice {
  readonly output: string;
  readonly flaw: string;
  readonly across?: string;
  readonly shape: TypedPatch['shape'];
  readonly cutter?: string;
  readonly bushing?: string;
  readonly collar?: string;
  readonly margin?: string;
  readonly room?: string;
}

/** `legwright mend`: a patch for a flaw. */
export function addMend(program: Command, session: Session): void {
  const command = program
    .command('mend')
    .summary('print the template for a patch over a flaw')
    .description(
      'Prints one template at full size from which recess and plug of a patch are cut: the bushing with a collar on it for\nthe recess, bare for the plug. The patch lies along the grain and holds the flaw; no corner is tighter than the cutter.',
    )
    .argument('<design>', 'the design file: its units, cutter, bushing and paper')
    .requiredOption('--flaw <length>', 'length of the flaw along the grain')
    .option('--across <length>', 'its width across the grain (otherwise it is round)')
    .requiredOption('-o, --output <file>', 'the PDF to write')
    .addOption(new Option('--shape <shape>', 'of the patch').choices(['boat', 'diamond']).default('boat'))
    .option('--cutter <length>', 'diameter of the cutter (otherwise the design’s)')
    .option('--bushing <length>', 'outside diameter of the bushing (otherwise the design’s)')
    .option('--collar <length>', 'outside diameter of the collar in hand (otherwise the one that fits)')
    .option('--margin <length>', 'sound wood round the flaw that goes with it (2 mm)')
    .option('--room <length>', 'room for glue round the plug (none)')
    .action(async (path: string, options: MendChoice) => {
      session.end(await mend(session.terminal, path, options));
    });
  withExample(
    command,
    'legwright mend table.json --flaw "22 mm" --across "9 mm" --cutter "1/8 in" --bushing "5/16 in" -o patch.pdf',
  );
}

async function mend(terminal: Terminal, path: string, options: MendChoice): Promise<ExitCode> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const { flaw, across, shape, cutter, bushing, collar, margin, room } = options;
  const typed: TypedPatch = {
    shape,
    along: flaw,
    across: across ?? flaw,
    ...(cutter === undefined ? {} : { cutter }),
    ...(bushing === undefined ? {} : { bushing }),
    ...(collar === undefined ? {} : { collar }),
    ...(margin === undefined ? {} : { margin }),
    ...(room === undefined ? {} : { clearance: room }),
  };
  const printed = await printPatch(file.value.design, typed, readFonts());
  if (!printed.ok) return showProblems(terminal, printed.problems);
  const { patch, findings, sheets, pdf } = printed.value;
  const saved = writeTogether([{ path: pathIn(terminal, options.output), content: pdf }]);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  const style = lengthStyleOf(file.value.design);
  const write = (mm: number): string =>
    formatLength(mm, style.unit === 'mm' ? { unit: 'mm', decimals: 2 } : style);
  say(
    terminal,
    `${options.output}: a ${shape} ${write(patch.length)} × ${write(patch.width)} on ${sheets} sheet${sheets === 1 ? '' : 's'}.`,
  );
  say(terminal, `Collar that fits: ${write(patch.collarNeeded)}. Room round the plug: ${write(patch.gap)}.`);
  for (const { severity, message, cure } of findings)
    say(terminal, `${severity}: ${message}${cure === undefined ? '' : ` ${cure}`}`);
  for (const words of PATCH_CAUTIONS) say(terminal, `- ${words}`);
  return findings.some(({ severity }) => severity === 'stop') ? EXIT.stop : EXIT.fine;
}
