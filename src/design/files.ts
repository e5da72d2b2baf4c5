import { readFileSync, statSync } from 'node:fs';
import { fail, ok, type Result } from '../core/index.ts';

/** Larger files are none of ours; refused before they are read into memory. Bytes. */
const LARGEST_FILE = 64_000_000;

/**
 * A text file (UTF-8), whole. `name` is how messages call it. Problems: `file.missing`, `file.unreadable`,
 * `file.too-large`, `file.not-text`.
 */
export function readTextFile(path: string, name: string): Result<string> {
  try {
    const { size } = statSync(path);
    if (size > LARGEST_FILE) {
      const message = `The file is too large: ${size} bytes, at most ${LARGEST_FILE} are read.`;
      return fail({ code: 'file.too-large', message, file: name });
    }
    return ok(new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(readFileSync(path)));
  } catch (cause) {
    if (cause instanceof TypeError) {
      const message = 'The file is not text in UTF-8.';
      return fail({ code: 'file.not-text', message, file: name });
    }
    const code = systemCodeOf(cause);
    if (code === undefined) throw cause;
    const missing = code === 'ENOENT';
    const message = missing ? 'There is no such file.' : `The file cannot be read (${code}).`;
    return fail({ code: missing ? 'file.missing' : 'file.unreadable', message, file: name });
  }
}

/** The operating system's own code (`ENOENT`), when the cause is a refusal of its. */
export function systemCodeOf(cause: unknown): string | undefined {
  return cause instanceof Error && 'code' in cause && typeof cause.code === 'string' && 'syscall' in cause
    ? cause.code
    : undefined;
}
