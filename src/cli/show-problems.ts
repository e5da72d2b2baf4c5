import type { Problem } from '../core/index.ts';
import { complain, EXIT, type ExitCode, type Terminal } from './terminal.ts';

/** Each problem as `file:line:column: message`, on the error stream. The exit code says what kind they are. */
export function showProblems(terminal: Terminal, problems: readonly Problem[]): ExitCode {
  for (const problem of problems) complain(terminal, problemLine(problem));
  return problems.some(({ code }) => code === 'write.refused') ? EXIT.unwritten : EXIT.unusable;
}

function problemLine({ file, line, column, message, set }: Problem): string {
  const words = set === undefined ? message : `${message.replace(/\.$/, '')}. ${set.words} would do.`;
  const place = [file, line, column].filter((step) => step !== undefined).join(':');
  return place ? `${place}: ${words}` : words;
}
