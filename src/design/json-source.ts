import { fail, ok, type Problem, type Result } from '../core/index.ts';

/**
 * A JSON text with the place of every value in it, so that whatever is wrong with a value later on can be
 * shown where it stands. (The reader built into the language gives no places, and keeps the last of two equal keys.)
 */
export interface JsonSource {
  /** The file's name as the maker gave it. */
  readonly file: string;
  readonly value: unknown;
  /** By `placeKey`: where a value begins. */
  readonly values: ReadonlyMap<string, Place>;
  /** By `placeKey`: where the name of a value begins. */
  readonly names: ReadonlyMap<string, Place>;
}

/** Both counted from 1; the column in characters. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

export type JsonPath = readonly (string | number)[];

/** No file of ours nests deeper than about 12; a hostile one may not exhaust the stack. */
const MOST_LEVELS = 64;
/** Characters. A result with many parts stays well below it. */
const MOST_CHARACTERS = 64_000_000;

/**
 * Reads JSON (RFC 8259), keeping where every value stands. Of two equal names in one object the second is refused.
 * Problems: `json.too-large`, `json.too-deep`, `json.unexpected`, `json.repeated-name`, `json.refused-name`.
 */
export function readJson(text: string, file: string): Result<JsonSource> {
  if (text.length > MOST_CHARACTERS) {
    return fail({
      code: 'json.too-large',
      message: `The file is too large: ${text.length} characters, at most ${MOST_CHARACTERS} are read.`,
      file,
    });
  }
  const values = new Map<string, Place>();
  const names = new Map<string, Place>();
  const placeOf = placesIn(text);
  const start = text.startsWith('\uFEFF') ? 1 : 0;
  try {
    const cursor: Cursor = { text, at: start };
    const value = readValue(cursor, [], { values, names, placeOf });
    skipSpace(cursor);
    if (cursor.at < text.length) throw new Unexpected(cursor.at, 'json.unexpected', 'the end of the file');
    return ok({ file, value, values, names });
  } catch (cause) {
    if (!(cause instanceof Unexpected)) throw cause;
    return fail(problemOf(cause, text, file, placeOf(cause.at)));
  }
}

export function placeKey(path: JsonPath): string {
  return path.join('\0');
}

/** Where a value stands; for one that is missing, where the nearest value round it stands. */
export function placeOfValue(source: JsonSource, path: JsonPath): Place | undefined {
  for (let length = path.length; length >= 0; length--) {
    const place = source.values.get(placeKey(path.slice(0, length)));
    if (place) return place;
  }
  return undefined;
}

interface Cursor {
  readonly text: string;
  at: number;
}

interface Record_ {
  readonly values: Map<string, Place>;
  readonly names: Map<string, Place>;
  readonly placeOf: (at: number) => Place;
}

/** Carries the first fault out of the recursion; never leaves this file. */
class Unexpected extends Error {
  constructor(
    readonly at: number,
    readonly code: string,
    readonly expected: string,
  ) {
    super(code);
  }
}

function readValue(cursor: Cursor, path: JsonPath, record: Record_): unknown {
  skipSpace(cursor);
  const { text, at } = cursor;
  record.values.set(placeKey(path), record.placeOf(at));
  const first = text[at];
  if (first === '{' || first === '[') {
    if (path.length >= MOST_LEVELS)
      throw new Unexpected(at, 'json.too-deep', `at most ${MOST_LEVELS} levels`);
    return first === '{' ? readObject(cursor, path, record) : readArray(cursor, path, record);
  }
  if (first === '"') return readString(cursor);
  const word = /(?:true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?)(?![\w.+-])/y;
  word.lastIndex = at;
  const found = word.exec(text);
  if (!found) throw new Unexpected(at, 'json.unexpected', 'a value');
  cursor.at += found[0].length;
  return JSON.parse(found[0]);
}

function readObject(cursor: Cursor, path: JsonPath, record: Record_): Record<string, unknown> {
  const object: Record<string, unknown> = {};
  cursor.at++;
  skipSpace(cursor);
  if (take(cursor, '}')) return object;
  do {
    skipSpace(cursor);
    const at = cursor.at;
    if (cursor.text[at] !== '"') throw new Unexpected(at, 'json.unexpected', 'a name in double quotes');
    const name = readString(cursor);
    if (Object.hasOwn(object, name)) throw new Unexpected(at, 'json.repeated-name', 'each name once');
    if (name === '__proto__') throw new Unexpected(at, 'json.refused-name', 'another name');
    record.names.set(placeKey([...path, name]), record.placeOf(at));
    skipSpace(cursor);
    if (!take(cursor, ':')) throw new Unexpected(cursor.at, 'json.unexpected', '":" after the name');
    object[name] = readValue(cursor, [...path, name], record);
    skipSpace(cursor);
  } while (take(cursor, ','));
  if (!take(cursor, '}')) throw new Unexpected(cursor.at, 'json.unexpected', '"," or "}" after the value');
  return object;
}

function readArray(cursor: Cursor, path: JsonPath, record: Record_): unknown[] {
  const array: unknown[] = [];
  cursor.at++;
  skipSpace(cursor);
  if (take(cursor, ']')) return array;
  do {
    array.push(readValue(cursor, [...path, array.length], record));
    skipSpace(cursor);
  } while (take(cursor, ','));
  if (!take(cursor, ']')) throw new Unexpected(cursor.at, 'json.unexpected', '"," or "]" after the value');
  return array;
}

function readString(cursor: Cursor): string {
  const { text, at } = cursor;
  let end = at + 1;
  while (end < text.length && text[end] !== '"' && text.charCodeAt(end) >= 0x20) {
    end += text[end] === '\\' ? 2 : 1;
  }
  if (text[end] !== '"')
    throw new Unexpected(at, 'json.unexpected', 'a closing double quote on the same line');
  cursor.at = end + 1;
  try {
    return JSON.parse(text.slice(at, end + 1)) as string;
  } catch {
    throw new Unexpected(at, 'json.unexpected', 'a text with sound escapes');
  }
}

function skipSpace(cursor: Cursor): void {
  while (' \t\r\n'.includes(cursor.text[cursor.at] ?? '·')) cursor.at++;
}

function take(cursor: Cursor, character: string): boolean {
  if (cursor.text[cursor.at] !== character) return false;
  cursor.at++;
  return true;
}

/** Line and column of a character; asked for in rising order, so that one walk over the text serves all. */
function placesIn(text: string): (at: number) => Place {
  let line = 1;
  let lineStart = 0;
  // Looked for once a line: a file may be one line of many megabytes.
  let lineEnd = text.indexOf('\n');
  return (at) => {
    while (lineEnd >= 0 && lineEnd < at) {
      line++;
      lineStart = lineEnd + 1;
      lineEnd = text.indexOf('\n', lineStart);
    }
    return { line, column: at - lineStart + 1 };
  };
}

function problemOf(cause: Unexpected, text: string, file: string, place: Place): Problem {
  const found = cause.at >= text.length ? 'the end of the file' : excerptAt(text, cause.at);
  const message = `Found ${found}, expected ${cause.expected}.`;
  return { code: cause.code, message, file, ...place, found, expected: cause.expected };
}

/** The word, quoted text or sign at a place, cut short. */
function excerptAt(text: string, at: number): string {
  const word = /"[^"\n]*"?|[\w.+-]+|[^\n]/y;
  word.lastIndex = at;
  const found = word.exec(text)?.[0] ?? 'a line break';
  return found.length > 30 ? `${found.slice(0, 30)}…` : found;
}
