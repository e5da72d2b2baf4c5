import type { Command } from 'commander';
import type { ExitCode, Terminal } from './terminal.ts';

/** What each command is given: where to write, and how to say what the exit code will be. The gravest counts. */
export interface Session {
  readonly terminal: Terminal;
  readonly end: (code: ExitCode) => void;
}

/** Adds one command to the program. */
export type AddCommand = (program: Command, session: Session) => void;

/** An example under a command's help. */
export function withExample(command: Command, ...lines: readonly string[]): Command {
  const heading = lines.length > 1 ? 'Examples:' : 'Example:';
  return command.addHelpText('after', `\n${heading}\n${lines.map((line) => `  ${line}`).join('\n')}`);
}
