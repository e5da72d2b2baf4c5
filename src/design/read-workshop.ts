import { ok, type Result } from '../core/index.ts';
import type { JsonSource } from './json-source.ts';
import { readVersioned } from './versioned-file.ts';
import { WORKSHOP_VERSION, type Workshop, workshopSchema } from './workshop-schema.ts';

/**
 * Reads a workshop file. Problems: those of `readVersioned`, codes beginning with `workshop.`. Its lengths are looked into
 * when a design takes them over.
 */
export function readWorkshop(
  text: string,
  file: string,
): Result<{ readonly workshop: Workshop; readonly source: JsonSource }> {
  const read = readVersioned<Workshop>(text, file, {
    name: 'workshop',
    mark: 'legwright-workshop',
    version: WORKSHOP_VERSION,
    schema: workshopSchema,
  });
  return read.ok ? ok({ workshop: read.value.value, source: read.value.source }) : read;
}
