import { type Box, dot, leftOf, polar, type Vec } from '../../geometry/index.ts';
import type { TextMark } from '../api.ts';
import { widthOfText } from '../lettering/metrics.ts';

/** A rectangle turned by `angle` (rad) about its centre; lengths in mm. */
export interface OrientedBox {
  readonly centre: Vec;
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly angle: number;
}

/** How far letters reach above and below the baseline, in heights of capitals: accents and tails included. */
const ABOVE = 1.15;
const BELOW = 0.3;

/** The box round a text, accents and tails included. */
export function boxOfText(mark: Omit<TextMark, 'role'>): OrientedBox {
  const width = widthOfText(mark.text, mark.height, mark.weight);
  const shift = mark.align === 'left' ? width / 2 : mark.align === 'middle' ? 0 : -width / 2;
  return {
    centre: inFrame(mark.at, mark.angle, { x: shift, y: (mark.height * (ABOVE - BELOW)) / 2 }),
    halfWidth: width / 2,
    halfHeight: (mark.height * (ABOVE + BELOW)) / 2,
    angle: mark.angle,
  };
}

/** The point with these coordinates in a frame at `origin` turned by `angle`. */
export function inFrame(origin: Vec, angle: number, p: Vec): Vec {
  const along = polar(angle);
  return {
    x: origin.x + along.x * p.x - along.y * p.y,
    y: origin.y + along.y * p.x + along.x * p.y,
  };
}

/** Coordinates of p in a frame at `origin` turned by `angle`: undoes inFrame. */
export function toFrame(origin: Vec, angle: number, p: Vec): Vec {
  const along = polar(angle);
  const from = { x: p.x - origin.x, y: p.y - origin.y };
  return { x: dot(along, from), y: dot(leftOf(along), from) };
}

/** Corners, anticlockwise from the lower left of its own frame. */
export function cornersOf(box: OrientedBox): readonly [Vec, Vec, Vec, Vec] {
  const { centre, angle, halfWidth: w, halfHeight: h } = box;
  return [
    inFrame(centre, angle, { x: -w, y: -h }),
    inFrame(centre, angle, { x: w, y: -h }),
    inFrame(centre, angle, { x: w, y: h }),
    inFrame(centre, angle, { x: -w, y: h }),
  ];
}

export function growBox(box: OrientedBox, by: number): OrientedBox {
  return { ...box, halfWidth: box.halfWidth + by, halfHeight: box.halfHeight + by };
}

/** Smallest upright box round it. */
export function uprightBounds(box: OrientedBox): Box {
  const c = Math.abs(Math.cos(box.angle));
  const s = Math.abs(Math.sin(box.angle));
  const reachX = c * box.halfWidth + s * box.halfHeight;
  const reachY = s * box.halfWidth + c * box.halfHeight;
  const { x, y } = box.centre;
  return { minX: x - reachX, minY: y - reachY, maxX: x + reachX, maxY: y + reachY };
}

/** A box with the directions of its width and its height, which are asked for over and over. */
export interface TurnedBox extends OrientedBox {
  readonly cos: number;
  readonly sin: number;
  readonly upX: number;
  readonly upY: number;
  /** From its middle to a corner, mm. */
  readonly reach: number;
}

export function turnedBox({ centre, halfWidth, halfHeight, angle }: OrientedBox): TurnedBox {
  return {
    centre,
    halfWidth,
    halfHeight,
    angle,
    cos: Math.cos(angle),
    sin: Math.sin(angle),
    upX: Math.cos(angle + Math.PI / 2),
    upY: Math.sin(angle + Math.PI / 2),
    reach: Math.hypot(halfWidth, halfHeight),
  };
}

/** Do two boxes share more than a border? Tested on the four directions of their sides (separating axes). */
export const boxesOverlap = (a: OrientedBox, b: OrientedBox): boolean =>
  turnedOverlap(turnedBox(a), turnedBox(b));

export function turnedOverlap(a: TurnedBox, b: TurnedBox): boolean {
  const far = a.reach + b.reach;
  return (
    Math.abs(b.centre.x - a.centre.x) < far &&
    Math.abs(b.centre.y - a.centre.y) < far &&
    !isApart(a, b, a.cos, a.sin) &&
    !isApart(a, b, a.upX, a.upY) &&
    !isApart(a, b, b.cos, b.sin) &&
    !isApart(a, b, b.upX, b.upY)
  );
}

function isApart(a: TurnedBox, b: TurnedBox, x: number, y: number): boolean {
  const apart = Math.abs((b.centre.x - a.centre.x) * x + (b.centre.y - a.centre.y) * y);
  return apart >= reachAlong(a, x, y) + reachAlong(b, x, y);
}

function reachAlong({ halfWidth, halfHeight, cos, sin }: TurnedBox, x: number, y: number): number {
  return halfWidth * Math.abs(cos * x + sin * y) + halfHeight * Math.abs(cos * y - sin * x);
}

/** Does any of the straight piece from p to q lie inside the box? A mere touch of the border does not count. */
export const segmentMeetsBox = (p: Vec, q: Vec, box: OrientedBox): boolean =>
  segmentMeetsTurned(p, q, turnedBox(box));

export function segmentMeetsTurned(
  p: Vec,
  q: Vec,
  { centre, halfWidth, halfHeight, cos, sin }: TurnedBox,
): boolean {
  const [px, py, qx, qy] = [p.x - centre.x, p.y - centre.y, q.x - centre.x, q.y - centre.y];
  const [ax, ay] = [cos * px + sin * py, cos * py - sin * px];
  const [dx, dy] = [cos * qx + sin * qy - ax, cos * qy - sin * qx - ay];
  let [from, to] = [0, 1];
  if (dx === 0) {
    if (Math.abs(ax) >= halfWidth) return false;
  } else {
    const [t1, t2] = [(-halfWidth - ax) / dx, (halfWidth - ax) / dx];
    from = Math.max(from, Math.min(t1, t2));
    to = Math.min(to, Math.max(t1, t2));
    if (from >= to) return false;
  }
  if (dy === 0) return Math.abs(ay) < halfHeight;
  const [t1, t2] = [(-halfHeight - ay) / dy, (halfHeight - ay) / dy];
  return Math.max(from, Math.min(t1, t2)) < Math.min(to, Math.max(t1, t2));
}

/** Which stretch of the straight piece from p to q lies inside the box, as shares of its length; none when none does. */
export function stretchInBox(
  p: Vec,
  q: Vec,
  box: OrientedBox,
): { readonly from: number; readonly to: number } | undefined {
  const a = toFrame(box.centre, box.angle, p);
  const b = toFrame(box.centre, box.angle, q);
  let from = 0;
  let to = 1;
  for (const [start, step, half] of [
    [a.x, b.x - a.x, box.halfWidth],
    [a.y, b.y - a.y, box.halfHeight],
  ] as const) {
    if (step === 0) {
      if (Math.abs(start) >= half) return undefined;
      continue;
    }
    const t1 = (-half - start) / step;
    const t2 = (half - start) / step;
    from = Math.max(from, Math.min(t1, t2));
    to = Math.min(to, Math.max(t1, t2));
    if (from >= to) return undefined;
  }
  return { from, to };
}
