import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  checkOwnShape,
  formOfOwnShape,
  loopsOfRegion,
  type OwnShape,
  readOutlineSvg,
} from '../../../src/design/index.ts';
import {
  areaOfRegions,
  boundsOfEdges,
  circleOutline,
  distance,
  edgesOfLoop,
  nearestOnEdges,
  pointAt,
  type Region,
  type Stroke,
  snapPoint,
  subtractRegions,
  symmetricDifference,
  truePhotograph,
  type Vec,
} from '../../../src/geometry/index.ts';
import { evaluateForm } from '../../../src/sketch/index.ts';

const shapeOf = (loops: OwnShape['loops']): OwnShape => ({
  title: 'Old chair leg, left',
  loops,
  thickness: 32,
  grain: Math.PI / 2,
  up: Math.PI / 2,
  pieces: 2,
});

/** A form as it is drawn at its defaults. */
function drawn(shape: OwnShape): Region {
  const written = formOfOwnShape(shape);
  if (!written.ok) throw new Error(JSON.stringify(written.problems));
  const sketch = evaluateForm(written.value.form, {});
  if (!sketch.ok) throw new Error(JSON.stringify(sketch.problems));
  return sketch.value.parts[0]!.region;
}

/** Largest distance of the strokes' own edges, moved to the corner of their box, from an outline. */
function strayOf(loop: OwnShape['loops'][number], origin: Vec, region: Region): number {
  const all = [region.outer, ...region.holes].flatMap(({ edges }) => edges);
  const samples = edgesOfLoop(loop).flatMap((edge) => [0, 0.2, 0.5, 0.9].map((t) => pointAt(edge, t)));
  return Math.max(
    ...samples.map(({ x, y }) => nearestOnEdges(all, { x: x - origin.x, y: y - origin.y }).distance),
  );
}

/** A blob round a middle: corners at rising angles, each stroke of any kind that stays near its chord. */
const blob: fc.Arbitrary<OwnShape> = fc
  .array(
    fc.record({
      radius: fc.integer({ min: 60, max: 100 }),
      kind: fc.constantFrom('line' as const, 'arc' as const, 'batten' as const),
      bow: fc.integer({ min: -4, max: 4 }),
      role: fc.constantFrom('routed' as const, 'sawn' as const),
    }),
    { minLength: 3, maxLength: 9 },
  )
  .map((corners): OwnShape => {
    const at = (i: number): Vec => {
      const turn = (2 * Math.PI * i) / corners.length;
      const { radius } = corners[i % corners.length]!;
      return { x: 300 + radius * Math.cos(turn), y: -50 + 3 * radius * Math.sin(turn) };
    };
    const strokes = corners.map(({ kind, bow, role }, i): Stroke => {
      const [from, to] = [at(i), i === corners.length - 1 ? at(0) : at(i + 1)];
      const long = distance(from, to);
      const off = (share: number, by: number): Vec => ({
        x: from.x + share * (to.x - from.x) + (by * (from.y - to.y)) / long,
        y: from.y + share * (to.y - from.y) + (by * (to.x - from.x)) / long,
      });
      if (kind === 'line' || bow === 0) return { kind: 'line', to, role };
      if (kind === 'arc') return { kind: 'arc', through: off(0.5, bow), to, role };
      return { kind: 'batten', nails: [off(0.3, bow), off(0.7, -bow / 2)], to, role, smooth: false };
    });
    return shapeOf([{ start: at(0), strokes }]);
  });

