import type { BuiltBase, Joint, JointWork } from '../../base/index.ts';
import { jointPictures, layPicture, type NamedPicture, pictureRow, type Scene } from '../../drawing/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, bought, capital, fine, finer, sizes, surface, words } from './book-style.ts';
import { type BookNames, bookNames } from './names.ts';
import { sectionPicture } from './section-drawing.ts';

const KINDS: Readonly<Record<Joint['kind'], string>> = {
  'loose-tenons': 'loose tenons',
  dowels: 'dowels',
  'mortise-and-tenon': 'mortise and tenon',
  halved: 'halved into each other',
  glued: 'glued',
  screwed: 'screwed',
};

/** Marking-out of every kind of joint: where it is cut in both parts, how deep, and its section along the drilled line. */
export function jointsChapter(built: BuiltBase, style: BookStyle): BookChapter {
  const { joints } = built.joints;
  const first = firstOfEach(joints, built);
  return {
    title: 'Marking out the joints',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: 'Mark everything from the face side and the face edge, in both parts. Cut the joints while the faces are square, before the curves. Positions are those of the pattern of the left hand; the right hand mirrors them. A mortise is cut square to the face that it opens in.',
      },
      ...first.flatMap((joint) => jointBlocks(joint, built, style)),
    ],
  };
}

/** One joint of each name, where there is one between left hands: patterns are drawn of these. */
function firstOfEach(joints: readonly Joint[], { base }: BuiltBase): readonly Joint[] {
  const isLeft = ({ sides }: Joint): boolean =>
    sides.every(({ part }) => base.parts.find(({ id }) => id === part)!.hand === 'left');
  return [...new Set(joints.map(({ name }) => name))].map((name) => {
    const own = joints.filter((joint) => joint.name === name);
    return own.find(isLeft) ?? own[0]!;
  });
}

/** Room for a drawing on the narrowest paper of the book, and what a picture in it may take of its height, mm. */
const WIDTH = 178;
const MOST_HEIGHT = 100;
/** A wider one stands alone in its row, and so at a smaller scale, mm. */
const MOST_WIDTH = 165;
/** mm: heights that differ by less are one. */
const TRIFLE = 3;

/** Scales that joints are marked out at. */
const SCALES = [1 / 2, 1 / 5, 1 / 10] as const;

const heightOf = ({ box }: Scene): number => box.maxY - box.minY;

/** What is marked out on both parts, and the joint cut open. */
function markingOut(joint: Joint, { base }: BuiltBase, names: BookNames, style: BookStyle): BookBlock {
  const { lengths } = finer(style);
  const marked = joint.sides.flatMap(({ part, work }): readonly NamedPicture[] => {
    const placed = base.parts.find(({ id }) => id === part)!;
    const label = { label: names.kind(part), faceOf: names.face };
    const drawn = (scale: number): readonly NamedPicture[] =>
      jointPictures(placed, label, work, scale).map((picture) => ({ picture, scale }));
    const fits = ({ picture, scale }: NamedPicture): boolean => {
      const { minX, maxX, minY, maxY } = layPicture(picture, scale, lengths).box;
      return maxY - minY <= MOST_HEIGHT && maxX - minX <= MOST_WIDTH;
    };
    for (const scale of SCALES.slice(0, -1)) {
      const pictures = drawn(scale);
      if (pictures.every(fits)) return pictures;
    }
    return drawn(SCALES.at(-1)!);
  });
  const rowWith = (pictures: readonly NamedPicture[]) => pictureRow([...marked, ...pictures], WIDTH, lengths);
  if (joint.section === undefined) return { kind: 'drawing', scene: rowWith([]) };
  const [small, large] = (['small', 'large'] as const).map((size) =>
    rowWith([sectionPicture(joint.section!, names.kind, size)]),
  ) as [Scene, Scene];
  // Large where that costs no height.
  return { kind: 'drawing', scene: heightOf(large) < heightOf(small) + TRIFLE ? large : small };
}

