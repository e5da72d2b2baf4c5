import type { Kind } from '../expression/kind.ts';
import type { FormData } from '../schema/form.ts';
import type { Place } from '../source/place.ts';

/** A form that was read and checked: every name is known, every unit fits, nothing needs itself. */
export interface Form {
  /** As the maker types it: `knee-leg`. */
  readonly name: string;
  readonly version: number;
  readonly title: string;
  readonly about: string;
  /** The file it was read from, as it was called. */
  readonly file: string;
  readonly data: FormData;
  /** Place of everything in the file by its path, and of every key by `path#key`. */
  readonly places: ReadonlyMap<string, Place>;
  /** Kind of every parameter, value, point and plane. */
  readonly kinds: ReadonlyMap<string, Kind>;
  /** Values, points, planes and edges (`outline[2]`), each after everything it needs. */
  readonly order: readonly string[];
}
