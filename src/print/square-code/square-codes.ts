import { encode } from 'uqr';
import { linkParts } from './link-parts.ts';

/** A square code (ISO/IEC 18004) as its modules, rows from the top, dark ones true; without the quiet zone round it. */
export type SquareCode = readonly (readonly boolean[])[];

/** mm: what an office printer prints and a telephone reads at arm's length (common practice). */
export const MODULE = 0.5;
/** Modules of white round a code: ISO/IEC 18004. */
export const QUIET = 4;
/** More codes than this nobody scans. */
const MOST_CODES = 4;
/** Version v has 17 + 4 v modules a side, v from 1 to 40: ISO/IEC 18004. */
const VERSIONS = { base: 17, step: 4, most: 40 } as const;

/** How wide a code is on paper with its quiet zone, mm. */
export function widthOfCode(code: SquareCode): number {
  return (code.length + 2 * QUIET) * MODULE;
}

/**
 * A link as square codes no wider than this (mm, with the quiet zone), at error correction level M, which reads with a seventh of it spoilt: one, or several
 * with a part of the link each. None when it would take more than four.
 */
export function squareCodes(link: string, width: number): readonly SquareCode[] {
  const modules = width / MODULE - 2 * QUIET;
  const version = Math.min(VERSIONS.most, Math.floor((modules - VERSIONS.base) / VERSIONS.step));
  if (version < 1) return [];
  const codeOf = (text: string): SquareCode | undefined => {
    try {
      return encode(text, { ecc: 'M', maxVersion: version, border: 0 }).data;
    } catch {
      // The encoder throws at what is too long for the version.
      return undefined;
    }
  };
  const whole = codeOf(link);
  if (whole !== undefined) return [whole];
  const room = longestWithin((length) => codeOf('a'.repeat(length)) !== undefined, link.length);
  // What stands before the link itself is in every part.
  if (room * MOST_CODES < link.length || room <= link.indexOf('#') + SHORTEST_PART) return [];
  const parts = linkParts(link, room);
  const codes = parts.map(codeOf);
  return parts.length > MOST_CODES || codes.includes(undefined) ? [] : (codes as readonly SquareCode[]);
}

/** Signs that the head of a part takes, and a few of its own. */
const SHORTEST_PART = 40;

/** The largest length up to `most` that fits, by halving; 0 when none does. */
function longestWithin(fits: (length: number) => boolean, most: number): number {
  let low = 0;
  let high = most;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (fits(middle)) low = middle;
    else high = middle - 1;
  }
  return low;
}
