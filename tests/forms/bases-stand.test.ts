import { describe, expect, test } from 'vitest';
import type { PlacedPart, StandingBase } from '../../src/base/index.ts';
import { dot3 } from '../../src/geometry/index.ts';
import { describeForm } from '../../src/sketch/index.ts';
import { BASE_FORMS } from './forms.ts';
import {
  areaOfFace,
  baseOf,
  bearing,
  extentOf,
  flatFacesOf,
  partsAt,
  standingOf,
  type WorldFace,
} from './standing-bases.ts';

const EXACT = 9;

test('the six base forms are there', () => {
  expect(BASE_FORMS.map(({ name }) => name)).toEqual([
    'arched-trestle',
    'bench-base',
    'crossed-base',
    'raked-table',
    'shallow-v-trestle',
    'stool-base',
  ]);
});

/** The faces of a piece by which it bears on pieces of the other place. */
function bearingFaces(
  part: PlacedPart,
  others: readonly PlacedPart[],
): readonly (readonly [WorldFace, number])[] {
  return flatFacesOf(part)
    .map((face) => [face, bearing(face, others)] as const)
    .filter(([, area]) => area > 1);
}

describe.each(BASE_FORMS.map((form) => [form.name, form] as const))('%s', (name, form) => {
  const base = standingOf(name);

  test('is named like its file and driven by overall height, thickness of the top, levellers and stock', () => {
    expect(form.file).toBe(`${name}.yaml`);
    const names = describeForm(form).parameters.map((parameter) => parameter.name);
    for (const driver of ['overall_height', 'top_thickness', 'levellers', 'stock'])
      expect(names).toContain(driver);
  });

  test('has every part cut by every plane that it names, right through', () => {
    for (const { id, cuts, face, back } of base.parts) {
      for (const cut of cuts) expect(cut, `${id} by ${cut.name}`).toMatchObject({ meets: true, short: 0 });
      expect([face.length, back.length], id).toEqual([1, 1]);
      const left = [...face, ...back]
        .flatMap(({ outer }) => outer.edges)
        .filter(({ tag }) => tag.id.startsWith('spare') && tag.role === 'sawn');
      expect(left.map(({ tag }) => `${id}.${tag.id}`)).toEqual([]);
    }
  });

  test('stands on the floor and reaches up to the top', () => {
    for (const levellers of [0, 8]) {
      const raised = standingOf(name, { levellers });
      const [lowest, highest] = extentOf(raised.parts, 'z');
      expect(lowest).toBeCloseTo(levellers, EXACT);
      expect(highest).toBeCloseTo(raised.top.level, EXACT);
      const { overall_height: overall, top_thickness: thickness } = Object.fromEntries(
        describeForm(form).parameters.map((parameter) => [parameter.name, parameter.default]),
      );
      expect(raised.top.level + raised.top.thickness).toBeCloseTo(Number(overall), EXACT);
      expect(raised.top.thickness).toBe(thickness);
      expect(raised.planes.floor).toEqual({ normal: { x: 0, y: 0, z: -1 }, offset: 0 - levellers });
      expect(raised.planes.underside?.offset).toBeCloseTo(raised.top.level, EXACT);
    }
  });

  test('is alike on the left and on the right, at the front and at the back', () => {
    for (const axis of ['x', 'y'] as const) {
      const [least, most] = extentOf(base.parts, axis);
      expect(least).toBeCloseTo(-most, EXACT);
    }
  });

  test('makes mirrored pieces of the other hand, and marks each piece of a place apart', () => {
    const sketched = baseOf(name);
    for (const place of sketched.places) {
      const pieces = partsAt(base, place.name);
      const hands = pieces.map(({ hand }) => hand);
      const mirrors = place.copies.filter(({ kind }) => kind === 'mirror').length;
      expect(pieces).toHaveLength(2 ** mirrors);
      expect(hands.filter((hand) => hand === 'right')).toHaveLength(mirrors === 0 ? 0 : pieces.length / 2);
      expect(new Set(pieces.map(({ mark }) => mark)).size).toBe(pieces.length);
    }
  });

  test('has its beams level and their upper edges under the top', () => {
    for (const part of base.parts.filter(({ beam }) => beam)) {
      expect(part.frame.y.z, part.id).toBeCloseTo(0, 12);
      const upper = flatFacesOf(part).find(({ plane }) => Math.abs(plane.normal.z - 1) < 1e-12);
      expect(upper?.plane.offset, part.id).toBeCloseTo(base.top.level, EXACT);
    }
  });

  test.each(base.joints.map((joint) => [joint.name, joint] as const))(
    'joins %s face to face',
    (_, { between: [a, b], kind }) => {
      if (kind === 'halved') return expectHalved(base, a);
      for (const part of partsAt(base, a)) {
        const mates = partsAt(base, b).filter((other) => other !== part);
        const faces = bearingFaces(part, mates);
        expect(faces.length, part.id).toBeGreaterThan(0);
        // An end that is cut against another part bears on it all over.
        for (const [face, area] of faces) {
          if (!part.cuts.some((cut) => cut.name === face.id)) continue;
          expect(area / areaOfFace(face), `${part.id} ${face.id}`).toBeCloseTo(1, 6);
        }
      }
      for (const part of partsAt(base, b)) {
        const mates = partsAt(base, a).filter((other) => other !== part);
        expect(bearingFaces(part, mates).length, part.id).toBeGreaterThan(0);
      }
    },
  );
});

/** Pieces that are halved into each other lie between the same two planes and cross. */
function expectHalved(base: StandingBase, place: string): void {
  for (const part of partsAt(base, place)) {
    const crossing = partsAt(base, place).filter(
      (other) =>
        other !== part &&
        dot3(other.frame.z, part.frame.z) > 1 - 1e-12 &&
        Math.abs(dot3(other.frame.z, other.frame.origin) - dot3(part.frame.z, part.frame.origin)) < 1e-6,
    );
    expect(crossing.map(({ hand }) => hand)).toEqual([part.hand === 'left' ? 'right' : 'left']);
  }
}
