import type { BuiltBase, Joint, JointWork } from '../../base/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, capital, fine, finer, sizes, surface, words } from './book-style.ts';
import { sectionDrawing } from './section-drawing.ts';

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
  const first = joints.filter(({ name }, at) => joints.findIndex((each) => each.name === name) === at);
  return {
    title: 'Marking out the joints',
    newPage: true,
    blocks: [
      {
        kind: 'text',
        text: 'Mark everything from the face side and the face edge, in both parts. Cut the joints while the faces are square, before the curves. Positions are those of the pattern of the left hand; the right hand mirrors them. A mortise is cut square to the face that it opens in.',
      },
      ...first.flatMap((joint) => jointBlocks(joint, built, style)),
    ],
  };
}

function jointBlocks(
  joint: Joint,
  { joints, base, made }: BuiltBase,
  style: BookStyle,
): readonly BookBlock[] {
  const count = joints.joints.filter(({ name }) => name === joint.name).length;
  const labelOf = (id: string): string => {
    const own = made.find(({ members }) => members.some(({ part }) => part === id));
    return own?.label ?? base.parts.find((part) => part.id === id)!.label;
  };
  const rows = joint.sides.flatMap(({ part, work }) =>
    work.map((each) => workRow(labelOf(part), each, style)),
  );
  return [
    { kind: 'heading', text: `${joint.label} (${count} ×)` },
    { kind: 'text', text: sayJoint(joint, style) },
    ...(joint.section === undefined || rows.length === 0
      ? []
      : [sectionDrawing(joint.section, labelOf, style)]),
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
        ? `${loose.count} loose tenon${loose.count === 1 ? '' : 's'} of ${sizes([loose.size.thickness, loose.size.width, loose.size.length], finer(style))}`
        : `${loose.count} dowel${loose.count === 1 ? '' : 's'} of ${sizes([loose.size.diameter, loose.size.length], finer(style))}`;
  const screws = screw === undefined ? '' : ` Wood screw No. ${screw.number}.`;
  return `${what}.${screws} Glued faces ${surface(glue.area, style)}, ${Math.round(100 * glue.longGrain)} % of it long grain to long grain; end grain holds little.`;
}

function workRow(label: string, work: JointWork, style: BookStyle): readonly string[] {
  const size = (...figures: readonly number[]): string => sizes(figures, finer(style));
  switch (work.kind) {
    case 'mortise':
      return [
        label,
        words(work.face),
        `mortise ${size(work.width, work.length)}`,
        fine(work.depth, style),
        measures(work, style),
      ];
    case 'hole':
      return [
        label,
        words(work.face),
        `hole Ø ${size(work.width)}`,
        fine(work.depth, style),
        measures(work, style),
      ];
    case 'tenon':
      return [
        label,
        words(work.face),
        `tenon ${size(work.thickness, work.width)}`,
        fine(work.length, style),
        measures(work, style),
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
function measures(work: Extract<JointWork, { measures: unknown }>, style: BookStyle): string {
  const groups = new Map<string, { readonly to: string; readonly value: number }[]>();
  for (const { from, edge, to, value } of work.measures) {
    const name = edge === undefined ? from : `${from} (${words(edge)})`;
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
