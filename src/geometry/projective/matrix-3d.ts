import type { Projection } from './api.ts';

/** The sixteen numbers, column by column, that a page or a picture library in space wants for the same transform of its plane z = 0. */
export function matrix3d([a, b, c, d, e, f, g, h, i]: Projection): readonly number[] {
  return [a, d, 0, g, b, e, 0, h, 0, 0, 1, 0, c, f, 0, i];
}
