/** Where something stands in a form's file. Lines and columns count from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
  /** Names on the way to it: `points.knee.by`. */
  readonly path: string;
}

/** One text of the file that is neither a map nor a list, with its place. */
export interface Scalar {
  readonly kind: 'scalar';
  readonly text: string;
  readonly place: Place;
  /** Whether the characters of `text` stand one after another in one line of the file, so that columns inside it are known. */
  readonly oneLine: boolean;
}

/** A form's file as plain data: texts with their places, lists, and maps of them. */
export type Tree = Scalar | readonly Tree[] | { readonly [key: string]: Tree };

export function isScalar(value: unknown): value is Scalar {
  return typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'scalar';
}

/** The place of a character inside a text. */
export function placeWithin(scalar: Scalar, offset: number): Place {
  const { place, oneLine } = scalar;
  return oneLine ? { ...place, column: place.column + offset } : place;
}
