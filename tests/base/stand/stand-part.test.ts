import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keepHalfPlane } from '../../../src/base/stand/section.ts';
import { cutPart, frameOfPlace, middleOf } from '../../../src/base/stand/stand-part.ts';
import {
  areaOfRegions,
  boundsOfRegions,
  distance3,
  dot3,
  findFaults,
  type Plane3,
  planeThrough,
  pointToWorld,
  subtractRegions,
  type Vec3,
  vec,
  vec3,
  WORLD,
} from '../../../src/geometry/index.ts';
import { board, place } from '../hand-made.ts';

const DEGREE = Math.PI / 180;
const LEG = board('leg', 80, 700, 30);

/** A plane across a part, in the part's own frame: through a place, leaning in the face and out of it. */
const across = (y: number, mitre: number, bevel: number): Plane3 =>
  planeThrough(
    vec3(0, y, 0),
    vec3(Math.sin(mitre) * Math.cos(bevel), Math.cos(mitre) * Math.cos(bevel), Math.sin(bevel)),
  );

const cut = (...planes: readonly Plane3[]) =>
  cutPart(
    LEG,
    WORLD,
    planes.map((plane, at) => ({ name: `cut_${at}`, plane })),
  );

const idsOf = (regions: ReturnType<typeof cut>['face']) =>
  regions.flatMap(({ outer }) => outer.edges.map(({ tag }) => `${tag.id} ${tag.role}`)).sort();

describe('the frame of a place', () => {
  it('stands upright with its face to the sitter, the width to the right', () => {
    const frame = frameOfPlace(place('leg', 'leg', { at: vec3(5, 6, 7) }))!;
    expect(frame.origin).toEqual(vec3(5, 6, 7));
    expect(distance3(frame.x, vec3(1, 0, 0))).toBeLessThan(1e-12);
    expect(distance3(frame.y, vec3(0, 0, 1))).toBeLessThan(1e-12);
    expect(distance3(frame.z, vec3(0, -1, 0))).toBeLessThan(1e-12);
  });

  it('lays the pin where it is asked, as deep as it is', () => {
    const pinned = place('leg', 'leg', { pin: vec(40, 10), pinDepth: 15, at: vec3(-500, -200, 0) });
    const frame = frameOfPlace(pinned)!;
    expect(distance3(pointToWorld(frame, vec3(40, 10, -15)), vec3(-500, -200, 0))).toBeLessThan(1e-12);
    // The face lies before the middle, nearer to the sitter.
    expect(pointToWorld(frame, vec3(40, 10, 0)).y).toBeCloseTo(-215, 12);
  });

  it('looks as nearly where it is asked as its length allows', () => {
    const along = vec3(0, Math.tan(10 * DEGREE), 1);
    const frame = frameOfPlace(place('leg', 'leg', { along }))!;
    expect(dot3(frame.z, frame.y)).toBeCloseTo(0, 12);
    expect(frame.z.y).toBeCloseTo(-Math.cos(10 * DEGREE), 12);
    expect(frame.z.z).toBeCloseTo(Math.sin(10 * DEGREE), 12);
  });

  it('is turned about its pin, one turn after the other, about the lines of the world', () => {
    const at = vec3(-500, 0, 0);
    const turns = [
      { about: 'x', by: -90 * DEGREE },
      { about: 'z', by: 90 * DEGREE },
    ] as const;
    const frame = frameOfPlace(place('leg', 'leg', { at, pin: vec(40, 0), turns }))!;
    // Upright, tipped backwards, then swung to the left as seen from above.
    expect(distance3(frame.y, vec3(-1, 0, 0))).toBeLessThan(1e-12);
    expect(distance3(frame.z, vec3(0, 0, 1))).toBeLessThan(1e-12);
    expect(distance3(pointToWorld(frame, vec3(40, 0, 0)), at)).toBeLessThan(1e-12);
  });

  it('is none where length and face look the same way', () => {
    expect(frameOfPlace(place('leg', 'leg', { face: vec3(0, 0, -2) }))).toBeUndefined();
  });
});

