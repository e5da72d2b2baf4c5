import type { Vec } from '../api.ts';
import type { Cubic } from '../fairing/cubic.ts';
import { length, norm } from '../vec.ts';
import { type Affine, applyToDirection, applyToPoint } from './affine.ts';

/** Part of an ellipse: p(a) = centre + u cos a + v sin a for a from `start` over `sweep` (signed, rad). */
export interface EllipseArc {
  readonly kind: 'ellipse';
  readonly from: Vec;
  readonly to: Vec;
  readonly centre: Vec;
  readonly u: Vec;
  readonly v: Vec;
  readonly start: number;
  readonly sweep: number;
}

/** What path data says, before curves become arcs. */
export type PathSegment =
  | { readonly kind: 'line'; readonly from: Vec; readonly to: Vec }
  | { readonly kind: 'cubic'; readonly curve: Cubic }
  | EllipseArc;

export interface Subpath {
  readonly segments: readonly PathSegment[];
  /** Ended by `Z`, and then back at its start. */
  readonly closed: boolean;
}

export function mapSegment(segment: PathSegment, by: Affine): PathSegment {
  switch (segment.kind) {
    case 'line':
      return { kind: 'line', from: applyToPoint(by, segment.from), to: applyToPoint(by, segment.to) };
    case 'cubic': {
      const { p0, p1, p2, p3 } = segment.curve;
      const curve = {
        p0: applyToPoint(by, p0),
        p1: applyToPoint(by, p1),
        p2: applyToPoint(by, p2),
        p3: applyToPoint(by, p3),
      };
      return { kind: 'cubic', curve };
    }
    case 'ellipse':
      return {
        ...segment,
        from: applyToPoint(by, segment.from),
        to: applyToPoint(by, segment.to),
        centre: applyToPoint(by, segment.centre),
        u: applyToDirection(by, segment.u),
        v: applyToDirection(by, segment.v),
      };
    default:
      return segment satisfies never;
  }
}

/**
 * The elliptical arc of an `A` command by its centre; a line when a radius is 0, undefined when the ends are equal. Radii too
 * small to reach are enlarged. Source: SVG 1.1 (W3C Recommendation), appendix F.6.
 */
export function arcFromEndpoints(
  from: Vec,
  to: Vec,
  radii: Vec,
  rotation: number,
  isLarge: boolean,
  isPositive: boolean,
): PathSegment | undefined {
  if (from.x === to.x && from.y === to.y) return undefined;
  let rx = Math.abs(radii.x);
  let ry = Math.abs(radii.y);
  if (rx === 0 || ry === 0) return { kind: 'line', from, to };
  // Equal radii make a circle, whatever the rotation; without it the centre keeps all its digits.
  const angle = rx === ry ? 0 : rotation;
  const c = Math.cos(angle);
  const s = Math.sin(angle);
  const dx = (from.x - to.x) / 2;
  const dy = (from.y - to.y) / 2;
  const x = c * dx + s * dy;
  const y = -s * dx + c * dy;
  const reach = norm(x / rx, y / ry);
  if (reach > 1) {
    rx *= reach;
    ry *= reach;
  }
  const near = Math.min(1, reach);
  const side = isLarge === isPositive ? -1 : 1;
  // The centre in the frame of the ellipse, from the middle of the chord.
  const off = near === 0 ? 0 : (side * Math.sqrt((1 - near) * (1 + near))) / near;
  const cx = (off * rx * y) / ry;
  const cy = (-off * ry * x) / rx;
  const centre = { x: (from.x + to.x) / 2 + c * cx - s * cy, y: (from.y + to.y) / 2 + s * cx + c * cy };
  const start = Math.atan2((y - cy) / ry, (x - cx) / rx);
  const end = Math.atan2((-y - cy) / ry, (-x - cx) / rx);
  let sweep = end - start;
  if (isPositive && sweep <= 0) sweep += 2 * Math.PI;
  if (!isPositive && sweep >= 0) sweep -= 2 * Math.PI;
  const u = { x: rx * c, y: rx * s };
  const v = { x: -ry * s, y: ry * c };
  return { kind: 'ellipse', from, to, centre, u, v, start, sweep };
}

/** A whole ellipse, upright, from its right end. */
export function wholeEllipse(centre: Vec, rx: number, ry: number): EllipseArc {
  const from = { x: centre.x + rx, y: centre.y };
  const [u, v] = [
    { x: rx, y: 0 },
    { x: 0, y: ry },
  ];
  return { kind: 'ellipse', from, to: from, centre, u, v, start: 0, sweep: 2 * Math.PI };
}

/** Is the ellipse a circle to rounding (its half axes equally long and square to each other)? */
export function isCircle({ u, v }: EllipseArc): boolean {
  const size = length(u);
  return Math.abs(length(v) - size) <= size * ROUND && Math.abs(u.x * v.x + u.y * v.y) <= size * size * ROUND;
}

/** Transforms written with six or more digits turn circles into ellipses that differ by no more than this share. */
const ROUND = 1e-6;
