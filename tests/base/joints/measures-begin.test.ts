import { describe, expect, test } from 'vitest';
import { type JointWork, joinBase, type PlacedPart } from '../../../src/base/index.ts';
import { add3, dot3, length3, scale3, subtract3, type Vec, type Vec3 } from '../../../src/geometry/index.ts';
import { BASE_FORMS } from '../../forms/forms.ts';
import { standingOf } from '../../forms/standing-bases.ts';

type Marked = Exclude<JointWork, { kind: 'pocket' }>;

/** Corners of a part as it is sawn: of its face side, of its back, and of the box of the wood it is cut from. */
function cornersOf({ face, back, silhouette, drawn }: PlacedPart): readonly Vec3[] {
  const at = (z: number, regions: PlacedPart['face']): readonly Vec3[] =>
    regions.flatMap(({ outer }) => outer.edges.map(({ from }) => ({ ...from, z })));
  const blank = silhouette.flatMap(({ outer }) => outer.edges.map(({ from }) => from));
  const [xs, ys] = [blank.map(({ x }) => x), blank.map(({ y }) => y)];
  const box = [Math.min(...xs), Math.max(...xs)].flatMap((x) =>
    [Math.min(...ys), Math.max(...ys)].map((y) => ({ x, y, z: 0 })),
  );
  return [...at(0, face), ...at(-drawn.thickness, back), ...box];
}

type Line = readonly [Vec, Vec];

/** The line of the edge that is named; of none, the long sides of the wood that the part is cut from. */
function linesOf({ face, silhouette }: PlacedPart, edge: string | undefined): readonly Line[] {
  const named = face.flatMap(({ outer }) => outer.edges.filter(({ tag }) => tag.id === edge));
  if (edge !== undefined) return named.map(({ from, to }): Line => [from, to]);
  const blank = silhouette.flatMap(({ outer }) => outer.edges.map(({ from }) => from));
  const xs = blank.map(({ x }) => x);
  const sides = [Math.min(...xs), Math.max(...xs)].map(
    (x): Line => [
      { x, y: 0 },
      { x, y: 1 },
    ],
  );
  return sides;
}

function offLine([from, to]: Line, at: Vec): number {
  const [x, y] = [to.x - from.x, to.y - from.y];
  return Math.abs((at.x - from.x) * y - (at.y - from.y) * x) / Math.hypot(x, y);
}

describe.each(BASE_FORMS.map(({ name }) => name))('%s', (form) => {
  const base = standingOf(form);
  const joined = joinBase(base, { cutter: 12, lengths: { unit: 'mm', decimals: 2 } });

  test('every figure that is marked out begins at the face side, the face edge or an end that it names, and ends at the work', () => {
    let seen = 0;
    for (const { part: id, work } of joined.joints.flatMap(({ sides }) => sides)) {
      const part = base.parts.find((each) => each.id === id)!;
      const corners = cornersOf(part);
      for (const marked of work.filter((each): each is Marked => each.kind !== 'pocket')) {
        const { own, measures } = marked;
        const alongEnd = measures.filter(({ along }) => along === 'end');
        if (marked.kind === 'mortise' && alongEnd.length > 0) {
          // A slot is as long by the rule on its end as what goes into it, slanting though the end may be.
          const [near, far] = (['near side', 'far side'] as const).map(
            (to) => alongEnd.find((each) => each.to === to)!.value,
          );
          expect(far! - near!, `${form}, ${id}: along the end`).toBeCloseTo(marked.length, 9);
        }
        for (const { from, edge, along, to, value, away } of measures) {
          const seenAt = `${form}, ${id}: ${to} from the ${from}`;
          expect(length3(away), seenAt).toBeCloseTo(1, 9);
          if (to !== 'centre') continue;
          // A rule laid from the middle of the mouth back the way it is measured ends where the reference is.
          const begins = add3(own.origin, scale3(away, -value));
          if (from === 'face side') expect(begins.z, seenAt).toBeCloseTo(0, 6);
          if (along === 'end') {
            // Along an end that need not be square to it the rule begins on the line of the face edge itself.
            expect(
              Math.min(...linesOf(part, edge).map((line) => offLine(line, begins))),
              seenAt,
            ).toBeLessThan(1e-6);
            seen += 1;
            continue;
          }
          // A corner of the part or of its blank lies square to the rule's end: an edge that is there, or the end of one.
          const off = corners.map((corner) => Math.abs(dot3(subtract3(corner, begins), away)));
          expect(Math.min(...off), seenAt).toBeLessThan(1e-6);
          seen += 1;
        }
        for (const from of ['face side', 'face edge', 'end'] as const) {
          const own3 = measures.filter((each) => each.from === from);
          if (own3.length === 0) continue;
          const [near, centre, far] = ['near side', 'centre', 'far side'].map(
            (to) => own3.find((each) => each.to === to)!.value,
          ) as [number, number, number];
          expect(near).toBeLessThan(centre);
          expect(far - centre).toBeCloseTo(centre - near, 9);
          expect(near, `${form}, ${id}: within the wood, from the ${from}`).toBeGreaterThan(0);
        }
      }
    }
    expect(seen).toBeGreaterThan(3);
  });
});
