import type { FigureToSet } from './figure-to-set.ts';

/** Something in a maker's input that cannot be used: where it is, what was found, what was expected. */
export interface Problem {
  /** Stable, dotted, lower case: `length.unreadable`, `form.cycle`. */
  readonly code: string;
  /** One sentence for the maker. */
  readonly message: string;
  /** The file's name as the maker gave it. */
  readonly file?: string;
  /** Counted from 1. */
  readonly line?: number;
  /** Counted from 1, in characters. */
  readonly column?: number;
  /** Path of names inside the file: `parameters.splay.default`. */
  readonly path?: string;
  readonly found?: string;
  readonly expected?: string;
  /** A figure with which it is gone, tried by computing again. */
  readonly set?: FigureToSet;
}
