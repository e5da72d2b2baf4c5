import { ok, type Result } from '../core/index.ts';
import type { LengthUnit } from './api.ts';
import { parseLength } from './parse-length.ts';
import { MM_PER } from './units.ts';

/** `6/4`, `10 / 4`: quarters of an inch, as rough boards are sold. */
const QUARTERS = /^\s*(\d{1,2})\s*\/\s*4\s*$/;

/**
 * Thickness of a rough board in mm: in quarters of an inch, or any length that `parseLength` reads. A bare fraction of quarters never needs
 * a unit, whatever the unit of bare numbers is.
 */
export function parseQuarters(text: string, options: { readonly unit: LengthUnit }): Result<number> {
  const quarters = QUARTERS.exec(text)?.[1];
  return quarters === undefined ? parseLength(text, options) : ok((Number(quarters) / 4) * MM_PER.in);
}
