import type { TypedPaper } from '../design/index.ts';

/** The help of an option that takes a paper. */
export const PAPER_HELP = 'a name such as A4 or Letter, a size such as "500 x 700 mm", or "roll 610 mm"';

/** How long a roll is cut at most, where the maker says nothing. */
const ROLL_LENGTH = '3 m';

/**
 * A paper as typed on the command line, as a design keeps it. A unit after the second figure of a size is that of both.
 * Whether there is such a paper is for the design to find out.
 */
export function readPaperSize(text: string): TypedPaper['size'] {
  const roll = /^\s*roll\s+(.*?)\s*$/i.exec(text)?.[1];
  if (roll !== undefined) return { roll, longest: ROLL_LENGTH };
  const [, first, second] = /^\s*(\d[^x×]*?)\s*[x×]\s*(\d.*?)\s*$/i.exec(text) ?? [];
  if (first === undefined || second === undefined) return text;
  const unit = /[a-z"″”]+\.?$/i.exec(second)?.[0];
  const bare = /[\d½¼¾⅛⅜⅝⅞]$/.test(first);
  return { width: bare && unit !== undefined ? `${first} ${unit}` : first, height: second };
}
