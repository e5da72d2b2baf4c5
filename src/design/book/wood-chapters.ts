import type { BuiltBase } from '../../base/index.ts';
import { leafMapDrawing } from '../../drawing/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { figureShift, type LeafPlace, type MatchDrift, RING_SLOPES } from '../../wood/index.ts';
import type { ComputedMatch, ComputedWood } from '../wood-of-design.ts';
import { type BookStyle, capital, degrees, fine, finer, sizes } from './book-style.ts';

/** Which leaf goes where, how the set is marked, and by how much its match drifts. */
export function leafChapter(matches: readonly ComputedMatch[], style: BookStyle): BookChapter {
  return {
    title: 'Leaf map',
    newPage: false,
    blocks: matches.flatMap((match) => matchBlocks(match, style)),
  };
}

const OPENED = {
  book: 'Opened like a book: mates are neighbours in the board, one turned over, and show the two faces that met at the saw.',
  slip: 'Slipped off one another, none turned over: the figure repeats, and reflects light alike.',
  radial: 'Dealt round the base, each turned over from the one before: neighbours mirror each other.',
} as const;

function matchBlocks({ map, drift }: ComputedMatch, style: BookStyle): readonly BookBlock[] {
  const nameOf = (id: string): string => map.pieces.find((each) => each.id === id)?.name ?? id;
  const inner = map.frames.flatMap((frame) => frame.inner);
  const { match, places } = map;
  return [
    { kind: 'heading', text: `${match.name}: ${match.arrangement}` },
    {
      kind: 'text',
      text: `${OPENED[match.arrangement]} Before the first cut draw a triangle over the end of the board and number the leaves down it; mark the end that the drawing’s arrows point to. Once sawn, lay the leaves of each frame as it stands, show faces up, and draw the triangle across the set: while it closes, every leaf is where it belongs. Write piece, leaf and “show” on each before glue is mixed.`,
    },
    {
      kind: 'drawing',
      scene: leafMapDrawing(map),
      caption:
        'Moved together as they lean, seen by who faces them; arrows point to the board’s marked end; not to measure',
    },
    {
      kind: 'table',
      columns: [
        { head: 'Piece' },
        { head: 'On its' },
        { head: 'Board' },
        { head: 'Leaf', align: 'right' },
        { head: 'Shows', share: 1.4 },
        { head: 'Marked end' },
        { head: 'Edge inwards', share: 2 },
      ],
      rows: places.map((place) => [
        nameOf(place.piece),
        place.face === 'face' ? 'face side' : 'back',
        place.board ?? 'none left',
        `${place.leaf}`,
        `its ${place.shows} face`,
        place.markedEnd,
        `${place.inner} edge ${inner.find(({ piece }) => piece === place.piece)?.words ?? ''}`,
      ]),
    },
    ...driftBlocks(drift, nameOf, style),
  ];
}

const KINDS: Readonly<Record<MatchDrift['kind'], string>> = {
  mates: 'mates',
  frames: 'frame to frame',
  neighbours: 'neighbours',
};

function driftBlocks(
  drift: readonly MatchDrift[],
  nameOf: (id: string) => string,
  style: BookStyle,
): readonly BookBlock[] {
  if (drift.length === 0) return [];
  const words = ({ piece, leaf }: LeafPlace): string => `${nameOf(piece)} (leaf ${leaf})`;
  return [
    {
      kind: 'text',
      text: 'By how much the match drifts: the wood that kerf and planing took between the two faces that show, and how far that moves the line of a growth ring which meets the face at a slope. Steep rings match well; flat ones, near the heart of the figure, wander. Take off both mates alike.',
    },
    {
      kind: 'table',
      columns: [
        { head: 'Between', share: 2.4 },
        { head: '', share: 1.2 },
        { head: 'Wood taken', align: 'right' },
        { head: 'If the saw drifts', align: 'right' },
        ...RING_SLOPES.map((slope) => ({ head: `Rings at ${degrees(slope)}`, align: 'right' as const })),
      ],
      rows: drift.map(({ kind, a, b, apart, mostApart }) => [
        `${words(a)} – ${words(b)}`,
        KINDS[kind],
        ...(apart === undefined || mostApart === undefined
          ? ['other boards', '–', ...RING_SLOPES.map(() => '–')]
          : [
              fine(apart, style),
              fine(mostApart, style),
              ...RING_SLOPES.map((slope) => fine(figureShift(apart, slope), style)),
            ]),
      ]),
    },
  ];
}

/** How inserts of the top are drilled, and where; the patterns at full size are printed beside the book. */
export function drillingChapter(
  { inserts, topWood }: ComputedWood,
  { base, made }: BuiltBase,
  style: BookStyle,
): BookChapter {
  if (inserts === undefined || inserts.rows.length === 0)
    return { title: 'Drilling the top', newPage: false, blocks: [] };
  const { insert, depth, left, rows } = inserts;
  const nameOf = (id: string): string => {
    const own = made.find(({ members }) => members.some(({ part }) => part === id));
    const part = base.parts.find((each) => each.id === id)!;
    return `${own?.label ?? part.label} ${part.mark}`.trim();
  };
  return {
    title: 'Drilling the top',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `${capital(insert.thread)} inserts, ${sizes([insert.outer, insert.length], finer(style))}, into the underside of the top: drill Ø ${fine(insert.pilot, style)}, ${fine(depth, style)} deep with a stop, so that ${fine(left, style)} of the top is left. In ${topWood.kind === 'hardwood' ? 'hardwood the hole is at the wide end of what fits' : 'softwood the hole is at the tight end of what fits'}: too tight it splits, too wide the thread holds little. Sizes of inserts are usual ones: measure those in hand, try one in scrap of the same wood. The drilling patterns lie on the underside, turned over about the top’s length; where the base stands ready, mark from it in place and use them to check.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'Under', share: 2 },
          { head: 'Hole', align: 'right' },
          { head: 'From the middle, along', align: 'right' },
          { head: 'From the middle, across', align: 'right' },
        ],
        rows: rows.flatMap(({ part, holes }) =>
          holes.map(({ x, y }, at) => [nameOf(part), `${at + 1}`, fine(x, style), fine(y, style)]),
        ),
      },
    ],
  };
}
