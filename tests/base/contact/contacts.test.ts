import { describe, expect, test } from 'vitest';
import { contactsBetween } from '../../../src/base/contact/contacts-between.ts';
import { facesOf } from '../../../src/base/contact/faces-of.ts';
import { gapBetween } from '../../../src/base/contact/gap-between.ts';
import {
  areaOfRegions,
  boundsOfRegions,
  dot3,
  locate,
  pointToFrame,
  pointToWorld,
  vec,
  vec3,
} from '../../../src/geometry/index.ts';
import { board, place, shaped, stand } from '../hand-made.ts';

const degrees = (angle: number): number => (angle * Math.PI) / 180;

/** A leg leaning by an angle in its own plane, and a level rail that butts against its right edge, its end cut to the lean. */
function leanAndButt(lean: number, low = 400) {
  const slope = Math.tan(degrees(lean));
  const leg = shaped('leg', [vec(0, 0), vec(60, 0), vec(60 + 700 * slope, 700), vec(700 * slope, 700)], 40);
  const rail = board('rail', 90, 500, 24);
  return stand(
    [leg, rail],
    [
      place('leg', 'leg'),
      place('rail', 'rail', {
        at: vec3(60 + low * slope - 200, 8, low),
        along: vec3(1, 0, 0),
        face: vec3(0, -1, 0),
        pin: vec(90, 0),
        trims: [{ plane: 'leg edge', otherSide: false }],
      }),
    ],
    {
      planes: {
        'leg edge': {
          kind: 'through',
          through: vec3(60, 0, 0),
          facing: vec3(-Math.cos(degrees(lean)), 0, Math.sin(degrees(lean))),
        },
      },
    },
  );
}

describe('faces of a part', () => {
  test('a board has six, and together they are its whole surface', () => {
    const { parts } = stand([board('board', 80, 300, 20)], [place('board', 'board')]);
    const faces = facesOf(parts[0]!);
    expect(faces.map(({ name }) => name).sort()).toEqual(['back', 'bottom', 'face', 'left', 'right', 'top']);
    const surface = faces.reduce((sum, { regions }) => sum + areaOfRegions(regions), 0);
    expect(surface).toBeCloseTo(2 * (80 * 300 + 80 * 20 + 300 * 20), 6);
  });

  test('every normal looks out of the wood', () => {
    const base = leanAndButt(12);
    for (const part of base.parts) {
      const own = boundsOfRegions(part.silhouette);
      const middle = pointToWorld(part.frame, {
        x: (own.minX + own.maxX) / 2,
        y: (own.minY + own.maxY) / 2,
        z: -part.drawn.thickness / 2,
      });
      for (const { plane, frame } of facesOf(part)) {
        expect(dot3(plane.normal, middle)).toBeLessThan(plane.offset);
        expect(dot3(frame.z, plane.normal)).toBeCloseTo(1, 12);
      }
    }
  });

  test('a bevelled cut shows a face as much larger as it leans, and shortens the faces beside it', () => {
    const bevel = degrees(30);
    const { parts } = stand(
      [board('board', 80, 300, 20)],
      [place('board', 'board', { trims: [{ plane: 'cut', otherSide: false }] })],
      {
        planes: {
          // Leans through the thickness: the face side (towards the sitter) keeps more.
          cut: {
            kind: 'through',
            through: vec3(0, 0, 250),
            facing: vec3(0, Math.sin(bevel), Math.cos(bevel)),
          },
        },
      },
    );
    const byName = new Map(facesOf(parts[0]!).map((face) => [face.name, face]));
    expect(areaOfRegions(byName.get('cut')!.regions)).toBeCloseTo((80 * 20) / Math.cos(bevel), 6);
    expect(areaOfRegions(byName.get('face')!.regions)).toBeCloseTo(80 * 250, 6);
    expect(areaOfRegions(byName.get('back')!.regions)).toBeCloseTo(80 * (250 - 20 * Math.tan(bevel)), 6);
    expect(areaOfRegions(byName.get('left')!.regions)).toBeCloseTo(20 * (250 - 10 * Math.tan(bevel)), 6);
    expect(byName.has('top')).toBe(false);
  });
});

describe('contacts', () => {
  test('a rail butting a leaning leg touches it along its whole end', () => {
    const base = leanAndButt(12);
    const [leg, rail] = base.parts;
    const contacts = contactsBetween(rail!, leg!);
    expect(contacts).toHaveLength(1);
    const [contact] = contacts;
    expect(contact!.a.face.name).toBe('leg edge');
    expect(contact!.b.face.name).toBe('right');
    // The end of a 90 × 24 rail cut at 12° from square.
    expect(contact!.area).toBeCloseTo((90 * 24) / Math.cos(degrees(12)), 6);
    const box = boundsOfRegions(contact!.regions);
    expect(box.maxX).toBeCloseTo(45 / Math.cos(degrees(12)), 9);
    expect(box.minX).toBeCloseTo(-box.maxX, 9);
    expect(box.maxY).toBeCloseTo(12, 9);
  });

  test('its frame looks from the first part into the second', () => {
    const base = leanAndButt(12);
    const [leg, rail] = base.parts;
    const [contact] = contactsBetween(rail!, leg!);
    const inFrame = (part: typeof leg, z: number): string => {
      const p = pointToFrame(part!.frame, pointToWorld(contact!.frame, vec3(1, 1, z)));
      return locate([part!.drawn.region], { x: p.x, y: p.y });
    };
    expect(inFrame(leg, 5)).toBe('inside');
    expect(inFrame(leg, -5)).toBe('outside');
    expect(dot3(contact!.frame.z, contact!.a.face.plane.normal)).toBeCloseTo(1, 12);
  });

  test('parts that stand apart by more than the tolerance do not touch, and the gap is told', () => {
    for (const apart of [0.2, 5, -3]) {
      const base = stand(
        [board('post', 60, 700, 40), board('rail', 90, 500, 24)],
        [
          place('post', 'post'),
          place('rail', 'rail', { at: vec3(60 + apart, 8, 400), along: vec3(1, 0, 0), pin: vec(90, 0) }),
        ],
      );
      const [post, rail] = base.parts;
      expect(contactsBetween(post!, rail!)).toHaveLength(0);
      const gap = gapBetween(post!, rail!);
      expect(gap).toMatchObject({ a: 'right', b: 'bottom', turned: 0, opposite: true });
      expect(gap!.apart).toBeCloseTo(apart, 9);
    }
  });

  test('an end cut to another angle than the face it butts is told as turned', () => {
    const slope = Math.tan(degrees(2));
    const rail = shaped('rail', [vec(0, 0), vec(90, 90 * slope), vec(90, 500), vec(0, 500)], 24);
    const base = stand(
      [board('post', 60, 700, 40), rail],
      [
        place('post', 'post'),
        place('rail', 'rail', { at: vec3(60, 8, 400), along: vec3(1, 0, 0), pin: vec(0, 0) }),
      ],
    );
    const gap = gapBetween(base.parts[0]!, base.parts[1]!);
    expect(gap).toMatchObject({ a: 'right', b: 'bottom' });
    expect(gap!.turned).toBeCloseTo(degrees(2), 9);
  });
});
