import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Arc, directionAt, type Edge, findFaults, locate, pointAt } from '../../src/geometry/index.ts';
import { evaluateForm, readForm } from '../../src/sketch/index.ts';
import { formText } from '../sketch/form-text.ts';

/** A quadrilateral whose two upper edges are lines or arcs that meet at the corner `knee`, rounded there. */
function form(corner: readonly [number, number], rises: readonly [number, number], radius: string): string {
  const edge = (name: string, to: string, rise: number): string =>
    rise === 0
      ? `{ line: ${name}, to: ${to}, role: routed }`
      : `{ arc: ${name}, to: ${to}, role: routed, rise: ${Math.abs(rise)} mm, bows: ${rise > 0 ? 'right' : 'left'} }`;
  return formText({
    points: `a: 0, 0\nb: 100 mm, 0\nknee: ${corner[0]} mm, ${corner[1]} mm`,
    outlines: `
plate:
  start: a
  edges:
    - { line: bottom, to: b, role: sawn }
    - ${edge('right', 'knee', rises[0])}
    - ${edge('left', 'a', rises[1])}
  corners:
    knee: { round: ${radius} }`,
  });
}

function evaluate(text: string) {
  const read = readForm(text, 'x');
  if (!read.ok) throw new Error(read.problems[0]!.message);
  return evaluateForm(read.value, {});
}

const corners = fc.tuple(fc.integer({ min: 10, max: 90 }), fc.integer({ min: 30, max: 120 }));
const rises = fc.tuple(fc.integer({ min: -8, max: 12 }), fc.integer({ min: -8, max: 12 }));

function expectTangent(edges: readonly Edge[], radius: number): void {
  const at = edges.findIndex((edge) => edge.tag.id === 'knee');
  const round = edges[at] as Arc;
  expect(round.radius).toBe(radius);
  for (const [before, after] of [
    [edges.at(at - 1)!, round],
    [round, edges[(at + 1) % edges.length]!],
  ] as const) {
    expect(after.from).toEqual(before.to);
    const [a, b] = [directionAt(before, 1), directionAt(after, 0)];
    // Within what 1e-7 mm of position can turn an arc of this radius by.
    expect(Math.abs(a.x * b.y - a.y * b.x)).toBeLessThan(1e-7 / Math.min(radius, 1) + 1e-9);
    expect(a.x * b.x + a.y * b.y).toBeGreaterThan(0);
  }
}

describe('a round between random edges', () => {
  it('is exactly tangent to both, and takes or fills nothing but the corner', () => {
    let rounded = 0;
    fc.assert(
      fc.property(corners, rises, fc.integer({ min: 1, max: 20 }), (corner, rise, radius) => {
        const sketch = evaluate(form(corner, rise, `${radius} mm`));
        if (!sketch.ok) {
          expect(['form.round', 'form.crossing']).toContain(sketch.problems[0]!.code);
          return;
        }
        rounded += 1;
        const { region } = sketch.value.parts[0]!;
        expect(findFaults([region])).toEqual([]);
        expectTangent(region.outer.edges, radius);
        const sharp = evaluate(form(corner, rise, '0.001 mm'));
        if (!sharp.ok) return;
        const round = region.outer.edges.find((edge) => edge.tag.id === 'knee') as Arc;
        // A corner that sticks out loses wood to its round, one that goes in is filled by it.
        const never = round.turn === 1 ? 'outside' : 'inside';
        expect(locate([sharp.value.parts[0]!.region], pointAt(round, 0.5))).not.toBe(never);
      }),
      { numRuns: 120 },
    );
    expect(rounded).toBeGreaterThan(60);
  });

  it('fits at the largest radius that is told, and not at more', () => {
    let told = 0;
    fc.assert(
      fc.property(corners, rises, (corner, rise) => {
        const refused = evaluate(form(corner, rise, '200 mm'));
        if (refused.ok || refused.problems[0]!.code !== 'form.round') return;
        const largest = Number(/: ([\d.]+) mm is the largest$/.exec(refused.problems[0]!.message)![1]);
        expect(largest).toBeGreaterThan(0);
        const fits = evaluate(form(corner, rise, `${largest} mm`));
        // It fits the corner; that it may meet another edge is another matter.
        if (!fits.ok) expect(fits.problems[0]!.code).toBe('form.crossing');
        else expectTangent(fits.value.parts[0]!.region.outer.edges, largest);
        const more = evaluate(form(corner, rise, `${(largest + 0.11).toFixed(2)} mm`));
        expect(more.ok ? [] : more.problems[0]!.code).toBe('form.round');
        told += 1;
      }),
      { numRuns: 60 },
    );
    expect(told).toBeGreaterThan(35);
  });
});
