import {
  intersectRegions,
  locate,
  offsetRegions,
  pointAt,
  type Region,
  subtractRegions,
} from '../../geometry/index.ts';
import { type ExtendedOutline, solid } from './extend-outline.ts';

/**
 * The extended outline with its routed edges moved by `by` (mm, positive out of the wood), unrouted edges where they are,
 * and its run-ons cut straight across where they end. Several regions, or none, where a shrinking board falls apart.
 */
export function offsetRoutedEdges(extended: ExtendedOutline, by: number): readonly Region[] {
  if (!extended.isRouted) return extended.drawn;
  return trimRunOns(extended, by === 0 ? extended.long : offsetRegions(extended.long, by), by);
}

/** The same from the outline's long form, offset already. */
export function trimRunOns(
  extended: ExtendedOutline,
  moved: readonly Region[],
  by: number,
): readonly Region[] {
  const { short, long, gaps } = extended;
  if (by === 0) return short;
  if (gaps.length === 0) return moved;
  if (by < 0) return intersectRegions(moved, short);
  const beyond = [...extended.pastRunOn.map(solid), ...subtractRegions(long, short)];
  const board = subtractRegions(moved, beyond);
  // What grew past the far side of the room beyond lies apart from the board and is dropped.
  return board.filter((piece) => touches(piece, extended));
}

function touches(piece: Region, { drawn }: ExtendedOutline): boolean {
  const board = [solid(piece.outer)];
  return (
    drawn.some(({ outer }) => locate(board, outer.edges[0]!.from) !== 'outside') ||
    piece.outer.edges.some((edge) => locate(drawn, pointAt(edge, 0.5)) !== 'outside')
  );
}
