import { existsSync } from 'node:fs';
import { basename, extname, isAbsolute, join, normalize, relative } from 'node:path';
import { fail, ok, type Result } from '../../core/index.ts';
import { readTextFile } from '../../design/files.ts';
import { readResult, type WrittenResult } from '../../design/index.ts';
import { pathIn, type Terminal } from '../terminal.ts';

/** Where the output of one design goes: the folder asked for, or one of its own in it when several designs are made. */
export function folderFor(designPath: string, output: string, several: boolean): string {
  return several ? join(output, basename(designPath, extname(designPath))) : output;
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
  next: { readonly design: string; readonly files: readonly string[] },
): Result<readonly string[]> {
  const path = join(folder, 'result.json');
  if (!existsSync(pathIn(terminal, path))) return ok([]);
  const earlier = loadResult(terminal, path);
  // A result that cannot be read says nothing about which files are ours.
  if (!earlier.ok) return ok([]);
  const { design, files } = earlier.value;
  if (design.name !== next.design) {
    const message = `The folder holds the output of another design, "${design.name}". Choose another folder, or write over it with --force.`;
    return fail({ code: 'make.other-design', message, file: folder });
  }
  return ok(files.filter((file) => !next.files.includes(file) && isInside(file)));
}

/** A result file may come from anywhere: only what lies in its own folder is ever taken away. */
function isInside(file: string): boolean {
  const steps = relative('.', normalize(file));
  return steps !== '' && !steps.startsWith('..') && !isAbsolute(file) && !isAbsolute(steps);
}
