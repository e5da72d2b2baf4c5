import { distance, line, type Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { CheckLength, Mark, Pattern } from '../api.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { layPicture, type Picture } from '../title/picture.ts';

/** Height of figures on a drawing that one stands before, mm. */
const FIGURES = 7;
/** Half the size of the cross at the end of a check length, mm. */
const CROSS = 4;
const TAG = { id: 'setting-out', role: 'left' } as const;

/**
 * A view of a base at full size, to be laid on sheets: to lay the dry base on, and to set a bevel from. The floor and the middle plumb line
 * run right across it, and three check lengths span it.
 */
export function settingOut(picture: Picture, name: string, lengths: LengthStyle): Pattern {
  const { box } = picture.view;
  const [left, right] = [box.minX - 40, box.maxX + 40];
  const lines = [
    ...picture.lines,
    // The floor, long enough to tape sheets along.
    { role: 'reference', edges: [line({ x: left, y: box.minY }, { x: right, y: box.minY }, TAG)] } as const,
  ];
  const { marks } = layPicture({ ...picture, lines }, 1, lengths, FIGURES);
  const corners: readonly Vec[] = [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.minY },
    { x: box.maxX, y: box.maxY },
    { x: box.minX, y: box.maxY },
  ];
  const checks: readonly CheckLength[] = (
    [
      ['A', 0, 1],
      ['B', 1, 2],
      ['C', 0, 2],
    ] as const
  ).map(([letter, a, b]) => ({
    name: letter,
    from: corners[a]!,
    to: corners[b]!,
    nominal: distance(corners[a]!, corners[b]!),
  }));
  const all = [...marks, ...checks.flatMap(checkMarks)];
  const scene = { marks: all, box: boundsOfMarks(all) };
  return {
    name,
    title: `Setting-out: ${picture.name.toLowerCase()}`,
    view: 'part',
    mirrored: false,
    scene,
    withNotes: scene,
    toolFacts: [],
    keepOffSeams: corners.map((at) => ({ at, clearance: 6 })),
    checks,
  };
}

function checkMarks({ name, from, to }: CheckLength): readonly Mark[] {
  return [from, to].flatMap((p, at): readonly Mark[] => [
    cross({ x: p.x - CROSS, y: p.y }, { x: p.x + CROSS, y: p.y }),
    cross({ x: p.x, y: p.y - CROSS }, { x: p.x, y: p.y + CROSS }),
    {
      kind: 'text',
      text: name,
      at: { x: p.x + (at === 0 ? 6 : -6) * (name === 'B' ? -1 : 1), y: p.y + 6 + (name === 'C' ? 6 : 0) },
      height: 3.5,
      angle: 0,
      align: 'middle',
      weight: 'semibold',
      role: 'check',
    },
  ]);
}

const cross = (from: Vec, to: Vec): Mark => ({
  kind: 'path',
  role: 'check',
  closed: false,
  edges: [line(from, to, TAG)],
});
