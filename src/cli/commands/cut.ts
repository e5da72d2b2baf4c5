import type { Command } from 'commander';
import type { Problem } from '../../core/index.ts';
import type { Design } from '../../design/index.ts';
import { type Session, withExample } from '../command.ts';
import { computeInFile, loadDesign, saveDesign } from '../design-files.ts';
import { showProblems } from '../show-problems.ts';
import { EXIT, type ExitCode, say, type Terminal } from '../terminal.ts';

/** `legwright cut`: parts that are cut keep their shape. */
export function addCut(program: Command, session: Session): void {
  const command = program
    .command('cut')
    .summary('say which parts are cut already')
    .description(
      'Parts that are cut keep the shape that they have now, whatever is decided or measured later; what no longer fits is\nsaid by check. With --undo they follow the form again.',
    )
    .argument('<design>', 'the design file')
    .argument('<part...>', 'parts of the form')
    .option('--undo', 'they are not cut after all, or are made anew')
    .action((path: string, parts: string[], options: { readonly undo?: true }) =>
      session.end(markCut(session.terminal, path, parts, options.undo === true)),
    );
  withExample(command, 'legwright cut table.json leg', 'legwright cut table.json leg --undo');
}

function markCut(terminal: Terminal, path: string, parts: readonly string[], undo: boolean): ExitCode {
  const file = loadDesign(terminal, path);
  if (!file.ok) return showProblems(terminal, file.problems);
  const before = file.value.design;
  const cut = new Map(Object.entries(before.cut ?? {}));
  const strangers = undo ? parts.filter((part) => !cut.has(part)) : [];
  if (strangers.length > 0) {
    return showProblems(
      terminal,
      strangers.map((part) => notCut(part, [...cut.keys()])),
    );
  }
  const said = [...new Set(parts)].map((part): string => {
    const known = cut.get(part);
    if (undo) {
      cut.delete(part);
      return `${part} follows the form again`;
    }
    // What is cut already was cut to the figures of that day.
    if (known !== undefined) return `${part} was cut at revision ${known.revision} already`;
    const { parameters, measured, revision } = before;
    cut.set(part, { revision: revision.index, parameters, measured });
    return `${part} is cut at revision ${revision.index}`;
  });
  const { cut: _, ...rest } = before;
  const design: Design = cut.size === 0 ? rest : { ...rest, cut: Object.fromEntries(cut) };
  const computed = computeInFile(file.value, design, { wanted: { patterns: [] } });
  if (!computed.ok) {
    // The part was typed on the command line and stands nowhere in the file.
    return showProblems(
      terminal,
      computed.problems.map(({ line: _line, column: _column, ...problem }) => problem),
    );
  }
  const saved = saveDesign(terminal, path, design);
  if (!saved.ok) return showProblems(terminal, saved.problems);
  say(terminal, `${path}: ${said.join('; ')}.`);
  return EXIT.fine;
}

function notCut(found: string, known: readonly string[]): Problem {
  const expected = known.length === 0 ? 'a part that is, and none is' : `one of: ${known.join(', ')}`;
  const message = `"${found}" is not among the parts that are cut: expected ${expected}.`;
  return { code: 'command.not-cut', message, found, expected };
}
