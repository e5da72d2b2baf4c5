import { describe, expect, it } from 'vitest';
import { standBase } from '../../../src/base/index.ts';
import {
  boundsOfRegions,
  dot3,
  pointToWorld,
  polygonOutline,
  vec,
  vec3,
} from '../../../src/geometry/index.ts';
import type { PlacedSketch, Sketch, SketchedBase, SketchedPart } from '../../../src/sketch/index.ts';
import { board, partOf, place, stand } from '../hand-made.ts';

const FLOOR = { kind: 'through', through: vec3(0, 0, 0), facing: vec3(0, 0, -1) } as const;
const LEG = board('leg', 80, 700, 30);

const refusalOf = (
  parts: readonly SketchedPart[],
  places: readonly PlacedSketch[],
  planes: SketchedBase['planes'] = {},
) => {
  const base = { use: 'table', top: {}, levellers: 0, planes, joints: [], places } as unknown as SketchedBase;
  const stood = standBase({ form: 'by hand', parts, base } as unknown as Sketch);
  return stood.ok ? [] : stood.problems.map(({ code, path }) => `${code} ${path}`);
};

describe('a standing base', () => {
  it('has every copy of every place, each with its own name, mark and hand', () => {
    const four = place('leg', 'leg', {
      at: vec3(-500, -200, 0),
      copies: [
        { kind: 'mirror', across: 'left-right' },
        { kind: 'mirror', across: 'front-back' },
      ],
    });
    const { parts } = stand([LEG, board('rail', 60, 900, 24)], [four, place('rail', 'rail')]);
    expect(parts.map(({ id, copy, mark, hand }) => [id, copy, mark, hand])).toEqual([
      ['leg', 0, 'FL', 'left'],
      ['leg-2', 1, 'FR', 'right'],
      ['leg-3', 2, 'BL', 'right'],
      ['leg-4', 3, 'BR', 'left'],
      ['rail', 0, '', 'left'],
    ]);
  });

  it('cuts a copy as the part itself, mirrored: heights and lengths are alike to the last digit', () => {
    const leaning = place('leg', 'leg', {
      at: vec3(-500, -200, -40),
      along: vec3(0.2, 0.1, 1),
      trims: [{ plane: 'floor', otherSide: false }],
      copies: [{ kind: 'mirror', across: 'left-right' }],
    });
    const [left, right] = stand([LEG], [leaning], { planes: { floor: FLOOR } }).parts;
    const corner = (part: typeof left, at: number) =>
      pointToWorld(part!.frame, { ...part!.face[0]!.outer.edges[at]!.from, z: 0 });
    const heights = (part: typeof left) =>
      part!.face[0]!.outer.edges.map((_, at) => corner(part, at).z).sort();
    expect(heights(right)).toEqual(heights(left).map((z) => expect.closeTo(z, 10)));
    expect(boundsOfRegions(right!.face).maxX).toBeCloseTo(-boundsOfRegions(left!.face).minX, 10);
    expect(right!.cuts[0]!.plane.normal.x).toBeCloseTo(-left!.cuts[0]!.plane.normal.x, 12);
    // Both show their face side to the sitter.
    for (const { frame } of [left!, right!]) expect(dot3(frame.z, vec3(0, -1, 0))).toBeGreaterThan(0.9);
  });

  it('leaves the place of an absent part empty', () => {
    const { parts } = stand([LEG], [place('leg', 'leg'), place('tie', 'tie')]);
    expect(parts.map(({ id }) => id)).toEqual(['leg']);
  });

  it('keeps what lies on the other side of a plane, where a part stands against another', () => {
    const against = (otherSide: boolean) =>
      stand([LEG], [place('leg', 'leg', { at: vec3(0, 0, -100), trims: [{ plane: 'floor', otherSide }] })], {
        planes: { floor: FLOOR },
      }).parts[0]!;
    expect(boundsOfRegions(against(false).face)).toMatchObject({ minY: 100, maxY: 700 });
    expect(boundsOfRegions(against(true).face)).toMatchObject({ minY: 0, maxY: 100 });
  });

  it('may be cut into two feet', () => {
    const arched = partOf(
      'panel',
      polygonOutline(
        [
          vec(0, 0),
          vec(80, 0),
          vec(80, 60),
          vec(220, 60),
          vec(220, 0),
          vec(300, 0),
          vec(300, 400),
          vec(0, 400),
        ],
        { id: 'edge', role: 'routed' },
      ),
      30,
    );
    const trims = [{ plane: 'floor', otherSide: false }];
    const [panel] = stand([arched], [place('panel', 'panel', { at: vec3(0, 0, -20), trims })], {
      planes: { floor: FLOOR },
    }).parts;
    const feet = panel!.face[0]!.outer.edges.filter(({ tag }) => tag.id === 'floor');
    expect(feet).toHaveLength(2);
    expect(panel!.cuts).toMatchObject([{ meets: true, short: 0 }]);
  });
});

describe('a base that cannot stand', () => {
  it('says which place looks the same way with its length and its face', () => {
    expect(refusalOf([LEG], [place('leg', 'leg', { face: vec3(0, 0, 1) })])).toEqual([
      'base.direction base.places.leg',
    ]);
  });

  it('says which cut would plane a part thinner', () => {
    const trims = [{ plane: 'floor', otherSide: false }];
    const flat = place('leg', 'leg', { along: vec3(0, 1, 0), face: vec3(0, 0, -1), trims });
    expect(refusalOf([LEG], [flat], { floor: FLOOR })).toEqual(['base.flat-cut base.places.leg.trims']);
  });

  it('says of which part its planes leave nothing', () => {
    const trims = [{ plane: 'floor', otherSide: true }];
    expect(refusalOf([LEG], [place('leg', 'leg', { trims })], { floor: FLOOR })).toEqual([
      'base.all-cut base.places.leg',
    ]);
  });

  it('says which plane has no face to lie on', () => {
    const of = { place: 'leg', face: 'hollow', mirrored: [] } as const;
    expect(refusalOf([LEG], [place('leg', 'leg')], { hollow: { kind: 'face', of, out: 0 } })).toEqual([
      'base.plane base.planes.hollow',
    ]);
  });
});
