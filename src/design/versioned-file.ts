import type { z } from 'zod';
import { fail, ok, type Problem, type Result } from '../core/index.ts';
import { type JsonSource, placeOfValue, readJson } from './json-source.ts';
import { checkBySchema } from './schema-problems.ts';

/** One kind of file of ours: the name of its version at the top, and the version this program reads and writes. */
export interface FileKind<T> {
  /** Prefix of its problems' codes, and its name in words. */
  readonly name: 'design' | 'workshop' | 'result' | 'outline';
  readonly mark: string;
  readonly version: number;
  readonly schema: z.ZodType<T>;
}

/**
 * Reads a file of a kind and checks it whole. Problems: those of `readJson`; `<kind>.newer`, `<kind>.older`,
 * `<kind>.wrong-kind`; `<kind>.unknown-name`, `<kind>.missing`, `<kind>.unusable`.
 */
export function readVersioned<T>(
  text: string,
  file: string,
  kind: FileKind<T>,
): Result<{ readonly value: T; readonly source: JsonSource }> {
  const read = readJson(text, file);
  if (!read.ok) return read;
  const source = read.value;
  const wrong = wrongVersion(source, kind);
  if (wrong) return fail(wrong);
  const checked = checkBySchema(source, kind.schema, kind.name);
  return checked.ok ? ok({ value: checked.value, source }) : checked;
}

/** Said before anything else: a file of another version would otherwise drown in unknown names. */
function wrongVersion<T>(source: JsonSource, kind: FileKind<T>): Problem | undefined {
  const { name, mark, version: known } = kind;
  const version = versionIn(source.value, mark);
  if (version === known) return undefined;
  const place = { file: source.file, path: mark, ...placeOfValue(source, [mark]) };
  const expected = `"${mark}": ${known}`;
  if (typeof version !== 'number' || !Number.isInteger(version)) {
    const found = version === undefined ? `no "${mark}"` : JSON.stringify(version);
    const message = `This is not a ${name} file of Legwright: found ${found}, expected ${expected}.`;
    return { code: `${name}.wrong-kind`, message, ...place, found, expected };
  }
  const newer = version > known;
  const message = newer
    ? `The ${name} was written by a newer Legwright (${name} version ${version}); this one reads version ${known}. Update Legwright to open it; the file has not been touched.`
    : `There is no ${name} version ${version}: the first is ${known}.`;
  const code = `${name}.${newer ? 'newer' : 'older'}`;
  return { code, message, ...place, found: `"${mark}": ${version}`, expected };
}

function versionIn(value: unknown, mark: string): unknown {
  return typeof value === 'object' && value !== null && Object.hasOwn(value, mark)
    ? (value as Record<string, unknown>)[mark]
    : undefined;
}
