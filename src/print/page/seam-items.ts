import { distance, type Vec, vec } from '../../geometry/index.ts';
import type { Sheet } from '../api.ts';
import type { MarkedSeam, SeamMark } from '../seam-marks.ts';
import { nameOfSheet } from '../seams.ts';
import { ACCENT, GRAPHITE, type PageItem } from './ink.ts';
import { filled, polyline, words } from './items.ts';

/** Reach of a mark across the seam and half its width along it, mm. */
const MARK_REACH = 3.4;
const MARK_HALF_WIDTH = 1;
/** The hair line of a mark runs on beyond its triangles, mm. */
const HAIR_REACH = 5;
const SMALL = 1.8;
/** A seam must be so long, mm, for its neighbour to be named in a whole sentence between the marks. */
const FULL_CAPTION = 120;

/** Names of the sides of a sheet's page. */
export type Side = 'left' | 'right' | 'above' | 'below';

/**
 * A seam on one of its sheets: its line, its marks, and who joins here. The left and the lower flap are cut off, the
 * right and the upper one stay and are covered.
 */
export function seamItems(
  seam: MarkedSeam,
  sheet: Sheet,
  toPage: (p: Vec) => Vec,
  window: { minX: number; minY: number; maxX: number; maxY: number },
  half: number,
): PageItem[] {
  const isFirst = seam.sheets[0] === sheet;
  const other = seam.sheets[isFirst ? 1 : 0];
  const side: Side = seam.kind === 'side' ? (isFirst ? 'right' : 'left') : isFirst ? 'below' : 'above';
  const at = toPage(seam.from);
  const line =
    seam.kind === 'side'
      ? [vec(at.x, window.minY), vec(at.x, window.maxY)]
      : [vec(window.minX, at.y), vec(window.maxX, at.y)];
  const isCut = side === 'left' || side === 'below';
  const isShort = distance(seam.from, seam.to) < FULL_CAPTION;
  const caption = isShort
    ? nameOfSheet(other)
    : isCut
      ? `cut along this line, lay on ${nameOfSheet(other)}`
      : `${nameOfSheet(other)} is laid on here`;
  return [
    polyline(line, undefined, ACCENT),
    ...seam.marks.flatMap((mark) => markItems(mark, seam.kind, toPage, half)),
    captionOf(caption, toPage(seam.captionAt), side, half),
  ];
}

/** Two triangles whose tips meet on the seam, a hair line through both, and the mark's name on either side. */
function markItems(
  mark: SeamMark,
  kind: MarkedSeam['kind'],
  toPage: (p: Vec) => Vec,
  half: number,
): PageItem[] {
  const at = toPage(mark.at);
  const reach = Math.min(MARK_REACH, half - 0.6);
  const hair = Math.min(HAIR_REACH, half);
  const place = (along: number, across: number): Vec =>
    kind === 'side' ? vec(at.x + across, at.y + along) : vec(at.x + along, at.y + across);
  const triangle = (sign: 1 | -1): PageItem =>
    filled([at, place(-MARK_HALF_WIDTH, sign * reach), place(MARK_HALF_WIDTH, sign * reach)]);
  const name = (sign: 1 | -1): PageItem => {
    const baseline = sign * (half / 2) - (kind === 'side' ? -1 : 1) * (SMALL / 2);
    return words(mark.name, place(1.9, baseline), {
      height: SMALL,
      angle: kind === 'side' ? Math.PI / 2 : 0,
      weight: 'semibold',
    });
  };
  return [
    polyline([place(0, -hair), place(0, hair)], undefined, GRAPHITE),
    triangle(1),
    triangle(-1),
    name(1),
    name(-1),
  ];
}

/** Lettering in the flap beyond the seam line. */
function captionOf(text: string, at: Vec, side: Side, half: number): PageItem {
  const middle = half / 2;
  const options = { height: SMALL, align: 'middle', ink: ACCENT } as const;
  switch (side) {
    case 'left':
      return words(text, vec(at.x - middle + SMALL / 2, at.y), { ...options, angle: Math.PI / 2 });
    case 'right':
      return words(text, vec(at.x + middle + SMALL / 2, at.y), { ...options, angle: Math.PI / 2 });
    case 'above':
      return words(text, vec(at.x, at.y + middle - SMALL / 2), options);
    case 'below':
      return words(text, vec(at.x, at.y - middle - SMALL / 2), options);
    default:
      return side satisfies never;
  }
}