describe('a part cut by a plane', () => {
  it('is left with the wood behind it, its new edge called like the plane and sawn', () => {
    const { face, back, silhouette, cuts } = cut(across(600, 0, 0));
    for (const regions of [face, back, silhouette]) {
      expect(areaOfRegions(regions)).toBeCloseTo(80 * 600, 6);
      expect(idsOf(regions)).toEqual(['bottom sawn', 'cut_0 sawn', 'left routed', 'right routed']);
    }
    expect(cuts).toMatchObject([{ name: 'cut_0', role: 'sawn', meets: true, short: 0 }]);
  });

  it('has a longer face than back where the cut leans back, by the thickness times the tangent', () => {
    const bevel = 12 * DEGREE;
    const { face, back, silhouette } = cut(across(600, 0, -bevel));
    expect(boundsOfRegions(face).maxY).toBeCloseTo(600, 9);
    expect(boundsOfRegions(back).maxY).toBeCloseTo(600 - 30 * Math.tan(bevel), 9);
    expect(boundsOfRegions(silhouette).maxY).toBeCloseTo(600, 9);
    const other = cut(across(600, 0, bevel));
    expect(boundsOfRegions(other.back).maxY).toBeCloseTo(600 + 30 * Math.tan(bevel), 9);
    expect(boundsOfRegions(other.silhouette).maxY).toBeCloseTo(600 + 30 * Math.tan(bevel), 9);
  });

  it('is shorter on one side than on the other by its width times the tangent of the mitre', () => {
    const { face } = cut(across(600, 8 * DEGREE, 0));
    const edges = face[0]!.outer.edges;
    const heights = edges.filter(({ tag }) => tag.id === 'cut_0').flatMap(({ from, to }) => [from.y, to.y]);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(80 * Math.tan(8 * DEGREE), 9);
  });

  it('says that a plane beyond its end misses it, and how much longer it would have to be', () => {
    const square = cut(across(712, 0, 0));
    expect(square.cuts).toMatchObject([{ meets: false, short: expect.closeTo(12, 9) }]);
    expect(idsOf(square.face)).toContain('top sawn');
    // On the back, 30 mm deeper, a leaning plane passes farther out.
    const bevelled = cut(across(699, 0, 10 * DEGREE));
    expect(bevelled.cuts).toMatchObject([
      { meets: false, short: expect.closeTo(30 * Math.tan(10 * DEGREE) - 1, 9) },
    ]);
  });

  it('says how much longer it would have to be where a cut leaves part of the end that was drawn', () => {
    const mitre = 10 * DEGREE;
    const { cuts, face } = cut(across(705, mitre, 0));
    expect(idsOf(face)).toEqual(['bottom sawn', 'cut_0 sawn', 'left routed', 'right routed', 'top sawn']);
    expect(cuts).toMatchObject([{ meets: true, short: expect.closeTo(5, 9) }]);
    expect(cut(across(695, mitre, 0)).cuts).toMatchObject([{ meets: true, short: 0 }]);
  });

  it('does not take an edge of the same name for a cut', () => {
    const named = cutPart(LEG, WORLD, [{ name: 'top', plane: across(705, 0, 0) }]);
    expect(named.cuts).toMatchObject([{ meets: false, short: expect.closeTo(5, 9) }]);
  });

  it('holds face and back and all between in its silhouette, whatever the cuts', () => {
    const lean = fc.integer({ min: -30, max: 30 }).map((each) => each * DEGREE);
    const planes = fc.tuple(
      fc.tuple(fc.integer({ min: 400, max: 690 }), lean, lean).map((each) => across(...each)),
      fc
        .tuple(fc.integer({ min: 10, max: 300 }), lean, lean)
        .map((each) => across(...each))
        .map(({ normal, offset }) => ({ normal: vec3(normal.x, -normal.y, normal.z), offset: -offset })),
    );
    fc.assert(
      fc.property(planes, fc.integer({ min: 0, max: 30 }), (both, depth) => {
        const { face, back, silhouette } = cut(...both);
        const between = both.reduce(
          (left, { normal, offset }) =>
            keepHalfPlane(left, { normal, offset: offset + normal.z * depth }, { name: 'at', role: 'sawn' }),
          [LEG.region] as Parameters<typeof keepHalfPlane>[0],
        );
        for (const regions of [face, back, between]) {
          expect(findFaults([...regions])).toEqual([]);
          expect(areaOfRegions(subtractRegions(regions, silhouette))).toBeLessThan(1e-6);
        }
      }),
      { numRuns: 100 },
    );
  });

  it('has its middle in the world halfway through its thickness', () => {
    const frame = frameOfPlace(place('leg', 'leg', { at: vec3(100, 200, 0) }))!;
    const flat: Vec3 = vec3(0, 0, 1);
    const { silhouette } = cutPart(LEG, frame, [
      { name: 'head', plane: planeThrough(vec3(0, 0, 600), flat) },
    ]);
    expect(middleOf({ frame, silhouette, drawn: LEG })).toEqual(vec3(140, 215, 300));
  });
});