describe('a shape drawn by hand', () => {
  it('becomes a form that draws the very outline', () => {
    fc.assert(
      fc.property(blob, (shape) => {
        const [loop] = shape.loops;
        const { minX, minY } = boundsOfEdges(edgesOfLoop(loop!));
        expect(strayOf(loop!, { x: minX, y: minY }, drawn(shape))).toBeLessThan(0.001);
      }),
      { numRuns: 60 },
    );
  });

  it('keeps roles and openings, and can be drawn out', () => {
    const plate = circleOutline({ x: 0, y: 0 }, 100, { id: 'rim', role: 'routed' });
    const hole = circleOutline({ x: 20, y: 10 }, 30, { id: 'rim', role: 'left' });
    const [region] = subtractRegions([{ outer: plate, holes: [] }], [{ outer: hole, holes: [] }]);
    const shape = shapeOf(loopsOfRegion(region!));
    const back = drawn(shape);
    expect(back.holes).toHaveLength(1);
    expect(new Set(back.holes[0]!.edges.map(({ tag }) => tag.role))).toEqual(new Set(['left']));
    // π (100² − 30²).
    expect(areaOfRegions([back])).toBeCloseTo(Math.PI * 9100, 1);
    const written = formOfOwnShape(shape);
    if (!written.ok) throw new Error('shape');
    const wide = evaluateForm(written.value.form, { width: 300 });
    expect(wide.ok && boundsOfEdges(wide.value.parts[0]!.region.outer.edges).maxX).toBeCloseTo(300, 2);
  });

  it('is read from an SVG file', () => {
    const svg =
      '<svg xmlns="http://www.w3.org/2000/svg" width="100mm" height="200mm" viewBox="0 0 100 200"><path d="M10 190 L60 190 C60 120 90 80 90 10 L40 10 C30 90 10 120 10 190 Z"/></svg>';
    const read = readOutlineSvg(svg, 'leg.svg');
    if (!read.ok) throw new Error('svg');
    const [region] = read.value.regions;
    const back = drawn(shapeOf(loopsOfRegion(region!)));
    const { minX, minY } = boundsOfEdges(region!.outer.edges);
    const moved = {
      outer: {
        edges: region!.outer.edges.map((edge) => {
          const shift = ({ x, y }: Vec): Vec => ({ x: x - minX, y: y - minY });
          const ends = { ...edge, from: shift(edge.from), to: shift(edge.to) };
          return edge.kind === 'arc' && ends.kind === 'arc' ? { ...ends, centre: shift(edge.centre) } : ends;
        }),
      },
      holes: [],
    };
    expect(areaOfRegions(symmetricDifference([back], [moved]))).toBeLessThan(0.1);
  });

  it('takes any title for a name', () => {
    for (const title of ['  ', '3 "legs": {x}\n# no', 'Stuhlbein für Übergröße', 'a'.repeat(300)]) {
      const written = formOfOwnShape({
        ...shapeOf([
          {
            start: { x: 0, y: 0 },
            strokes: [
              { kind: 'line', to: { x: 50, y: 0 }, role: 'sawn' },
              { kind: 'line', to: { x: 0, y: 90 }, role: 'routed' },
              { kind: 'line', to: { x: 0, y: 0 }, role: 'routed' },
            ],
          },
        ]),
        title,
      });
      expect(written.ok).toBe(true);
    }
  });

  it.each([
    ['nothing', [], 'own-shape.empty'],
    ['an open line', [{ to: [50, 0] }, { to: [50, 90] }], 'own-shape.open'],
    [
      'a crossing',
      [{ to: [50, 0] }, { to: [0, 90] }, { to: [50, 90] }, { to: [0, 0] }],
      'own-shape.crossing',
    ],
    ['a stroke of no length', [{ to: [50, 0] }, { to: [50, 0] }, { to: [0, 0] }], 'own-shape.no-length'],
  ] as const)('says what is wrong with %s', (_, ends, code) => {
    const strokes = ends.map(
      ({ to }): Stroke => ({ kind: 'line', to: { x: to[0], y: to[1] }, role: 'routed' }),
    );
    const shape = shapeOf([{ start: { x: 0, y: 0 }, strokes }]);
    expect(checkOwnShape(shape).map((each) => each.code)).toEqual([code]);
    expect(formOfOwnShape(shape).ok).toBe(false);
  });
});

