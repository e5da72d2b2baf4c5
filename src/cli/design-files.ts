import { existsSync } from 'node:fs';
import { fail, type Result } from '../core/index.ts';
import { readTextFile } from '../design/files.ts';
import {
  type Computed,
  type ComputeOptions,
  compute,
  computeWithCures,
  type Design,
  type DesignFile,
  placeProblems,
  readDesign,
  writeDesign,
} from '../design/index.ts';
import { pathIn, type Terminal } from './terminal.ts';
import { type FileToWrite, writeTogether } from './write-together.ts';

/** The design in a file, as the maker names it. */
export function loadDesign(terminal: Terminal, path: string): Result<DesignFile> {
  const text = readTextFile(pathIn(terminal, path), path);
  return text.ok ? readDesign(text.value, path) : text;
}

/** Everything that follows from a design, its problems shown where they stand in the file. */
export function computeInFile(
  { source }: DesignFile,
  design: Design,
  options?: ComputeOptions,
): Result<Computed> {
  const computed = compute(design, options);
  return computed.ok ? computed : { ok: false, problems: placeProblems(source, computed.problems) };
}

/** The same, with a figure to set beside what stops the design, or what it warns of. */
export function curesInFile({ source, design }: DesignFile, options?: ComputeOptions): Result<Computed> {
  const computed = computeWithCures(design, { ...options, cautions: true });
  return computed.ok ? computed : { ok: false, problems: placeProblems(source, computed.problems) };
}

export function designToWrite(terminal: Terminal, path: string, design: Design): FileToWrite {
  return { path: pathIn(terminal, path), content: writeDesign(design) };
}

/** Writes a design in place of what its file held, whole or not at all. */
export function saveDesign(terminal: Terminal, path: string, design: Design): Result<void> {
  return writeTogether([designToWrite(terminal, path, design)]);
}

/** Writes a new design; one that is there already is kept, unless `force` says otherwise. */
export function saveNewDesign(
  terminal: Terminal,
  path: string,
  design: Design,
  force: boolean,
): Result<void> {
  if (!force && existsSync(pathIn(terminal, path))) {
    const message = 'There is a file of this name already. Choose another name, or replace it with --force.';
    return fail({ code: 'file.exists', message, file: path });
  }
  return saveDesign(terminal, path, design);
}
