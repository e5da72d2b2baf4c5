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
 * Reads a file of a kind and checks it whole. Problems: those of `readJson`; `<kind>.cut-short`, `<kind>.newer`, `<kind>.older`,
 * `<kind>.wrong-kind`; `<kind>.unknown-name`, `<kind>.missing`, `<kind>.unusable`.
 */
export function readVersioned<T>(
  text: string,
  file: string,
  kind: FileKind<T>,
): Result<{ readonly value: T; readonly source: JsonSource }> {
  const strange = noneOfOurs(text, file, kind);
  if (strange) return fail(strange);
  const read = readJson(text, file);
  if (!read.ok) return endsTooSoon(read.problems, text, kind);
  const source = read.value;
  const wrong = wrongVersion(source, kind);
  if (wrong) return fail(wrong);
  const checked = checkBySchema(source, kind.schema, kind.name);
  return checked.ok ? ok({ value: checked.value, source }) : checked;
}

/** What has nothing of ours in it: an empty file, a picture, a text of another kind. */
function noneOfOurs<T>(
  text: string,
  file: string,
  { name, mark, version }: FileKind<T>,
): Problem | undefined {
  const begin = text.replace(/^\uFEFF/, '').trimStart();
  if (/^[{[]/.test(begin)) return undefined;
  const word = begin.slice(0, 24).split('\n')[0]!;
  const found =
    begin === ''
      ? 'an empty file'
      : /[^\P{C}\t]|\uFFFD/u.test(word)
        ? 'what is no text'
        : `a text that begins with “${word}”`;
  const expected = `"${mark}": ${version}`;
  const message = `This is not a ${name} file of Legwright: found ${found}.`;
  return { code: `${name}.wrong-kind`, message, file, line: 1, column: 1, found, expected };
}

/** Of a file that breaks off it helps more to hear that than what should have come next. */
function endsTooSoon(
  problems: readonly Problem[],
  text: string,
  { name }: Pick<FileKind<unknown>, 'name'>,
): Result<never> {
  return fail(
    ...problems.map((problem): Problem => {
      if (problem.code !== 'json.unexpected' || !isAtEnd(problem, text)) return problem;
      const message = `The file ends too soon: only a part of a ${name} is here. ${problem.message}`;
      return { ...problem, code: `${name}.cut-short`, message };
    }),
  );
}

/** Does a problem stand where the text ends, or at a quoted text that never closes? */
function isAtEnd({ found, line }: Problem, text: string): boolean {
  return found === 'the end of the file' || (line === text.split('\n').length && !/[}\]]\s*$/.test(text));
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
