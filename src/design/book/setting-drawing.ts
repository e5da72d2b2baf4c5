import { type PartCut, type PictureView, settingPicture } from '../../base/index.ts';
import { boundsOfMarks, type LineRole, letterNear, type Mark } from '../../drawing/index.ts';
import { line, type Vec } from '../../geometry/index.ts';
import type { BookBlock } from '../../print/index.ts';

type CutStyle = Parameters<typeof settingPicture>[2];

const ROLES: Readonly<Record<string, LineRole>> = {
  wide: 'part',
  narrow: 'thin',
  dashed: 'hidden',
  chain: 'axis',
  'double-chain': 'phantom',
};

/** Widths on paper of the two views, mm. */
const PLAN_WIDTH = 104;
const TILT_WIDTH = 62;
const APART = 10;
const LETTERS = 1.8;

/** The saw as it is set for a cut, from above and along the line of cut, beside each other. */
export function settingDrawing({ cut, blank }: PartCut, style: CutStyle): BookBlock {
  if (cut.kind !== 'end') throw new RangeError('only cuts across a part are set at the saw');
  const work = { high: blank.thickness, across: blank.right - blank.left };
  const { plan, tilt } = settingPicture(cut.onBack, work, style);
  const [a, b] = [extentOf(plan), extentOf(tilt)];
  const [scale, tilted] = [PLAN_WIDTH / (a.maxX - a.minX), TILT_WIDTH / (b.maxX - b.minX)];
  const left = marksOf(plan, scale, { x: 0, y: 0 });
  const right = marksOf(tilt, tilted, { x: scale * a.maxX - tilted * b.minX + APART, y: 0 });
  const marks = [...left, ...right];
  return {
    kind: 'drawing',
    scene: { marks, box: boundsOfMarks(marks) },
    caption: 'The saw from above (left) and along the line of cut (right); not to measure',
  };
}

function marksOf({ lines, labels }: PictureView, scale: number, shift: Vec): readonly Mark[] {
  const place = (p: Vec): Vec => ({ x: p.x * scale + shift.x, y: p.y * scale + shift.y });
  const tag = { id: 'setting', role: 'left' } as const;
  const drawn = lines.map(({ points, closed, type }): Mark => {
    const placed = points.map(place);
    const pairs = placed.slice(1).map((to, at) => line(placed[at]!, to, tag));
    const edges = closed ? [...pairs, line(placed.at(-1)!, placed[0]!, tag)] : pairs;
    return { kind: 'path', role: ROLES[type] ?? 'thin', edges, closed };
  });
  const words = labels.map(({ at, text }) => ({ text, at: place(at) }));
  return [...drawn, ...letterNear(drawn, words, LETTERS)];
}

function extentOf({ lines }: PictureView) {
  const points = lines.flatMap((each) => each.points);
  return { minX: Math.min(...points.map(({ x }) => x)), maxX: Math.max(...points.map(({ x }) => x)) };
}
