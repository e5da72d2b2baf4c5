import type { Command } from 'commander';
import { designLink, readLink } from '../../design/index.ts';
import { type Session, withExample } from '../command.ts';
import { loadDesign, saveNewDesign } from '../design-files.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';

/** `legwright link`: a design whole in one line of text. */
export function addLink(program: Command, session: Session): void {
  const command = program
    .command('link')
    .summary('print a link that holds a design whole')
    .description(
      'Prints one line that holds the whole design but its photographs: to mail it, or to keep it where no file fits.\nEverything stands behind the # of the link, which no browser sends anywhere. The square code on the first sheet of\neach pattern holds the same line.',
    )
    .argument('<design>', 'the design file')
    .option('--site <address>', 'where the app is found; without it, the design’s own site or none')
    .action((path: string, options: { readonly site?: string }) =>
      session.end(printLink(session.terminal, path, options.site)),
    );
  withExample(command, 'legwright link desk-leg.json');
}

function printLink(terminal: Terminal, path: string, site: string | undefined): ExitCode {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const { design } = file.value;
  say(terminal, designLink(design, site ?? design.site));
  return EXIT.fine;
}

/** `legwright from-link`: the design in a link, or in the text of square codes, as a file. */
export function addFromLink(program: Command, session: Session): void {
  const command = program
    .command('from-link')
    .summary('write the design that a link or a square code holds')
    .description(
      'Takes a link, or what a square code on a pattern reads as, and writes the design in it. Of a design in several\ncodes give the text of each, in any order. Quote them: the # would begin a comment.',
    )
    .argument('<link...>', 'the link, or the text of every code')
    .requiredOption('-o, --output <file>', 'the design file to write')
    .option('--force', 'replace a file that is there already')
    .action((links: string[], options: { readonly output: string; readonly force?: true }) =>
      session.end(writeFromLink(session.terminal, links, options.output, options.force === true)),
    );
  withExample(command, 'legwright from-link "legwright:#design=1.AKQm…" -o found.json');
}

function writeFromLink(
  terminal: Terminal,
  links: readonly string[],
  output: string,
  force: boolean,
): ExitCode {
  const read = readLink(links.join('\n'));
  if (!read.ok) return showProblems(terminal, read.problems);
  const { design } = read.value;
  const saved = saveNewDesign(terminal, output, design, force);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  say(terminal, `${output}: ${design.name}, revision ${design.revision.index} of ${design.revision.date}.`);
  return EXIT.fine;
}
