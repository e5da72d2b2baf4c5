import { ok, type Result } from '../core/index.ts';
import { DESIGN_VERSION, type Design, designSchema } from './design-schema.ts';
import type { JsonSource } from './json-source.ts';
import { readVersioned } from './versioned-file.ts';

/** A design with where everything stands in its file, so that what is found later can be shown there. */
export interface DesignFile {
  readonly design: Design;
  readonly source: JsonSource;
}

/**
 * Reads a design file. `file` is its name for messages. Problems: those of `readVersioned`, codes beginning with
 * `design.`. Lengths, angles and the form itself are looked into by `compute`.
 */
export function readDesign(text: string, file: string): Result<DesignFile> {
  const read = readVersioned<Design>(text, file, {
    name: 'design',
    mark: 'legwright',
    version: DESIGN_VERSION,
    schema: designSchema,
  });
  return read.ok ? ok({ design: read.value.value, source: read.value.source }) : read;
}
