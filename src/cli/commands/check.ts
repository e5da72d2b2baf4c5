import type { Command } from 'commander';
import { resultOf } from '../../design/index.ts';
import { type Session, withExample } from '../command.ts';
import { curesInFile, loadDesign } from '../design-files.ts';
import { countFindings, findingsTable } from '../findings-table.ts';
import { showProblems } from '../show-problems.ts';
import { solidsFor } from '../solids.ts';
import { EXIT, type ExitCode, say, type Terminal, widthOf } from '../terminal.ts';

/** `legwright check`: what the checks have to say, before a board is cut. */
export function addCheck(program: Command, session: Session): void {
  const command = program
    .command('check')
    .summary('say what will go wrong, before a board is cut')
    .description(
      'Prints what the checks have to say of a design. The exit code is 1 when one of them says stop; beside it stands one\nfigure that would do, where one alone does. Where nothing stops, cautions get such a figure.',
    )
    .argument('<design>', 'the design file')
    .option('--json', 'print the findings as JSON, as they stand in result.json')
    .action(async (path: string, options: { readonly json?: true }) =>
      session.end(await checkDesign(session.terminal, path, options.json === true)),
    );
  withExample(command, 'legwright check desk-leg.json');
}

async function checkDesign(terminal: Terminal, path: string, json: boolean): Promise<ExitCode> {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const computed = curesInFile(file.value, await solidsFor(file.value.design));
  if (!computed.ok) return showProblems(terminal, computed.problems);
  const { findings } = computed.value;
  if (json) say(terminal, JSON.stringify(resultOf(computed.value).findings, null, 2));
  else {
    say(terminal, findingsTable(computed.value, widthOf(terminal)));
    if (findings.length > 0) say(terminal, `\n${path}: ${countFindings(findings)}.`);
  }
  return findings.some(({ severity }) => severity === 'stop') ? EXIT.stop : EXIT.fine;
}
