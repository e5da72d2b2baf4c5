import { Command, CommanderError } from 'commander';
import type { AddCommand } from './command.ts';
import { addApp } from './commands/app.ts';
import { addCalibrate } from './commands/calibrate.ts';
import { addCheck } from './commands/check.ts';
import { addCut } from './commands/cut.ts';
import { addForms } from './commands/forms.ts';
import { addLay } from './commands/lay.ts';
import { addFromLink, addLink } from './commands/link.ts';
import { addMake } from './commands/make.ts';
import { addMeasured } from './commands/measured.ts';
import { addMend } from './commands/mend.ts';
import { addOffset } from './commands/offset.ts';
import { addRenew } from './commands/renew.ts';
import { addSet } from './commands/set.ts';
import { addStart } from './commands/start.ts';
import { addWorkshop } from './commands/workshop.ts';
import { programVersion } from './package-files.ts';
import { EXIT, type ExitCode, type Terminal } from './terminal.ts';

/** In the order of the work. */
const COMMANDS: readonly AddCommand[] = [
  addForms,
  addWorkshop,
  addStart,
  addSet,
  addCheck,
  addLay,
  addMake,
  addMeasured,
  addCut,
  addCalibrate,
  addMend,
  addRenew,
  addLink,
  addFromLink,
  addOffset,
  addApp,
];

/**
 * Runs one command line (without the program's own name) and gives the exit code. Writes to the terminal and to the files
 * that the command names, nowhere else. A programmer's mistake throws.
 */
export async function run(args: readonly string[], terminal: Terminal): Promise<ExitCode> {
  let code: ExitCode = EXIT.fine;
  const end = (next: ExitCode) => {
    if (next > code) code = next;
  };
  const program = new Command('legwright')
    .description(
      'From a few decided numbers to a base that fits: its parts, end cuts and joints, true full-size paper\npatterns, the routing template for the bit in hand, and what that bit will leave.',
    )
    .version(programVersion(), '-V, --version', 'print the version')
    .helpOption('-h, --help', 'print this help')
    .helpCommand('help [command]', 'print the help of a command')
    .exitOverride()
    .configureOutput({
      writeOut: (text) => terminal.out.write(text),
      writeErr: (text) => terminal.err.write(text),
      getOutHelpWidth: () => terminal.out.columns ?? 100,
      getErrHelpWidth: () => terminal.err.columns ?? 100,
    })
    .addHelpText('after', `\n${EXIT_WORDS}`);
  for (const add of COMMANDS) add(program, { terminal, end });
  try {
    await program.parseAsync(args, { from: 'user' });
  } catch (cause) {
    if (!(cause instanceof CommanderError)) throw cause;
    if (cause.exitCode !== 0) end(EXIT.unusable);
  }
  return code;
}

const EXIT_WORDS = `Exit codes:
  0  done
  1  the design is sound, but a finding says stop
  2  the command line or a file cannot be used
  3  the output cannot be written; nothing was changed
  4  a fault of this program`;
