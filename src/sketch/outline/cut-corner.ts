import { distance, line, POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { Desk } from '../evaluate/desk.ts';
import { show, showMost } from '../evaluate/show.ts';
import type { CornerSpec } from '../schema/construction.ts';
import { fitRound, largestRound, turnAtCorner } from './fit-round.ts';
import { keepAfter, keepBefore, lengthOfPieces, placeOn, type Side } from './side.ts';

/** The three sides that a cut corner leaves of two. */
export type CutCorner = readonly [Side, Side, Side];

/**
 * A round or a chamfer in place of the corner between two sides; nothing when it does not fit, the desk then saying what the largest is.
 * The rounds and chamfers made before it have taken their share.
 */
export function cutCorner(
  before: Side,
  after: Side,
  spec: CornerSpec,
  corner: string,
  desk: Desk,
): CutCorner | undefined {
  const role = spec.role ?? (before.role === 'routed' || after.role === 'routed' ? 'routed' : before.role);
  const tag = { id: corner, role };
  const isRound = 'round' in spec;
  const asked = isRound ? spec.round : spec.chamfer;
  const { place } = asked.source;
  const size = desk.size(asked, isRound ? `a round at ${corner}` : `a chamfer at ${corner}`);
  if (size === undefined) return undefined;
  const [lastPiece, firstPiece] = [before.pieces.at(-1), after.pieces[0]];
  if (lastPiece === undefined || firstPiece === undefined) {
    const gone = lastPiece === undefined ? before.name : after.name;
    return desk.refuse(
      place,
      'form.corner',
      `nothing is left of ${gone} to cut ${corner} from`,
      'smaller corners beside it',
    );
  }
  if (isRound && turnAtCorner(lastPiece, firstPiece) === 0) {
    return desk.refuse(
      place,
      'form.corner',
      `${corner} is no corner: the edges run on smoothly or turn back there`,
      'a corner',
    );
  }
  const { style } = desk.sheet;
  if (isRound) {
    const fitted = fitRound(before.pieces, after.pieces, size, tag);
    if (fitted === undefined) {
      const largest = showMost(largestRound(before.pieces, after.pieces, size, tag), style);
      const message = `round of ${show(size, style)} does not fit at ${corner}: ${largest} is the largest`;
      return desk.refuse(place, 'form.round', message, `at most ${largest}`);
    }
    return sidesOf(before, after, fitted.before, [fitted.round], fitted.after, tag);
  }
  const second = spec.leaving === undefined ? size : desk.size(spec.leaving, `a chamfer at ${corner}`);
  if (second === undefined) return undefined;
  const [lengthBefore, lengthAfter] = [lengthOfPieces(before.pieces), lengthOfPieces(after.pieces)];
  const isEven = spec.leaving === undefined;
  for (const [cut, along, most, at] of [
    [size, before, isEven ? Math.min(lengthBefore, lengthAfter) : lengthBefore, place],
    [second, after, lengthAfter, spec.leaving?.source.place ?? place],
  ] as const) {
    if (cut <= most + POSITION_TOLERANCE) continue;
    const largest = showMost(most, style);
    const where = isEven ? corner : `${corner} along ${along.name}`;
    const message = `chamfer of ${show(cut, style)} does not fit at ${where}: ${largest} is the largest`;
    return desk.refuse(at, 'form.chamfer', message, `at most ${largest}`);
  }
  const from = placeOn(before.pieces, lengthBefore - size);
  const to = placeOn(after.pieces, second);
  const keptBefore = keepBefore(before.pieces, from.index, from.point);
  const keptAfter = keepAfter(after.pieces, to.index, to.point);
  const start = keptBefore.at(-1)?.to ?? before.pieces[0]!.from;
  const end = keptAfter[0]?.from ?? after.pieces.at(-1)!.to;
  if (distance(start, end) <= POSITION_TOLERANCE) {
    return desk.refuse(
      place,
      'form.chamfer',
      `the chamfer at ${corner} has no length`,
      'a corner with room for it',
    );
  }
  return sidesOf(before, after, keptBefore, [line(start, end, tag)], keptAfter, tag);
}

function sidesOf(
  before: Side,
  after: Side,
  keptBefore: Side['pieces'],
  cut: Side['pieces'],
  keptAfter: Side['pieces'],
  tag: { readonly id: string; readonly role: Side['role'] },
): CutCorner {
  return [
    { ...before, pieces: keptBefore, corner: undefined },
    { name: tag.id, role: tag.role, pieces: cut, corner: undefined },
    { ...after, pieces: keptAfter },
  ];
}
