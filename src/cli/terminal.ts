import { resolve } from 'node:path';

/** Where a command writes to and what it knows of the world; the tests give it another one. */
export interface Terminal {
  readonly out: TextStream;
  readonly err: TextStream;
  /** Folder that relative paths start from. */
  readonly folder: string;
  /** Today by ISO 8601, for the date of a new revision. */
  readonly today: string;
}

export interface TextStream {
  readonly write: (text: string) => unknown;
  readonly isTTY?: boolean | undefined;
  readonly columns?: number | undefined;
}

/** Exit codes, as in the README. */
export const EXIT = {
  fine: 0,
  /** The design is sound, but a finding says stop. */
  stop: 1,
  /** The command line or a file cannot be used. */
  unusable: 2,
  /** The output cannot be written; nothing has been changed. */
  unwritten: 3,
  /** A fault of this program. */
  fault: 4,
} as const;

export type ExitCode = (typeof EXIT)[keyof typeof EXIT];

export function say(terminal: Terminal, text: string): void {
  terminal.out.write(`${text}\n`);
}

export function complain(terminal: Terminal, text: string): void {
  terminal.err.write(`${text}\n`);
}

/** A path as the maker gave it, from the folder the command runs in. */
export function pathIn(terminal: Terminal, path: string): string {
  return resolve(terminal.folder, path);
}

/** Columns of text; a file or a pipe takes long lines. */
export function widthOf(terminal: Terminal): number {
  return terminal.out.columns ?? 110;
}
