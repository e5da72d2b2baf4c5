import { orient2d } from 'robust-predicates';

/**
 * 1 when a line crosses the ray from (x, y) towards +x upwards, −1 downwards, 0 when it does not. Heights alone decide whether
 * it does (one end below or level, the other above); on which side of the line the ray starts is exact.
 */
export function crossingOfLine(x0: number, y0: number, x1: number, y1: number, x: number, y: number): number {
  if (y0 <= y === y1 <= y) return 0;
  if (x0 > x && x1 > x) return y0 <= y ? 1 : -1;
  // The library counts y downwards: negative is to the left.
  const side = -orient2d(x0, y0, x1, y1, x, y);
  return y0 <= y ? (side > 0 ? 1 : 0) : side < 0 ? -1 : 0;
}

/** Net upward crossings of a ray towards +x by an anticlockwise arc of less than half a turn from 0 to 1. */
export function crossingOfArc(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  cx: number,
  cy: number,
  r: number,
  x: number,
  y: number,
): number {
  const right0 = x0 > cx || (x0 === cx && y0 < cy);
  const right1 = x1 > cx || (x1 === cx && y1 < cy);
  // On which halves of the circle the ray starts to the left of the arc.
  const dx = x - cx;
  const dy = y - cy;
  const within = dx * dx + dy * dy < r * r;
  const beforeRight = dx < 0 || within ? 1 : 0;
  const beforeLeft = dx < 0 && !within ? 1 : 0;
  const from = y0 <= y ? 1 : 0;
  const to = y1 <= y ? 1 : 0;
  if (right0 === right1) return (from - to) * (right0 ? beforeRight : beforeLeft);
  // From one half to the other over the top or under the bottom.
  const over = (right0 ? cy + r : cy - r) <= y ? 1 : 0;
  return right0
    ? (from - over) * beforeRight + (over - to) * beforeLeft
    : (from - over) * beforeLeft + (over - to) * beforeRight;
}

/**
 * How often a ray from (x, y) towards +x is crossed upwards less downwards by a line (`turn` 0) or an arc of less than half a turn from 0 to 1: added up over
 * closed chains, how often they wind anticlockwise round (x, y).
 */
export function crossingRightwards(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  turn: number,
  cx: number,
  cy: number,
  r: number,
  x: number,
  y: number,
): number {
  if (turn === 0) return crossingOfLine(x0, y0, x1, y1, x, y);
  return turn > 0
    ? crossingOfArc(x0, y0, x1, y1, cx, cy, r, x, y)
    : -crossingOfArc(x1, y1, x0, y0, cx, cy, r, x, y);
}

/** The same for a ray towards +y, by swapping the axes, which turns every direction round. */
export function crossingUpwards(
  x0: number,
  y0: number,
  x1: number,
  y1: number,
  turn: number,
  cx: number,
  cy: number,
  r: number,
  x: number,
  y: number,
): number {
  if (turn === 0) return -crossingOfLine(y0, x0, y1, x1, y, x);
  return turn < 0
    ? -crossingOfArc(y0, x0, y1, x1, cy, cx, r, y, x)
    : crossingOfArc(y1, x1, y0, x0, cy, cx, r, y, x);
}
