import {
  distance,
  type Edge,
  LAY_CHORD,
  type Outline,
  pointAt,
  sweepOf,
  type Vec,
} from '../../geometry/index.ts';

/**
 * The loop as a polygon that keeps to one side of it, never more than LAY_CHORD (mm) off: `around` holds all of the loop's material (an
 * outer outline runs anticlockwise, a hole clockwise), `within` none but its material. Arcs that bulge to that side become lines that
 * touch them, the others chords. Straight sides stay exact.
 */
export function sidesOf({ edges }: Outline, keep: 'around' | 'within'): Vec[] {
  return edges.flatMap((edge) => pointsOf(edge, keep));
}

/** From the start of an edge to just before its end. */
function pointsOf(edge: Edge, keep: 'around' | 'within'): Vec[] {
  if (edge.kind === 'line') return [edge.from];
  const sweep = sweepOf(edge);
  const isOut = (edge.turn === 1) === (keep === 'around');
  // A chord lies r (1 − cos h) inside its arc of half sweep h, a corner of touching lines r (1 / cos h − 1) outside.
  const share = Math.min(1, LAY_CHORD / edge.radius);
  const half = isOut ? Math.acos(1 / (1 + share)) : Math.acos(1 - share);
  const count = Math.max(sweep > Math.PI ? 4 : 1, Math.ceil(sweep / (2 * half)));
  const points = [edge.from];
  for (let i = 0; i < count; i++) {
    if (!isOut && i > 0) points.push(pointAt(edge, i / count));
    if (isOut) points.push(outFrom(edge, (i + 0.5) / count, edge.radius / Math.cos(sweep / count / 2)));
  }
  return points;
}

function outFrom(edge: Edge & { readonly kind: 'arc' }, t: number, radius: number): Vec {
  const p = pointAt(edge, t);
  const far = distance(p, edge.centre);
  const { x, y } = edge.centre;
  return { x: x + ((p.x - x) / far) * radius, y: y + ((p.y - y) / far) * radius };
}
