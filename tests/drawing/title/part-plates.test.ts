import { describe, expect, test } from 'vitest';
import { joinBase, partsToMake } from '../../../src/base/index.ts';
import type { Mark, PathMark } from '../../../src/drawing/api.ts';
import { boundsOfMarks } from '../../../src/drawing/scene/bounds-of-marks.ts';
import { breaksOf } from '../../../src/drawing/title/breaks-of.ts';
import { jointPictures } from '../../../src/drawing/title/joint-pictures.ts';
import { partPictures } from '../../../src/drawing/title/part-pictures.ts';
import { platesOfPart } from '../../../src/drawing/title/part-plates.ts';
import { layPicture, type Picture } from '../../../src/drawing/title/picture.ts';
import { pointToFrame, pointToWorld } from '../../../src/geometry/index.ts';
import { standingOf } from '../../forms/standing-bases.ts';

const lengths = { unit: 'mm', decimals: 2 } as const;
const OPTIONS = {
  lengths: { unit: 'mm', decimals: 1 },
  page: { width: 210, height: 297 },
  title: { title: 'Rail', documentType: 'Part', number: '2', revision: 'A', date: '2026-03-09' },
} as const;

const base = standingOf('shallow-v-trestle');
const joined = joinBase(base, { cutter: 12, lengths });
const made = partsToMake(base, joined);
const longest = made.toSorted(
  (a, b) =>
    heightOf(b.face.flatMap(({ outer }) => outer.edges)) -
    heightOf(a.face.flatMap(({ outer }) => outer.edges)),
)[0]!;
const placed = base.parts.find(({ id }) => id === longest.members[0]!.part)!;

function heightOf(edges: readonly { readonly from: { readonly y: number } }[]): number {
  const ys = edges.map(({ from }) => from.y);
  return Math.max(...ys) - Math.min(...ys);
}

const isPath = (mark: Mark): mark is PathMark => mark.kind === 'path';
const textsOf = (marks: readonly Mark[]) =>
  marks.flatMap((mark) => (mark.kind === 'text' ? [mark.text] : []));

describe('a long part', () => {
  test('is broken so that its ends are drawn at 1:2, with break lines of ISO 128 and its whole length as the figure', () => {
    const length = heightOf(longest.face.flatMap(({ outer }) => outer.edges));
    expect(length).toBeGreaterThan(900);
    const plates = platesOfPart(longest, placed, OPTIONS);
    expect(plates[0]!.scale).toBe('1:2');
    const drawn = plates[0]!.scene.marks;
    // A zigzag is five strokes of a thin line.
    const zigzags = drawn.filter(isPath).filter(({ role, edges }) => role === 'thin' && edges.length === 5);
    expect(zigzags.length).toBeGreaterThanOrEqual(4);
    expect(textsOf(drawn)).toContain(`${Math.round(length * 10) / 10}`);
  });

  test('loses in a break only what stays of it in the figures: lengths are drawn shorter by what is left out', () => {
    const [face, side] = partPictures(longest, placed) as [Picture, Picture];
    const scale = 1 / 2;
    const pieces = breaksOf([face, side], scale)!;
    const whole = layPicture(face, scale, lengths);
    const broken = layPicture({ ...face, pieces }, scale, lengths);
    const out = pieces.slice(1).reduce((sum, { from }, at) => sum + from - pieces[at]!.to, 0);
    const gap = 6;
    const tall = (marks: readonly Mark[]) => {
      const { minY, maxY } = boundsOfMarks(marks.filter(({ role }) => role === 'visible'));
      return maxY - minY;
    };
    expect(tall(whole.marks) - tall(broken.marks)).toBeCloseTo(out * scale - gap * (pieces.length - 1), 6);
    const figures = (laid: typeof whole) =>
      laid.laid.map(({ dimension, figure }) => `${dimension.name} ${figure}`).toSorted();
    expect(figures(broken)).toEqual(figures(whole));
    // Nothing that is dimensioned or turns a corner lies in what is left out.
    for (const [at, { from }] of pieces.slice(1).entries()) {
      const isLost = (y: number): boolean => y > pieces[at]!.to && y < from;
      const corners = face.view.lines.flatMap(({ edges }) =>
        edges.flatMap((edge) => [edge.from.y, edge.to.y]),
      );
      expect(corners.filter(isLost)).toEqual([]);
    }
  });
});

test('a part that can be read whole is not broken', () => {
  const short = made.toSorted(
    (a, b) =>
      heightOf(a.face.flatMap(({ outer }) => outer.edges)) -
      heightOf(b.face.flatMap(({ outer }) => outer.edges)),
  )[0]!;
  const own = base.parts.find(({ id }) => id === short.members[0]!.part)!;
  const [{ scene }] = platesOfPart(short, own, OPTIONS) as [ReturnType<typeof platesOfPart>[number]];
  const zigzags = scene.marks
    .filter(isPath)
    .filter(({ role, edges }) => role === 'thin' && edges.length === 5);
  expect(zigzags).toEqual([]);
});

describe('what is marked out for a joint', () => {
  test.each(joined.joints.map((joint) => [joint.id, joint] as const))(
    '%s: figures are those of its measures, from faces that are there',
    (_, joint) => {
      for (const { part, work } of joint.sides) {
        const own = base.parts.find(({ id }) => id === part)!;
        const pictures = jointPictures(own, { label: 'Part', faceOf: (face) => face }, work, 1 / 2);
        const wanted = work.flatMap((each) =>
          each.kind === 'pocket'
            ? []
            : each.measures
                .filter(({ to }) => (each.kind === 'hole' ? to === 'centre' : to !== 'centre'))
                .map(({ value }) => value),
        );
        const drawn = pictures.flatMap(({ dimensions }) =>
          dimensions.flatMap((each) =>
            each.kind === 'length' && each.name.includes('from the')
              ? [Math.hypot(each.to.x - each.from.x, each.to.y - each.from.y)]
              : [],
          ),
        );
        for (const value of wanted) {
          expect(
            drawn.some((each) => Math.abs(each - value) < 1e-6),
            `${value} of ${drawn.join(', ')}`,
          ).toBe(true);
        }
        for (const { dimensions, view, name } of pictures) {
          const { own: mouth } = work.find(
            (each) => each.kind !== 'pocket' && name === `Part, ${each.face}`,
          ) as {
            readonly own: { readonly origin: { x: number; y: number; z: number } };
          };
          const { z } = pointToFrame(view.camera, mouth.origin);
          // What is measured from the face side begins on it: at depth 0 of the part, in the plane of the face that is marked.
          for (const each of dimensions) {
            if (each.kind !== 'length' || !each.name.endsWith('face side')) continue;
            expect(pointToWorld(view.camera, { ...each.from, z }).z).toBeCloseTo(0, 6);
          }
        }
      }
    },
  );
});
