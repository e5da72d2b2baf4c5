import type { Vec } from '../api.ts';

/** x' = a x + c y + e, y' = b x + d y + f, as SVG names them. */
export interface Affine {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
  readonly e: number;
  readonly f: number;
}

export const IDENTITY: Affine = { a: 1, b: 0, c: 0, d: 1, e: 0, f: 0 };

export function applyToPoint({ a, b, c, d, e, f }: Affine, { x, y }: Vec): Vec {
  return { x: a * x + c * y + e, y: b * x + d * y + f };
}

export function applyToDirection({ a, b, c, d }: Affine, { x, y }: Vec): Vec {
  return { x: a * x + c * y, y: b * x + d * y };
}

/** First `inner`, then `outer`. */
export function compose(outer: Affine, inner: Affine): Affine {
  return {
    a: outer.a * inner.a + outer.c * inner.b,
    b: outer.b * inner.a + outer.d * inner.b,
    c: outer.a * inner.c + outer.c * inner.d,
    d: outer.b * inner.c + outer.d * inner.d,
    e: outer.a * inner.e + outer.c * inner.f + outer.e,
    f: outer.b * inner.e + outer.d * inner.f + outer.f,
  };
}