function jointBlocks(joint: Joint, built: BuiltBase, style: BookStyle): readonly BookBlock[] {
  const { joints } = built;
  const count = joints.joints.filter(({ name }) => name === joint.name).length;
  const names = bookNames(built);
  const rows = joint.sides.flatMap(({ part, work }) =>
    work.map((each) => workRow(names.kind(part), each, names, style)),
  );
  return [
    { kind: 'heading', text: `${joint.label} (${count} ×)` },
    { kind: 'text', text: sayJoint(joint, style) },
    ...(rows.length === 0 ? [] : [markingOut(joint, built, names, style)]),
    ...(rows.length === 0
      ? []
      : [
          {
            kind: 'table',
            columns: [
              { head: 'In', share: 1.4 },
              { head: 'Face', share: 1.2 },
              { head: 'What', share: 1.6 },
              { head: 'Depth', align: 'right' },
              { head: 'From where', share: 3 },
            ],
            rows,
          } as const,
        ]),
  ];
}

function sayJoint({ kind, loose, screw, glue }: Joint, style: BookStyle): string {
  const what =
    loose === undefined
      ? capital(KINDS[kind])
      : loose.kind === 'tenon'
        ? `${loose.count} loose tenon${loose.count === 1 ? '' : 's'} of ${bought([loose.size.thickness, loose.size.width, loose.size.length], style)}`
        : `${loose.count} dowel${loose.count === 1 ? '' : 's'} of ${bought([loose.size.diameter, loose.size.length], style)}`;
  const screws = screw === undefined ? '' : ` Wood screw No. ${screw.number}.`;
  return `${what}.${screws} Glued faces ${surface(glue.area, style)}, ${Math.round(100 * glue.longGrain)} % of it long grain to long grain; end grain holds little.`;
}

function workRow(label: string, work: JointWork, names: BookNames, style: BookStyle): readonly string[] {
  const size = (...figures: readonly number[]): string => sizes(figures, finer(style));
  switch (work.kind) {
    case 'mortise':
      return [
        label,
        names.face(work.face),
        `mortise ${bought([work.width, work.length], style)}`,
        fine(work.depth, style),
        measures(work, names, style),
      ];
    case 'hole':
      return [
        label,
        names.face(work.face),
        `hole Ø ${bought([work.width], style)}`,
        fine(work.depth, style),
        measures(work, names, style),
      ];
    case 'tenon':
      return [
        label,
        names.face(work.face),
        `tenon ${size(work.thickness, work.width)}`,
        fine(work.length, style),
        measures(work, names, style),
      ];
    case 'pocket':
      return [
        label,
        work.fromZ >= 0 ? 'face side' : 'back',
        'halving, by the pattern',
        fine(work.fromZ - work.toZ, style),
        work.corners.length === 0
          ? 'see the pattern'
          : `see the pattern; ${work.corners.length} corners to square by hand, up to ${fine(Math.max(...work.corners.map(({ residue }) => residue.reach)), style)}`,
      ];
    default:
      return work satisfies never;
  }
}

/** One line for each edge that is measured from: to the near side, the centre and the far side. */
function measures(
  work: Extract<JointWork, { measures: unknown }>,
  names: BookNames,
  style: BookStyle,
): string {
  const groups = new Map<string, { readonly to: string; readonly value: number }[]>();
  for (const { from, edge, along, to, value } of work.measures) {
    const line = edge === undefined ? from : from === 'end' ? names.face(edge) : `${from} (${words(edge)})`;
    const name = along === undefined ? line : `${line}, along the end`;
    groups.set(name, [...(groups.get(name) ?? []), { to, value }]);
  }
  return [...groups]
    .map(([from, all]) => {
      const centre = all.find(({ to }) => to === 'centre');
      const sides = all.filter(({ to }) => to !== 'centre').toSorted((a, b) => a.value - b.value);
      const middle = centre === undefined ? '' : `centre ${fine(centre.value, style)}`;
      const ends = sides.map(({ value }) => fine(value, style)).join(' to ');
      return `${[middle, ends].filter((text) => text !== '').join(', ')} from the ${from}`;
    })
    .join('\n');
}
