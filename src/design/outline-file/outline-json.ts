import { z } from 'zod';
import { fail, ok, type Result } from '../../core/index.ts';
import { findFaults, type Region } from '../../geometry/index.ts';
import { readRegion, regionSchema, writeRegion } from '../region-schema.ts';
import { placeProblems } from '../schema-problems.ts';
import { strictObject } from '../strict-schema.ts';
import { readVersioned } from '../versioned-file.ts';
import type { ReadOutlines } from './outline-svg.ts';

const OUTLINE_VERSION = 1;

const outlineSchema = strictObject({
  'legwright-outline': z.literal(OUTLINE_VERSION),
  regions: z.array(regionSchema),
});

/**
 * Regions from a JSON file of outlines: `{ "legwright-outline": 1, "regions": … }`, regions as in a result file, mm.
 * Problems: those of `readVersioned`, codes beginning with `outline.`; `outline.fault` where a loop is open or crosses.
 */
export function readOutlineJson(text: string, file: string): Result<ReadOutlines> {
  const read = readVersioned(text, file, {
    name: 'outline',
    mark: 'legwright-outline',
    version: OUTLINE_VERSION,
    schema: outlineSchema,
  });
  if (!read.ok) return read;
  const regions = read.value.value.regions.map(readRegion);
  const faults = findFaults(regions).map(({ region, loop, edge, message }) => ({
    code: 'outline.fault',
    message: `The outlines cannot be used: ${message}`,
    path: `regions.${region}.${loop === 0 ? 'outer' : `holes.${loop - 1}`}.${edge}`,
  }));
  return faults.length > 0 ? fail(...placeProblems(read.value.source, faults)) : ok({ regions, remarks: [] });
}

export function writeOutlineJson(regions: readonly Region[]): string {
  const written = { 'legwright-outline': OUTLINE_VERSION, regions: regions.map(writeRegion) };
  return `${JSON.stringify(written, null, 2)}\n`;
}
