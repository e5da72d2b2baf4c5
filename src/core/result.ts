import type { Problem } from './problem.ts';

/**
 * What a stage that reads a maker's data returns: the value, or every problem found in the data.
 * A programmer's mistake throws instead.
 */
export type Result<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problems: readonly Problem[] };

export function ok<T>(value: T): Result<T> {
  return { ok: true, value };
}

export function fail(...problems: readonly Problem[]): {
  readonly ok: false;
  readonly problems: readonly Problem[];
} {
  return { ok: false, problems };
}
