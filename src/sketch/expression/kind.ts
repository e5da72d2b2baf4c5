/** What an expression gives: known when the form is read, before any parameter has a value. */
export type Kind =
  /** Products of lengths and angles: an area is length 2, angle 0; a plain number 0, 0. */
  | { readonly type: 'quantity'; readonly length: number; readonly angle: number }
  /** A bare 0, which fits every quantity. */
  | { readonly type: 'zero' }
  | { readonly type: 'flag' }
  | { readonly type: 'choice'; readonly options: readonly string[] }
  | { readonly type: 'point' }
  | { readonly type: 'plane' };

export const NUMBER: Kind = { type: 'quantity', length: 0, angle: 0 };
export const LENGTH: Kind = { type: 'quantity', length: 1, angle: 0 };
export const ANGLE: Kind = { type: 'quantity', length: 0, angle: 1 };
export const FLAG: Kind = { type: 'flag' };
export const POINT: Kind = { type: 'point' };
export const PLANE: Kind = { type: 'plane' };
export const ZERO: Kind = { type: 'zero' };

/** The kind in words with its article: `a length`, `an area`, `a length times an angle`. */
export function nameOfKind(kind: Kind): string {
  switch (kind.type) {
    case 'zero':
      return 'a number';
    case 'flag':
      return 'a yes or no';
    case 'choice':
      return 'a choice';
    case 'point':
      return 'a point';
    case 'plane':
      return 'a plane';
    case 'quantity':
      return nameOfQuantity(kind.length, kind.angle);
    default:
      return kind satisfies never;
  }
}

const LENGTHS: Readonly<Record<number, string>> = {
  0: 'a number',
  1: 'a length',
  2: 'an area',
  3: 'a volume',
};

function nameOfQuantity(length: number, angle: number): string {
  if (angle === 0) {
    if (length >= 0) return LENGTHS[length] ?? `a length to the power ${length}`;
    return length === -1 ? 'a number per length' : `a number per length to the power ${-length}`;
  }
  const angles = angle === 1 ? 'an angle' : `an angle to the power ${angle}`;
  return length === 0 ? angles : `${nameOfQuantity(length, 0)} times ${angles}`;
}

/** The one kind that both are, a bare 0 giving way; nothing when they differ. */
export function commonKind(a: Kind, b: Kind): Kind | undefined {
  if (a.type === 'zero' && (b.type === 'quantity' || b.type === 'zero')) return b;
  if (b.type === 'zero' && a.type === 'quantity') return a;
  if (a.type !== b.type) return undefined;
  if (a.type === 'quantity' && b.type === 'quantity') {
    return a.length === b.length && a.angle === b.angle ? a : undefined;
  }
  if (a.type === 'choice' && b.type === 'choice') {
    return a.options.join() === b.options.join() ? a : undefined;
  }
  return a;
}
