import { fail, ok, type Problem, type Result } from '../core/index.ts';
import { DESIGN_VERSION, type Design, designSchema } from './design-schema.ts';
import { type JsonSource, placeOfValue, readJson } from './json-source.ts';
import { checkBySchema } from './schema-problems.ts';

/** A design with where everything stands in its file, so that what is found later can be shown there. */
export interface DesignFile {
  readonly design: Design;
  readonly source: JsonSource;
}

/**
 * Reads a design file. `file` is its name for messages. Problems: those of `readJson`; `design.newer`, `design.older`,
 * `design.not-a-design`; `design.unknown-name`, `design.missing`, `design.unusable`. Lengths, angles and the form
 * itself are looked into by `compute`.
 */
export function readDesign(text: string, file: string): Result<DesignFile> {
  const read = readJson(text, file);
  if (!read.ok) return read;
  const source = read.value;
  const wrong = wrongVersion(source);
  if (wrong) return fail(wrong);
  const checked = checkBySchema<Design>(source, designSchema, 'design');
  return checked.ok ? ok({ design: checked.value, source }) : checked;
}

/** Said before anything else: a file of another version would otherwise drown in unknown names. */
function wrongVersion(source: JsonSource): Problem | undefined {
  const { value } = source;
  const version =
    typeof value === 'object' && value !== null && 'legwright' in value ? value.legwright : undefined;
  if (version === DESIGN_VERSION) return undefined;
  const place = { file: source.file, path: 'legwright', ...placeOfValue(source, ['legwright']) };
  const expected = `"legwright": ${DESIGN_VERSION}`;
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    const found = version === undefined ? 'no "legwright"' : JSON.stringify(version);
    const message = `This is not a design file of Legwright: found ${found}, expected ${expected}.`;
    return { code: 'design.not-a-design', message, ...place, found, expected };
  }
  const newer = version > DESIGN_VERSION;
  const message = newer
    ? `The design was written by a newer Legwright (design version ${version}); this one reads version ${DESIGN_VERSION}. Update Legwright to open it; the file has not been touched.`
    : `There is no design version ${version}: the first is ${DESIGN_VERSION}.`;
  return {
    code: newer ? 'design.newer' : 'design.older',
    message,
    ...place,
    found: `version ${version}`,
    expected: `version ${DESIGN_VERSION}`,
  };
}
