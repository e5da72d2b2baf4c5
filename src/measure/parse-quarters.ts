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
  if (quarters === undefined) return parseLength(text, options);
  // Whole hundredths of a millimetre, free of the last bit of the division.
  return ok(Math.round(Number(quarters) * 25 * MM_PER.in) / 100);
}
