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

/** Do two boxes share more than a border? Tested on the four directions of their sides (separating axes). */
export function boxesOverlap(a: OrientedBox, b: OrientedBox): boolean {
  const apart = { x: b.centre.x - a.centre.x, y: b.centre.y - a.centre.y };
  for (const angle of [a.angle, a.angle + Math.PI / 2, b.angle, b.angle + Math.PI / 2]) {
    const axis = polar(angle);
    if (Math.abs(dot(apart, axis)) >= reachAlong(a, axis) + reachAlong(b, axis)) return false;
  }
  return true;
}

function reachAlong(box: OrientedBox, axis: Vec): number {
  const along = polar(box.angle);
  return box.halfWidth * Math.abs(dot(along, axis)) + box.halfHeight * Math.abs(dot(leftOf(along), axis));
}

/** Does any of the straight piece from p to q lie inside the box? A mere touch of the border does not count. */
export function segmentMeetsBox(p: Vec, q: Vec, box: OrientedBox): boolean {
  return stretchInBox(p, q, box) !== undefined;
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
