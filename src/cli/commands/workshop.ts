import { existsSync } from 'node:fs';
import { type Command, Option } from 'commander';
import { usualWorkshop, writeWorkshop } from '../../design/index.ts';
import { type Session, withExample } from '../command.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, pathIn, say, type Terminal } from '../terminal.ts';
import { writeTogether } from '../write-together.ts';

interface WorkshopOptions {
  readonly output: string;
  readonly units: 'mm' | 'in';
}

/** `legwright workshop`: a workshop file to make one's own. */
export function addWorkshop(program: Command, session: Session): void {
  const command = program
    .command('workshop')
    .summary('write a workshop file to make your own')
    .description(
      'Writes a workshop file with usual tools: put your own cutters, guides, blades and paper in their place. The first of\neach list is the one that “start --workshop” takes unless told otherwise.',
    )
    .requiredOption('-o, --output <file>', 'the workshop file to write')
    .addOption(new Option('--units <unit>', 'unit of bare numbers').choices(['mm', 'in']).default('mm'))
    .action((options: WorkshopOptions) => session.end(writeUsual(session.terminal, options)));
  withExample(command, 'legwright workshop -o workshop.json');
}

function writeUsual(terminal: Terminal, { output, units }: WorkshopOptions): ExitCode {
  const path = pathIn(terminal, output);
  if (existsSync(path)) {
    const message = 'There is a file of this name already: a workshop is never written over.';
    return showProblems(terminal, [{ code: 'file.exists', message, file: output }]);
  }
  const written = writeTogether([{ path, content: writeWorkshop(usualWorkshop(units)) }]);
  if (!written.ok) return showProblems(terminal, written.problems);
  say(terminal, `${output}: put your own tools in it, then begin designs with --workshop ${output}.`);
  return EXIT.fine;
}
