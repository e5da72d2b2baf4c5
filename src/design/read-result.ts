import { ok, type Result } from '../core/index.ts';
import { RESULT_VERSION, resultSchema, type WrittenResult } from './result-schema.ts';
import { readVersioned } from './versioned-file.ts';

/** Reads a result file of an earlier run. Problems: those of `readVersioned`, codes beginning with `result.`. */
export function readResult(text: string, file: string): Result<WrittenResult> {
  const read = readVersioned<WrittenResult>(text, file, {
    name: 'result',
    mark: 'legwright-result',
    version: RESULT_VERSION,
    schema: resultSchema,
  });
  return read.ok ? ok(read.value.value) : read;
}
