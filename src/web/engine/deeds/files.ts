import type { Result } from '../../../core/index.ts';
import { type Design, readDesign, writeDesign } from '../../../design/index.ts';

/** Reads a design file, as the command line does. */
export function readFile({ text, name }: { readonly text: string; readonly name: string }): Result<Design> {
  const read = readDesign(text, name);
  return read.ok ? { ok: true, value: read.value.design } : read;
}

/** The text of a design's file, the same that the command line writes. */
export function writeFile(design: Design): string {
  return writeDesign(design);
}

/** Is a design that a browser has kept one that this version of the program can read? */
export function checkStored(design: Design): boolean {
  return readDesign(JSON.stringify(design), design.name).ok;
}
