import fc from 'fast-check';
import type { Edge, EdgeTag, Outline, Vec } from '../../src/geometry/index.ts';
import { arc, leftOf, line, middle, pointAt, polar, subtract, sweepOf } from '../../src/geometry/index.ts';

export const TAG: EdgeTag = { id: 'edge', role: 'routed' };
export const tagged = (id: string): EdgeTag => ({ id, role: 'routed' });

/**
 * The edge between two points with a bulge: tangent of a quarter of the sweep, positive when it turns left, 0 for a line
 * (as drawing exchange formats give arcs).
 */
export function bulged(from: Vec, to: Vec, bulge: number, tag: EdgeTag = TAG): Edge {
  if (bulge === 0) return line(from, to, tag);
  const rise = (1 - bulge * bulge) / (4 * bulge);
  const across = leftOf(subtract(to, from));
  const centre = { x: middle(from, to).x + across.x * rise, y: middle(from, to).y + across.y * rise };
  return arc(from, to, centre, bulge > 0 ? 1 : -1, tag);
}

/** A loop round the origin, anticlockwise, of lines and arcs; it may cross itself where arcs bulge much. */
export function outlineArbitrary(mostBulge = 1.5): fc.Arbitrary<Outline> {
  const corner = fc.record({
    radius: fc.double({ min: 20, max: 300, noNaN: true }),
    bulge: fc.oneof(fc.constant(0), fc.double({ min: -mostBulge, max: mostBulge, noNaN: true })),
  });
  return fc.array(corner, { minLength: 3, maxLength: 12 }).map((corners) => {
    const points = corners.map(({ radius }, i) => polar((2 * Math.PI * i) / corners.length, radius));
    const edges = points.map((from, i) => {
      const bulge = corners[i]!.bulge;
      return bulged(
        from,
        points[(i + 1) % points.length]!,
        Math.abs(bulge) < 1e-3 ? 0 : bulge,
        tagged(`e${i}`),
      );
    });
    return { edges };
  });
}

/** Points along the edges so close that no arc strays from its chords by more than `sagitta`, mm; a loop's last point is left out. */
export function densePoints(edges: readonly Edge[], sagitta: number): Vec[] {
  return edges.flatMap((edge) => {
    if (edge.kind === 'line') return [edge.from];
    const step = 2 * Math.acos(Math.max(-1, 1 - sagitta / edge.radius));
    const count = Math.max(1, Math.ceil(sweepOf(edge) / step));
    return Array.from({ length: count }, (_, i) => pointAt(edge, i / count));
  });
}

export const pointArbitrary = (reach: number): fc.Arbitrary<Vec> =>
  fc.record({
    x: fc.double({ min: -reach, max: reach, noNaN: true }),
    y: fc.double({ min: -reach, max: reach, noNaN: true }),
  });
