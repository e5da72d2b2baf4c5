import { type Edge, type Vec, vec } from '../../geometry/index.ts';
import { BELOW_HEADING, type Block, heading, LEADING, TEXT_HEIGHT } from '../first-page/block.ts';
import { GRAPHITE, type PageItem } from '../page/ink.ts';
import { edgesRound, linesWithin, words } from '../page/items.ts';
import { MODULE, QUIET, type SquareCode, squareCodes, widthOfCode } from './square-codes.ts';

/** Beside a code at least so much is left for words, mm; with less they stand below. */
const LEAST_WORDS = 26;
/** The widest a code may be, mm: what a telephone sees whole and sharp at arm's length (common practice). */
const WIDEST = 62;
const GAP = 2;

/**
 * The square codes of a design's link with plain words of what they are, beside or below them. Where the link is too long for codes it says so, and where
 * the design's file is.
 */
export function codeBlock(link: string, design: string, width: number): Block {
  const beside = squareCodes(link, Math.min(WIDEST, width - LEAST_WORDS - GAP));
  const isBeside = beside.length === 1;
  const codes = isBeside ? beside : squareCodes(link, Math.min(WIDEST, width));
  const codeWidth = Math.max(0, ...codes.map(widthOfCode));
  const across = isBeside
    ? 1
    : Math.max(1, Math.min(codes.length, Math.floor((width + GAP) / (codeWidth + GAP))));
  const rows = Math.ceil(codes.length / across);
  const codesHeight = rows * (codeWidth + GAP);
  const lines = wordsOf(codes.length, design).flatMap((text) =>
    linesWithin(text, isBeside ? width - codeWidth - GAP : width, TEXT_HEIGHT, 'regular'),
  );
  const wordsHeight = lines.length * LEADING;
  // The quiet zone of a code takes the place of the room under the heading.
  const top = codes.length === 0 ? BELOW_HEADING : HEADING_ROOM;
  return {
    height: top + (isBeside ? Math.max(codesHeight, QUIET_ROOM + wordsHeight) : codesHeight + wordsHeight),
    draw: (corner) => {
      const below = corner.y - top;
      const textAt = isBeside
        ? vec(corner.x + codeWidth + GAP, below - QUIET_ROOM)
        : vec(corner.x, below - codesHeight);
      return [
        heading(codes.length > 1 ? 'The design in square codes' : 'The design in a square code', corner),
        ...codes.map((code, at) =>
          codeItem(
            code,
            vec(
              corner.x + (at % across) * (codeWidth + GAP),
              below - Math.floor(at / across) * (codeWidth + GAP),
            ),
          ),
        ),
        ...lines.map((line, at) =>
          words(line, vec(textAt.x, textAt.y - TEXT_HEIGHT - at * LEADING), { height: TEXT_HEIGHT }),
        ),
      ];
    },
  };
}

/** Room of the heading over codes, mm. */
const HEADING_ROOM = 4;
/** How far words beside a code stand below its white, mm. */
const QUIET_ROOM = QUIET * MODULE;

function wordsOf(count: number, design: string): readonly string[] {
  if (count === 0) {
    return [
      `This design is too large for square codes. Its file, ${design}, is with whoever made this pattern: keep a copy beside it.`,
    ];
  }
  const all = count === 1 ? 'It holds' : `All ${count} together, in any order, hold`;
  return [
    `${all} this whole design but its photographs, so that a pattern found years later still knows what it belongs to.`,
    'Scan it and open what it says in Legwright: an address of a site by itself, any other text under Designs, From a link.',
  ];
}

/** One code that stands in the corner of a page, with the words for it in a line; nothing where one code is too small or too wide for the page. */
export function cornerCode(link: string, pageWidth: number): CornerCode | undefined {
  const [code, ...others] = squareCodes(link, Math.min(WIDEST, MOST_OF_PAGE * pageWidth));
  if (code === undefined || others.length > 0) return undefined;
  return { width: widthOfCode(code), words: LINE, draw: (corner) => codeItem(code, corner) };
}

export interface CornerCode {
  /** Its width and height with the white round it, mm. */
  readonly width: number;
  readonly words: string;
  /** From its upper left corner. */
  readonly draw: (corner: Vec) => PageItem;
}

/** Share of a page's width that a code in its corner may take. */
const MOST_OF_PAGE = 0.4;
const LINE =
  'The square code holds this whole design but its photographs: open it in Legwright, Designs, From a link.';

/** The dark modules as one filled path, its white quiet zone round it; `corner` is the upper left one of that. */
function codeItem(code: SquareCode, corner: Vec): PageItem {
  const edges = code.flatMap((row, down) => {
    const y = corner.y - (QUIET + down) * MODULE;
    return runsOf(row).flatMap(([from, to]): readonly Edge[] => {
      const [left, right] = [from, to].map((each) => corner.x + (QUIET + each) * MODULE) as [number, number];
      return edgesRound([vec(left, y), vec(left, y - MODULE), vec(right, y - MODULE), vec(right, y)]);
    });
  });
  return { kind: 'fill', edges, ink: { ...GRAPHITE, colour: '#000000' } };
}

/** Runs of dark modules, each by where it begins and the one after its end. */
function runsOf(row: readonly boolean[]): readonly (readonly [number, number])[] {
  const runs: [number, number][] = [];
  for (const [at, dark] of row.entries()) {
    const last = runs.at(-1);
    if (!dark) continue;
    if (last !== undefined && last[1] === at) last[1] = at + 1;
    else runs.push([at, at + 1]);
  }
  return runs;
}
