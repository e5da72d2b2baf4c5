import type { Command } from 'commander';
import { type BarReadings, calibratePaper, resolvePaper } from '../../design/index.ts';
import { renderCalibrationSheet } from '../../print/index.ts';
import { type Correctable, loadCorrectable } from '../calibrate/correctable.ts';
import { type Session, withExample } from '../command.ts';
import { readFonts } from '../package-files.ts';
import { showProblems } from '../show-problems.ts';
import { complain, EXIT, type ExitCode, pathIn, say, type Terminal } from '../terminal.ts';
import { writeTogether } from '../write-together.ts';

interface CalibrateOptions extends BarReadings {
  readonly output?: string;
  readonly printer?: string;
}

/** `legwright calibrate`: prints the sheet with the bars, and takes what the rule reads on it. */
export function addCalibrate(program: Command, session: Session): void {
  const command = program
    .command('calibrate')
    .summary('correct a printer: print the sheet, then type what the rule reads')
    .description(
      'First writes a sheet with a bar along each edge of the paper. Print it at 100 %, measure the bars, and give the\nreadings: each edge of the paper is corrected by itself, in the design or in the workshop’s printer. Over 0.5 % comes\nwith a caution; over 1.5 % is refused, because the printer is then fitting the page.',
    )
    .argument('<file>', 'a design, or a workshop file')
    .option('-o, --output <pdf>', 'write the calibration sheet')
    .option('--long <reading>', 'what the rule reads along the long edge')
    .option('--short <reading>', 'what the rule reads along the short edge')
    .option('--printer <name>', 'the printer; needed in a workshop file')
    .action(async (path: string, options: CalibrateOptions) => {
      session.end(await calibrate(session.terminal, path, options));
    });
  withExample(
    command,
    'legwright calibrate desk-leg.json -o calibration.pdf',
    'legwright calibrate desk-leg.json --long "259.2 mm" --short "170.3 mm"',
    'legwright calibrate workshop.json --printer "studio laser" --long 259.2 --short 170.3',
  );
}

async function calibrate(terminal: Terminal, path: string, options: CalibrateOptions): Promise<ExitCode> {
  const loaded = loadCorrectable(terminal, path, options.printer);
  if (!loaded.ok) return showProblems(terminal, loaded.problems);
  const measured = options.long !== undefined || options.short !== undefined;
  if (measured) return correct(terminal, path, loaded.value, options);
  if (options.output !== undefined) return writeSheet(terminal, loaded.value, options.output);
  const message =
    'Expected -o <pdf> to write the sheet, or --long and --short with what the rule reads on it.';
  return showProblems(terminal, [{ code: 'command.calibrate', message }]);
}

async function writeSheet(
  terminal: Terminal,
  { paper, unit }: Correctable,
  output: string,
): Promise<ExitCode> {
  const resolved = resolvePaper(paper, unit);
  if (!resolved.ok) return showProblems(terminal, resolved.problems);
  const content = await renderCalibrationSheet(resolved.value, terminal.today, readFonts());
  const written = writeTogether([{ path: pathIn(terminal, output), content }]);
  if (!written.ok) return showProblems(terminal, written.problems);
  say(terminal, `${output}: print it at 100 %, measure both bars, then give --long and --short.`);
  return EXIT.fine;
}

function correct(
  terminal: Terminal,
  path: string,
  { paper, unit, corrected }: Correctable,
  { long, short, printer }: CalibrateOptions,
): ExitCode {
  const resolved = resolvePaper(paper, unit);
  if (!resolved.ok) return showProblems(terminal, resolved.problems);
  const task = {
    paper: resolved.value,
    before: paper.calibration,
    readings: { long, short },
    unit,
    date: terminal.today,
    printer,
  };
  const calibrated = calibratePaper(task);
  if (!calibrated.ok) {
    return showProblems(
      terminal,
      calibrated.problems.map((problem) => ({ ...problem, file: path })),
    );
  }
  const { calibration, findings } = calibrated.value;
  const written = writeTogether([{ path: pathIn(terminal, path), content: corrected(calibration) }]);
  if (!written.ok) return showProblems(terminal, written.problems);
  for (const finding of findings) complain(terminal, `${finding.severity}: ${finding.message}`);
  const before = resolved.value.calibration;
  say(
    terminal,
    `${path}: long edge ${change(before.long, calibration.long)}, short edge ${change(before.short, calibration.short)}.`,
  );
  say(
    terminal,
    'The readings are taken to be of a sheet printed with the factors before. Write the sheet again with -o and measure\nonce more: both bars should now read true.',
  );
  return EXIT.fine;
}

/** A factor before and after. */
function change(before: number, after: number): string {
  return before === after ? `× ${after.toFixed(5)}` : `× ${before.toFixed(5)} → × ${after.toFixed(5)}`;
}
