import type { Problem } from '../core/index.ts';
import { complain, EXIT, type ExitCode, type Terminal } from './terminal.ts';

/** Each problem as `file:line:column: message`, on the error stream. The exit code says what kind they are. */
export function showProblems(terminal: Terminal, problems: readonly Problem[]): ExitCode {
  for (const problem of problems) complain(terminal, problemLine(problem));
  return problems.some(({ code }) => code === 'write.refused') ? EXIT.unwritten : EXIT.unusable;
}

function problemLine(problem: Problem): string {
  const { file, line, column, set } = problem;
  const message = withName(problem);
  const words = set === undefined ? message : `${message.replace(/\.$/, '')}. ${set.words} would do.`;
  const place = [file, line, column].filter((step) => step !== undefined).join(':');
  return place ? `${place}: ${words}` : words;
}

/** A figure of the form is told by its label; who types it here needs its name: `Overall height (overall_height) is …`. */
function withName({ message, path }: Problem): string {
  const name = /(?:^|\.)parameters\.(\w+)$/.exec(path ?? '')?.[1];
  const label = /^(.+?)(?= is |: )/.exec(message)?.[1];
  if (name === undefined || label === undefined || message.includes(name)) return message;
  return label.toLowerCase() === name ? message : `${label} (${name})${message.slice(label.length)}`;
}
