import { describe, expect, test } from 'vitest';
import { type JointWork, joinBase, type PlacedPart } from '../../../src/base/index.ts';
import type { Dimension } from '../../../src/drawing/dimension/api.ts';
import { jointPictures } from '../../../src/drawing/title/joint-pictures.ts';
import {
  dot,
  dot3,
  type Edge,
  length,
  pointAt,
  pointToFrame,
  subtract,
  type Vec,
  type Vec3,
} from '../../../src/geometry/index.ts';
import { BASE_FORMS } from '../../forms/forms.ts';
import { standingOf } from '../../forms/standing-bases.ts';

type Marked = Exclude<JointWork, { kind: 'pocket' }>;
type Length = Extract<Dimension, { kind: 'length' }>;

const lengths = { unit: 'mm', decimals: 2 } as const;

const edgeCalled = ({ face, back }: PlacedPart, id: string): Edge | undefined =>
  [...face, ...back].flatMap(({ outer }) => outer.edges).find(({ tag }) => tag.id === id);

/** From the reference that a measure names to the work, in the part: found on its outline, whatever the measure says of the way. */
function wayFrom(part: PlacedPart, work: Marked, measure: Marked['measures'][number]): Vec3 {
  const { origin } = work.own;
  if (measure.from === 'face side') return { x: 0, y: 0, z: -1 };
  const edge = measure.edge === undefined ? undefined : edgeCalled(part, measure.edge);
  if (edge !== undefined && measure.from === 'end') {
    return { x: 0, y: Math.sign(origin.y - pointAt(edge, 0.5).y), z: 0 };
  }
  if (edge !== undefined) {
    const along = subtract(edge.to, edge.from);
    const across: Vec = { x: -along.y / length(along), y: along.x / length(along) };
    const side = Math.sign(dot(subtract(origin, edge.from), across));
    return { x: side * across.x, y: side * across.y, z: 0 };
  }
  // The edge of the blank: at the left of a left hand, at the right of a right one.
  return { x: part.hand === 'right' ? -1 : 1, y: 0, z: 0 };
}

describe.each(BASE_FORMS.map(({ name }) => name))('%s', (form) => {
  const base = standingOf(form);
  const joined = joinBase(base, { cutter: 12, lengths });

  test('what is measured from one reference begins on one line, at the side of the work where that lies', () => {
    let seen = 0;
    for (const { part, work } of joined.joints.flatMap(({ sides }) => sides)) {
      const own = base.parts.find(({ id }) => id === part)!;
      const marked = work.filter((each): each is Marked => each.kind !== 'pocket');
      for (const { dimensions, view, name } of jointPictures(own, { label: '', faceOf: String }, work, 0.5)) {
        const here = marked.filter(({ face }) => name === `, ${face}`);
        const lines = dimensions.filter((each): each is Length => each.kind === 'length');
        for (const from of ['face side', 'face edge', 'end'] as const) {
          const drawn = lines.filter(
            (each) => /^(centre|near side|far side) /.test(each.name) && each.name.endsWith(from),
          );
          for (const each of drawn) {
            const way = subtract(each.to, each.from);
            // The work that it belongs to is the one whose middle is nearest to where it ends.
            const near = here.toSorted((a, b) => awayFrom(a, each) - awayFrom(b, each))[0]!;
            const reference = wayFrom(own, near, near.measures.find((one) => one.from === from)!);
            const onPaper = {
              x: dot3(reference, view.camera.x),
              y: dot3(reference, view.camera.y),
            };
            expect(dot(way, onPaper), `${form}, ${part}${name}: ${each.name}`).toBeGreaterThan(0);
            seen += 1;
          }
          const sameWay = drawn.filter(
            ({ from: a, to: b }) => dot(subtract(b, a), subtract(drawn[0]!.to, drawn[0]!.from)) > 0,
          );
          const along = { x: Math.cos(drawn[0]?.along ?? 0), y: Math.sin(drawn[0]?.along ?? 0) };
          const starts = sameWay.map((each) => dot(each.from, along));
          // Seen square to an end that is mitred, what is measured square to the edge is drawn a little too long.
          if (starts.length > 0)
            expect(Math.max(...starts) - Math.min(...starts), `${form}, ${part}${name}`).toBeLessThan(1.5);
        }

        function awayFrom(each: Marked, { to }: Length): number {
          return length(subtract(pointToFrame(view.camera, each.own.origin), to));
        }
      }
    }
    expect(seen).toBeGreaterThan(3);
  });
});
