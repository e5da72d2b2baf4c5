import fc from 'fast-check';
import { expect, test } from 'vitest';
import { drawPattern, type PatternOptions } from '../../src/drawing/index.ts';
import { arc, circleOutline, type Edge, line, reverseEdge, type Vec, vec } from '../../src/geometry/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import { type PatternCase, withRouting } from '../cases/pattern-cases.ts';
import { patternOptions } from '../drawing/pattern-options.ts';
import { dimensionsDrawn, overlappingTexts, textsOf } from '../drawing/pattern-reading.ts';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

/** A limb that leans, tapers, bows in or out, may have a hole, and carries the dimensions that such a limb has. */
const limbs: fc.Arbitrary<PatternCase> = fc
  .record({
    long: between(180, 1150),
    foot: between(30, 140),
    head: between(30, 140),
    lean: between(-0.25, 0.25),
    bow: between(-0.06, 0.06),
    hole: between(0, 1),
    right: fc.constantFrom(0, 2),
    table: fc.boolean(),
    name: fc.constantFrom('Leg', 'Splayed leg', 'Long arched stretcher of the bench'),
  })
  .map(({ long, foot, head, lean, bow, hole, right, table, name }) => {
    const tip = vec(lean * long, long);
    const corners: readonly [Vec, Vec, Vec, Vec] = [vec(0, 0), vec(foot, 0), vec(tip.x + head, tip.y), tip];
    const [a, b, c, d] = corners;
    const outer: Edge[] = [
      line(a, b, { id: 'foot', role: 'sawn' }),
      bowed(b, c, bow * long),
      line(c, d, { id: 'head', role: 'joint' }),
      line(d, a, { id: 'outer', role: 'routed' }),
    ];
    const middle = vec((tip.x + foot / 2 + head / 2) / 2, long / 2);
    const radius = Math.min(foot, head) * 0.2;
    const isHoled = hole > 0.6 && Math.abs(bow) < 0.01;
    const window = circleOutline(middle, radius, { id: 'window', role: 'routed' }, 1).edges;
    const part: SketchedPart = {
      name: 'limb',
      label: name,
      region: {
        outer: { edges: outer },
        holes: isHoled ? [{ edges: [...window].reverse().map(reverseEdge) }] : [],
      },
      thickness: 30,
      grain: Math.PI / 2 - lean,
      up: Math.PI / 2,
      quantity: { left: 2, right },
      corners: [],
      openings: isHoled ? [{ name: 'window', label: 'window', hole: 0, plunge: middle }] : [],
      joints: [
        {
          name: 'rail',
          label: 'rail',
          from: vec(tip.x * 0.8, long * 0.8),
          to: vec(tip.x * 0.8 + foot, long * 0.8),
        },
      ],
      dimensions: [
        lengthOf('foot', a, b),
        lengthOf('head', d, c),
        lengthOf('side', a, d),
        lengthOf('diagonal', a, c),
        lengthOf('height', a, d, Math.PI / 2),
        { kind: 'angle', name: 'angle', label: 'at the foot', at: a, value: Math.PI / 2 - lean },
      ],
      centreLine: { from: vec(foot / 2, 0), to: vec(tip.x + head / 2, long) },
    };
    const made = withRouting(part);
    const machine = table ? 'table' : 'hand-held';
    return { part, routing: { ...made.routing, tooling: { ...made.routing.tooling, machine } } };
  });

function bowed(from: Vec, to: Vec, rise: number): Edge {
  const tag = { id: 'inner', role: 'routed' } as const;
  if (Math.abs(rise) < 0.5) return line(from, to, tag);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = (chord ** 2 / 4 + rise ** 2) / (2 * Math.abs(rise));
  // Bowed out (anticlockwise) the centre lies on the left of the chord, bowed in on its right.
  const side = Math.sign(rise) * (radius - Math.abs(rise));
  const normal = vec(-(to.y - from.y) / chord, (to.x - from.x) / chord);
  const centre = vec((from.x + to.x) / 2 + normal.x * side, (from.y + to.y) / 2 + normal.y * side);
  return arc(from, to, centre, rise > 0 ? 1 : -1, tag);
}

function lengthOf(name: string, from: Vec, to: Vec, along?: number) {
  const value = along === undefined ? Math.hypot(to.x - from.x, to.y - from.y) : Math.abs(to.y - from.y);
  return {
    kind: 'length',
    name,
    label: name,
    from,
    to,
    value,
    ...(along === undefined ? {} : { along }),
  } as const;
}

const options: fc.Arbitrary<PatternOptions> = fc.record({
  view: fc.constantFrom('part', 'template', 'as-routed', 'all'),
  mirrored: fc.boolean(),
  lengths: fc.constantFrom({ unit: 'mm', decimals: 1 } as const, { unit: 'in', denominator: 32 } as const),
  design: fc.constant(patternOptions().design),
  revision: fc.constant('B'),
  date: fc.constant('2026-02-03'),
});

test('on any limb no lettering stands on other lettering, and the name stands in the part', () => {
  fc.assert(
    fc.property(limbs, options, ({ part, routing }, how) => {
      const pattern = drawPattern(part, routing, how);
      expect(overlappingTexts(pattern)).toEqual([]);
      expect(textsOf(pattern).some(({ text }) => text.startsWith(part.label))).toBe(true);
      const { minX, minY, maxX, maxY } = pattern.withNotes.box;
      expect([minX, minY, maxX, maxY].every(Number.isFinite)).toBe(true);
    }),
    { numRuns: 25 },
  );
});

test('on any limb every dimension line is as long as its figure says', () => {
  fc.assert(
    fc.property(limbs, ({ part, routing }) => {
      const pattern = drawPattern(part, routing, patternOptions());
      for (const { drawn, figure } of dimensionsDrawn(pattern)) {
        expect(Math.abs(Number(figure) - drawn), figure).toBeLessThan(0.0501);
      }
    }),
    { numRuns: 15 },
  );
});
