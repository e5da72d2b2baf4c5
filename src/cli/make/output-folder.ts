import { existsSync } from 'node:fs';
import { basename, extname, join } from 'node:path';
import { fail, ok, type Result } from '../../core/index.ts';
import { readTextFile } from '../../design/files.ts';
import { readResult, type WrittenResult } from '../../design/index.ts';
import { pathIn, type Terminal } from '../terminal.ts';

/** Where the output of one design goes: the folder asked for, or one of its own in it when several designs are made. */
export function folderFor(designPath: string, output: string, several: boolean): string {
  return several ? join(output, basename(designPath, extname(designPath))) : output;
}

/** What tells one design from another when their names are alike. */
export interface DesignIdentity {
  readonly name: string;
  /** Name of its form. */
  readonly form: string;
  /** Name of its file, without the folder. */
  readonly file: string;
}

/** Is a result that of this design? One written before results named the design's file is taken by its name and form. */
export function isSameDesign({ design }: WrittenResult, { name, form, file }: DesignIdentity): boolean {
  return design.name === name && design.form.name === form && (design.file ?? file) === file;
}

/** Which design a result is of: `"Desk" (splayed-leg, desk.json)`. */
export function identityWords({ design: { name, form, file } }: WrittenResult): string {
  return `"${name}" (${file === undefined ? form.name : `${form.name}, ${file}`})`;
}

/** An earlier result by its file. */
export function loadResult(terminal: Terminal, path: string): Result<WrittenResult> {
  const text = readTextFile(pathIn(terminal, path), path);
  return text.ok ? readResult(text.value, path) : text;
}

/**
 * Files of an earlier run in the folder that the new run does not write again: sheets of a pattern that is no longer
 * wanted must not be taken for current ones. A folder that holds the output of another design is refused.
 */
export function staleFiles(
  terminal: Terminal,
  folder: string,
  next: { readonly design: DesignIdentity; readonly files: readonly string[] },
): Result<readonly string[]> {
  const path = join(folder, 'result.json');
  if (!existsSync(pathIn(terminal, path))) return ok([]);
  const earlier = loadResult(terminal, path);
  // A result that cannot be read says nothing about which files are ours.
  if (!earlier.ok) return ok([]);
  const { files } = earlier.value;
  if (!isSameDesign(earlier.value, next.design)) {
    const message = `The folder holds the output of another design, ${identityWords(earlier.value)}. Choose another folder, or write over it with --force.`;
    return fail({ code: 'make.other-design', message, file: folder });
  }
  return ok(files.filter((file) => !next.files.includes(file) && isOurs(file, next.design.file)));
}

/** What this program writes, by name: patterns and their changed sheets, drawings, outlines to cut. */
const OURS = /^(?:[a-z0-9_-]+\.pdf|(?:drawings|cutting)\/[a-z0-9_-]+\.svg)$/;

/** A result file may come from anywhere: only what this program writes into its own folder is ever taken away. */
function isOurs(file: string, design: string): boolean {
  return file !== design && OURS.test(file.replaceAll('\\', '/'));
}
