import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { directionAt, type Edge, nearestOnEdges, pointAt, type Vec } from '../../src/geometry/index.ts';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';
import { formText } from '../sketch/form-text.ts';
import { clampedSpline } from './clamped-spline.ts';

const degree = Math.PI / 180;

/** The arcs of a batten curve through nails, leaving and arriving in directions (degrees), by way of a form. */
function batten(nails: readonly Vec[], leaving: number, arriving: number): readonly Edge[] {
  const points = nails.map(({ x, y }, index) => `n${index}: ${x} mm, ${y} mm`).join('\n');
  const last = nails.length - 1;
  const through = Array.from({ length: last - 1 }, (_, index) => `n${index + 1}`).join(', ');
  const ends = `leaving: ${leaving} deg, arriving: ${arriving} deg`;
  const text = formText({
    points: `${points}\nfar: 300 mm, ${nails[last]!.y} mm\nlow: 300 mm, ${nails[0]!.y} mm`,
    outlines: `
plate:
  start: n0
  edges:
    - { batten: curve, to: n${last}, role: routed, through: [${through}], ${ends} }
    - { line: top, to: far, role: sawn }
    - { line: back, to: low, role: sawn }
    - { line: bottom, to: n0, role: sawn }`,
  });
  const form = readForm(text, 'x');
  const sketch = form.ok ? evaluateForm(form.value, {}) : form;
  if (!sketch.ok) throw new Error(sketch.problems[0]!.message);
  return sketch.value.parts[0]!.region.outer.edges.filter((edge) => edge.tag.id === 'curve');
}

const nails = fc
  .array(fc.integer({ min: -25, max: 25 }), { minLength: 3, maxLength: 6 })
  .map((offsets) => offsets.map((x, index): Vec => ({ x, y: index * 120 })));
const slants = fc.integer({ min: -20, max: 20 });

describe('a batten curve of a form', () => {
  it('lies within 0.005 mm of an independently computed spline, both ways', () => {
    fc.assert(
      fc.property(nails, slants, slants, (points, leaving, arriving) => {
        const arcs = batten(points, 90 + leaving, 90 + arriving);
        const [a, b] = [(90 + leaving) * degree, (90 + arriving) * degree];
        const spline = clampedSpline(
          points,
          { x: Math.cos(a), y: Math.sin(a) },
          { x: Math.cos(b), y: Math.sin(b) },
        );
        for (const p of spline(60)) expect(nearestOnEdges(arcs, p).distance).toBeLessThanOrEqual(0.005);
        const dense = spline(4000);
        for (const arc of arcs) {
          const p = pointAt(arc, 0.37);
          const nearest = Math.min(...dense.map((q) => Math.hypot(p.x - q.x, p.y - q.y)));
          // Samples of the spline lie up to 0.1 mm apart, which hides less than 0.001 mm sideways.
          expect(nearest).toBeLessThanOrEqual(Math.hypot(0.005, 0.11));
        }
      }),
      { numRuns: 25 },
    );
  });

  it('is smooth from arc to arc', () => {
    fc.assert(
      fc.property(nails, slants, slants, (points, leaving, arriving) => {
        const arcs = batten(points, 90 + leaving, 90 + arriving);
        for (const [index, arc] of arcs.slice(1).entries()) {
          const [p, q] = [directionAt(arcs[index]!, 1), directionAt(arc, 0)];
          expect(Math.abs(p.x * q.y - p.y * q.x)).toBeLessThan(1e-7);
        }
      }),
      { numRuns: 20 },
    );
  });
});
