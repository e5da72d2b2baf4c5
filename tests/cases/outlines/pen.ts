import type { Edge, EdgeTag, Outline, Region, Vec } from '../../../src/geometry/index.ts';

/** Draws a loop edge by edge; each edge gets a tag of its own, `e0`, `e1`, and so on, after a prefix. */
export interface Pen {
  readonly lineTo: (x: number, y: number) => Pen;
  /** Arc about a centre to a point on the same circle. */
  readonly arcTo: (x: number, y: number, cx: number, cy: number, turn: 1 | -1) => Pen;
  /** Arc to a point with a bulge: the tangent of a quarter of its sweep, positive to the left turning. */
  readonly bulgeTo: (x: number, y: number, bulge: number) => Pen;
  readonly close: (bulge?: number) => Outline;
}

export function penAt(x: number, y: number, prefix = 'e'): Pen {
  const start: Vec = { x, y };
  const edges: Edge[] = [];
  let at = start;
  const tag = (): EdgeTag => ({ id: `${prefix}${edges.length}`, role: 'routed' });
  const arrive = (px: number, py: number): Vec =>
    px === start.x && py === start.y ? start : { x: px, y: py };
  const pen: Pen = {
    lineTo: (px, py) => {
      const to = arrive(px, py);
      edges.push({ kind: 'line', from: at, to, tag: tag() });
      at = to;
      return pen;
    },
    arcTo: (px, py, cx, cy, turn) => {
      const to = arrive(px, py);
      const centre = { x: cx, y: cy };
      edges.push({
        kind: 'arc',
        from: at,
        to,
        centre,
        radius: Math.hypot(at.x - cx, at.y - cy),
        turn,
        tag: tag(),
      });
      at = to;
      return pen;
    },
    bulgeTo: (px, py, bulge) => {
      if (Math.abs(bulge) < 1e-12) return pen.lineTo(px, py);
      const dx = px - at.x;
      const dy = py - at.y;
      // Centre to the left of the chord for a left-turning arc of less than half a turn.
      const k = (1 - bulge * bulge) / (4 * bulge);
      return pen.arcTo(px, py, at.x + dx / 2 - k * dy, at.y + dy / 2 + k * dx, bulge > 0 ? 1 : -1);
    },
    close: (bulge = 0) => {
      if (at.x !== start.x || at.y !== start.y) pen.bulgeTo(start.x, start.y, bulge);
      return { edges };
    },
  };
  return pen;
}

/** Loop through points, with a bulge for each edge. */
export function loopThrough(points: readonly Vec[], bulges: readonly number[] = [], prefix = 'e'): Outline {
  const first = points[0]!;
  const pen = penAt(first.x, first.y, prefix);
  for (let i = 1; i < points.length; i++) pen.bulgeTo(points[i]!.x, points[i]!.y, bulges[i - 1] ?? 0);
  return pen.close(bulges[points.length - 1] ?? 0);
}

export function regionOf(outer: Outline, ...holes: readonly Outline[]): Region {
  return { outer, holes };
}

/** A whole circle. */
export function circleAt(x: number, y: number, r: number, turn: 1 | -1 = 1, id = 'c'): Outline {
  const from = { x: x + r, y };
  return {
    edges: [{ kind: 'arc', from, to: from, centre: { x, y }, radius: r, turn, tag: { id, role: 'routed' } }],
  };
}

/** Polygon with each corner rounded as far as its neighbours leave room; edges and rounds are tangent. */
export function roundedLoop(points: readonly Vec[], radii: readonly number[], prefix = 'e'): Outline {
  const count = points.length;
  const rounds = points.map((p, i) => {
    const a = points[(i + count - 1) % count]!;
    const b = points[(i + 1) % count]!;
    const la = Math.hypot(a.x - p.x, a.y - p.y);
    const lb = Math.hypot(b.x - p.x, b.y - p.y);
    const ux = (a.x - p.x) / la;
    const uy = (a.y - p.y) / la;
    const vx = (b.x - p.x) / lb;
    const vy = (b.y - p.y) / lb;
    const cross = ux * vy - uy * vx;
    const half = Math.atan2(Math.abs(cross), ux * vx + uy * vy) / 2;
    const setback = Math.min(radii[i]! / Math.tan(half), 0.45 * Math.min(la, lb));
    const r = setback * Math.tan(half);
    const turn: 1 | -1 = cross < 0 ? 1 : -1;
    const from = { x: p.x + ux * setback, y: p.y + uy * setback };
    const to = { x: p.x + vx * setback, y: p.y + vy * setback };
    const reach = r / Math.sin(half) / Math.hypot(ux + vx, uy + vy);
    return { from, to, centre: { x: p.x + (ux + vx) * reach, y: p.y + (uy + vy) * reach }, turn, r };
  });
  const pen = penAt(rounds[0]!.to.x, rounds[0]!.to.y, prefix);
  for (let i = 1; i <= count; i++) {
    const { from, to, centre, turn } = rounds[i % count]!;
    pen.lineTo(from.x, from.y);
    pen.arcTo(to.x, to.y, centre.x, centre.y, turn);
  }
  return pen.close();
}
