import { type PictureView, settingPicture, type WedgePicture } from '../../base/index.ts';
import {
  boundsOfMarks,
  type LineRole,
  layPicture,
  letterNear,
  type Mark,
  transformMark,
} from '../../drawing/index.ts';
import { line, polygonOutline, type Vec } from '../../geometry/index.ts';
import type { BookBlock } from '../../print/index.ts';

type SetWork = Parameters<typeof settingPicture>[0];
type WorkSize = Parameters<typeof settingPicture>[1];
type CutStyle = NonNullable<Parameters<typeof settingPicture>[2]>;

const ROLES: Readonly<Record<string, LineRole>> = {
  wide: 'part',
  narrow: 'thin',
  dashed: 'hidden',
  chain: 'axis',
  'double-chain': 'phantom',
};

/** Widths on paper of the two views, most height, and the scale of a wedge. */
const PLAN_WIDTH = 92;
const TILT_WIDTH = 56;
const MOST_HEIGHT = 70;
const WEDGE_SCALE = 1 / 5;
const APART = 10;
const LETTERS = 1.8;
const TAG = { id: 'setting', role: 'left' } as const;

/** The saw as it is set for a cut, from above and along the line of cut, and the wedge that holds the work, with its measures. */
export function settingDrawing(set: SetWork, work: WorkSize, style: CutStyle): BookBlock {
  const { plan, tilt, wedge } = settingPicture(set, work, style);
  const [a, b] = [extentOf(plan), extentOf(tilt)];
  const scale = Math.min(PLAN_WIDTH / (a.maxX - a.minX), MOST_HEIGHT / (a.maxY - a.minY));
  const tilted = Math.min(TILT_WIDTH / (b.maxX - b.minX), MOST_HEIGHT / (b.maxY - b.minY));
  const left = marksOf(plan, scale, { x: 0, y: 0 });
  const right = marksOf(tilt, tilted, { x: scale * a.maxX - tilted * b.minX + APART, y: 0 });
  const views = [...left, ...right];
  const under = wedge === undefined ? [] : wedgeMarks(wedge, style, boundsOfMarks(views).minY);
  const marks = [...views, ...under];
  return {
    kind: 'drawing',
    scene: { marks, box: boundsOfMarks(marks) },
    caption:
      wedge === undefined
        ? 'The saw from above (left) and along the line of cut (right); not to measure'
        : 'The saw from above (left) and along the line of cut (right), not to measure; below, the wedge to make, 1:5',
  };
}

/** The wedge from its side, its rise over the run of the maker's unit. */
function wedgeMarks({ run, rise, angle }: WedgePicture, { length }: CutStyle, top: number): readonly Mark[] {
  const corners: readonly Vec[] = [
    { x: 0, y: 0 },
    { x: run, y: 0 },
    { x: run, y: rise },
  ];
  const { marks, box } = layPicture(
    {
      lines: [{ role: 'part', edges: polygonOutline(corners, TAG).edges }],
      dimensions: [
        { kind: 'length', name: 'run', from: corners[0]!, to: corners[1]!, along: 0, side: 'below' },
        {
          kind: 'length',
          name: 'rise',
          from: corners[1]!,
          to: corners[2]!,
          along: Math.PI / 2,
          side: 'right',
        },
        { kind: 'angle', name: 'wedge', at: corners[0]!, from: 0, to: angle },
      ],
    },
    WEDGE_SCALE,
    length,
  );
  const shift = { x: -box.minX - PLAN_WIDTH / 2, y: top - APART - box.maxY };
  return marks.map((mark) => transformMark(mark, { turn: 0, scale: 1, mirrored: false, shift }));
}

function marksOf({ lines, labels }: PictureView, scale: number, shift: Vec): readonly Mark[] {
  const place = (p: Vec): Vec => ({ x: p.x * scale + shift.x, y: p.y * scale + shift.y });
  const drawn = lines.map(({ points, closed, type }): Mark => {
    const placed = points.map(place);
    const pairs = placed.slice(1).map((to, at) => line(placed[at]!, to, TAG));
    const edges = closed ? [...pairs, line(placed.at(-1)!, placed[0]!, TAG)] : pairs;
    return { kind: 'path', role: ROLES[type] ?? 'thin', edges, closed };
  });
  const words = labels.map(({ at, text }) => ({ text, at: place(at) }));
  return [...drawn, ...letterNear(drawn, words, LETTERS)];
}

function extentOf({ lines }: PictureView) {
  const points = lines.flatMap((each) => each.points);
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { minX: Math.min(...xs), maxX: Math.max(...xs), minY: Math.min(...ys), maxY: Math.max(...ys) };
}
