import type { Command } from 'commander';
import { renewDesign } from '../../design/index.ts';
import { type Session, withExample } from '../command.ts';
import { computeInFile, loadDesign, saveDesign } from '../design-files.ts';
import { findForm } from '../find-form.ts';
import { changesTable } from '../renew/changes-table.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal, widthOf } from '../terminal.ts';

interface RenewOptions {
  readonly form?: string;
  readonly yes?: true;
  readonly json?: true;
}

/** `legwright renew`: takes a newer version of its form into a design, after showing what would change. */
export function addRenew(program: Command, session: Session): void {
  const command = program
    .command('renew')
    .summary('take over a newer version of the form, after seeing what changes')
    .description(
      'A design keeps the form it began with, so that an old template fits for ever. This lists what a newer version of the\nform would change: parameters and the sizes of every part. With --yes the design takes it over, and counts its revision up.',
    )
    .argument('<design>', 'the design file')
    .option('--form <form>', 'take this form instead: a name, or your own file (.yaml)')
    .option('--yes', 'take the form over; without it nothing is written')
    .option('--json', 'print the changes as JSON; lengths in mm, angles in radians')
    .action((path: string, options: RenewOptions) => session.end(renew(session.terminal, path, options)));
  withExample(command, 'legwright renew desk-leg.json', 'legwright renew desk-leg.json --yes');
}

function renew(terminal: Terminal, path: string, options: RenewOptions): ExitCode {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const before = file.value.design;
  const found = findForm(options.form ?? before.form.name, terminal);
  if (!found.ok) return showProblems(terminal, found.problems);
  const renewal = renewDesign(before, found.value, terminal.today);
  if (!renewal.ok) return showProblems(terminal, renewal.problems);
  const { design, changes } = renewal.value;
  const same = changes.length === 0 && design === before;
  const offer = `${before.form.name} version ${before.form.version} → ${design.form.name} version ${design.form.version}`;
  if (options.json)
    say(terminal, JSON.stringify({ from: before.form.version, to: design.form.version, changes }, null, 2));
  else if (same) say(terminal, `${path} has this very form already: nothing changes.`);
  else {
    say(terminal, `${path}: ${offer}`);
    say(
      terminal,
      changes.length === 0
        ? 'No parameter and no size changes.'
        : changesTable(changes, before, widthOf(terminal)),
    );
  }
  if (same) return EXIT.fine;
  if (!options.yes) {
    if (!options.json) say(terminal, '\nNothing has been written. Take the form over with --yes.');
    return EXIT.fine;
  }
  const sound = computeInFile(file.value, design, { wanted: { patterns: [] } });
  if (!sound.ok) return showProblems(terminal, sound.problems);
  const saved = saveDesign(terminal, path, design);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  if (!options.json)
    say(terminal, `\nTaken over: revision ${design.revision.index}, ${design.revision.date}.`);
  return EXIT.fine;
}