describe('a drawn point', () => {
  const points = [
    { x: 0, y: 0 },
    { x: 100, y: 20 },
  ];
  const to = { points, edges: [], reach: 3 };
  it('goes onto a point, level or plumb with one, where two such lines cross, on along the stroke before, onto an edge', () => {
    expect(snapPoint({ x: 1, y: -1 }, to)).toEqual({
      at: points[0],
      held: [{ by: 'point', from: points[0] }],
    });
    expect(snapPoint({ x: 150, y: 21 }, to)).toEqual({
      at: { x: 150, y: 20 },
      held: [{ by: 'level', from: points[1] }],
    });
    expect(snapPoint({ x: 98, y: 60 }, to).at).toEqual({ x: 100, y: 60 });
    expect(snapPoint({ x: 1, y: 21 }, to)).toMatchObject({
      at: { x: 0, y: 20 },
      held: [{ by: 'level' }, { by: 'plumb' }],
    });
    const arriving = { x: Math.SQRT1_2, y: Math.SQRT1_2 };
    const on = snapPoint({ x: 131, y: 50 }, { ...to, arriving });
    expect(on.held).toEqual([{ by: 'tangent', from: points[1] }]);
    expect(on.at.x - 100).toBeCloseTo(on.at.y - 20, 9);
    const { edges } = circleOutline({ x: 300, y: 300 }, 50, { id: 'rim', role: 'routed' });
    expect(distance(snapPoint({ x: 337, y: 337 }, { ...to, edges }).at, { x: 300, y: 300 })).toBeCloseTo(
      50,
      9,
    );
    expect(snapPoint({ x: 200, y: 200 }, to)).toEqual({ at: { x: 200, y: 200 }, held: [] });
  });
});

describe('a photograph', () => {
  // A pinhole camera: the picture of a plane is a projection, written out here by itself.
  const picture = ({ x, y }: Vec): Vec => {
    const w = 1 + 0.0004 * x + 0.0007 * y;
    return { x: (900 + 2.1 * x + 0.2 * y) / w, y: (1500 - 0.1 * x - 2.4 * y) / w };
  };
  const corners = [
    { x: 0, y: 297 },
    { x: 210, y: 297 },
    { x: 210, y: 0 },
    { x: 0, y: 0 },
  ].map(picture) as unknown as Parameters<typeof truePhotograph>[0];

  it('is made true from the corners of a sheet of A4', () => {
    const made = truePhotograph(corners, { width: 210, height: 297 });
    if (!made.ok) throw new Error('photograph');
    const { toPlane } = made.value;
    const { x, y } = picture({ x: 400, y: -120 });
    const [a, b, c, d, e, f, g, h, i] = toPlane;
    const w = g * x + h * y + i;
    expect((a * x + b * y + c) / w).toBeCloseTo(400, 6);
    expect((d * x + e * y + f) / w).toBeCloseTo(-120, 6);
  });

  it('tells how far off a place may be, as marking the corners again and again does', () => {
    const made = truePhotograph(corners, { width: 210, height: 297 });
    if (!made.ok) throw new Error('photograph');
    const place = { x: 400, y: -120 };
    const stated = made.value.errorAt(place);
    expect(made.value.errorAt({ x: 105, y: 148 })).toBeLessThan(stated / 2);
    // Corners off by one pixel in the root mean square, each way by itself: a thousand markings with a fixed sequence.
    let seed = 1;
    const random = (): number => {
      seed = (seed * 48271) % 2147483647;
      return seed / 2147483647;
    };
    const off = (): number => Math.sqrt(-2 * Math.log(random())) * Math.cos(2 * Math.PI * random());
    let sum = 0;
    for (let run = 0; run < 1000; run++) {
      const marked = corners.map(({ x, y }) => ({ x: x + off(), y: y + off() })) as unknown as typeof corners;
      const again = truePhotograph(marked, { width: 210, height: 297 });
      if (!again.ok) throw new Error('photograph');
      const [a, b, c, d, e, f, g, h, i] = again.value.toPlane;
      const p = picture(place);
      const w = g * p.x + h * p.y + i;
      sum += ((a * p.x + b * p.y + c) / w - place.x) ** 2 + ((d * p.x + e * p.y + f) / w - place.y) ** 2;
    }
    expect(Math.sqrt(sum / 1000) / stated).toBeGreaterThan(0.9);
    expect(Math.sqrt(sum / 1000) / stated).toBeLessThan(1.1);
  });

  it('says why four points will not do', () => {
    const [a, b, c, d] = corners;
    const crossed = truePhotograph([a, c, b, d], { width: 210, height: 297 });
    expect(crossed.ok ? '' : crossed.problems[0]!.code).toBe('photograph.corners');
  });
});
