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

export function growBox({ centre, angle, halfWidth, halfHeight }: OrientedBox, by: number): OrientedBox {
  return { centre, angle, halfWidth: halfWidth + by, halfHeight: halfHeight + by };
}

/** Smallest upright box round it. */
export function uprightBounds(box: OrientedBox): Box {
  const { centre, halfWidth, halfHeight, angle } = box;
  const c = Math.abs(Math.cos(angle));
  const s = Math.abs(Math.sin(angle));
  const reachX = c * halfWidth + s * halfHeight;
  const reachY = s * halfWidth + c * halfHeight;
  return {
    minX: centre.x - reachX,
    minY: centre.y - reachY,
    maxX: centre.x + reachX,
    maxY: centre.y + reachY,
  };
}

/** A box without its place, with what is asked of it over and over: the directions of its sides, and how far it reaches. */
export interface TurnedShape {
  readonly halfWidth: number;
  readonly halfHeight: number;
  readonly cos: number;
  readonly sin: number;
  readonly upX: number;
  readonly upY: number;
  /** From its middle to the upright lines round it, mm. */
  readonly reachX: number;
  readonly reachY: number;
}

export interface TurnedBox extends OrientedBox, TurnedShape {}

export function turnedShape(halfWidth: number, halfHeight: number, angle: number): TurnedShape {
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return {
    halfWidth,
    halfHeight,
    cos,
    sin,
    upX: Math.cos(angle + Math.PI / 2),
    upY: Math.sin(angle + Math.PI / 2),
    reachX: Math.abs(cos) * halfWidth + Math.abs(sin) * halfHeight,
    reachY: Math.abs(sin) * halfWidth + Math.abs(cos) * halfHeight,
  };
}

export function turnedBox({ centre, halfWidth, halfHeight, angle }: OrientedBox): TurnedBox {
  return { centre, angle, ...turnedShape(halfWidth, halfHeight, angle) };
}

/** Do two boxes share more than a border? */
export const boxesOverlap = (a: OrientedBox, b: OrientedBox): boolean =>
  turnedOverlap(turnedBox(a), turnedBox(b));

export const turnedOverlap = (a: TurnedBox, b: TurnedBox): boolean =>
  shapesOverlap(a, b, b.centre.x - a.centre.x, b.centre.y - a.centre.y);

/** The same of shapes, the second so far from the first; tested on the four directions of their sides (separating axes). */
export function shapesOverlap(a: TurnedShape, b: TurnedShape, dx: number, dy: number): boolean {
  return (
    Math.abs(dx) < a.reachX + b.reachX &&
    Math.abs(dy) < a.reachY + b.reachY &&
    !isApart(a, b, dx * a.cos + dy * a.sin, a.cos, a.sin) &&
    !isApart(a, b, dx * a.upX + dy * a.upY, a.upX, a.upY) &&
    !isApart(a, b, dx * b.cos + dy * b.sin, b.cos, b.sin) &&
    !isApart(a, b, dx * b.upX + dy * b.upY, b.upX, b.upY)
  );
}

/** `apart`: how far their middles are apart in the direction x, y. */
function isApart(a: TurnedShape, b: TurnedShape, apart: number, x: number, y: number): boolean {
  return Math.abs(apart) >= reachAlong(a, x, y) + reachAlong(b, x, y);
}

function reachAlong({ halfWidth, halfHeight, cos, sin }: TurnedShape, x: number, y: number): number {
  return halfWidth * Math.abs(cos * x + sin * y) + halfHeight * Math.abs(cos * y - sin * x);
}

/** Does any of the straight piece from p to q lie inside the box? A mere touch of the border does not count. */
export const segmentMeetsBox = (p: Vec, q: Vec, box: OrientedBox): boolean =>
  pieceMeets(p.x - box.centre.x, p.y - box.centre.y, q.x - box.centre.x, q.y - box.centre.y, turnedBox(box));

/** The same of a piece whose ends are given from the middle of the box. */
export function pieceMeets(px: number, py: number, qx: number, qy: number, shape: TurnedShape): boolean {
  const { halfWidth, halfHeight, cos, sin } = shape;
  const ax = cos * px + sin * py;
  const bx = cos * qx + sin * qy;
  if ((ax >= halfWidth && bx >= halfWidth) || (ax <= -halfWidth && bx <= -halfWidth)) return false;
  const ay = cos * py - sin * px;
  const by = cos * qy - sin * qx;
  if ((ay >= halfHeight && by >= halfHeight) || (ay <= -halfHeight && by <= -halfHeight)) return false;
  const dx = bx - ax;
  const dy = by - ay;
  let from = 0;
  let to = 1;
  if (dx !== 0) {
    const t1 = (-halfWidth - ax) / dx;
    const t2 = (halfWidth - ax) / dx;
    from = Math.max(from, Math.min(t1, t2));
    to = Math.min(to, Math.max(t1, t2));
    if (from >= to) return false;
  }
  if (dy === 0) return true;
  const t1 = (-halfHeight - ay) / dy;
  const t2 = (halfHeight - ay) / dy;
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
