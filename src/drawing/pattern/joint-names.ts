import { angleOf, distance, polar, subtract, type Vec } from '../../geometry/index.ts';
import type { SketchedPart } from '../../sketch/index.ts';
import type { JointNote, TextMark } from '../api.ts';
import { type Drawing, letter, textMark } from '../layout/drawing.ts';
import { readable, step } from '../layout/strokes.ts';
import { drawLeader } from './leader.ts';
import type { PatternSource } from './source.ts';

type Joint = SketchedPart['joints'][number];

/** A leader to a joint's whole name is no longer than this, mm; beyond it a number reads better. */
const LONGEST_LEADER = 30;
/** Shares along the joint's line at which its name is tried, the middle first; beyond it last. */
const SHARES = [0.5, 0.25, 0.75, 0.38, 0.62, 0.15, 0.85, 0.05, 0.95, 1.1, -0.1];
/** Distances off the line, mm, for names that find no room close to it. */
const OFF_LINE = [0.9, 3, 5.5];

/**
 * The name of every joint along its line, or with a leader, or as a number at the line; numbers come back with their
 * names, to be said beside the drawing and on the first page.
 */
export function drawJointNames(drawing: Drawing, { part }: PatternSource): readonly JointNote[] {
  const notes: JointNote[] = [];
  for (const joint of part.joints) {
    if (letter(drawing, alongLine(joint, joint.label)) || pointAtIt(drawing, joint, joint.label)) continue;
    const mark = `J${notes.length + 1}`;
    const isDrawn = letter(drawing, alongLine(joint, mark)) || pointAtIt(drawing, joint, mark, Infinity);
    notes.push({ mark: isDrawn ? mark : '', label: joint.label });
  }
  return notes;
}

function* alongLine({ from, to }: Joint, text: string): Generator<TextMark> {
  const direction = subtract(to, from);
  const angle = readable(angleOf(direction));
  for (const off of OFF_LINE) {
    for (const height of [2.5, 1.8]) {
      for (const share of SHARES) {
        for (const above of [off, -off - height]) {
          const at = { x: from.x + direction.x * share, y: from.y + direction.y * share };
          const isForward = direction.x * Math.cos(angle) + direction.y * Math.sin(angle) > 0;
          const past = share > 1 ? 'left' : 'right';
          const before = share > 1 ? 'right' : 'left';
          const align = share > 1 || share < 0 ? (isForward ? past : before) : 'middle';
          yield textMark(text, step(at, polar(angle), 0, above), { height, angle, align, role: 'joint' });
        }
      }
    }
  }
}

/** From some place on the line, along which all leaders begin. */
function pointAtIt(drawing: Drawing, { from, to }: Joint, text: string, longest = LONGEST_LEADER): boolean {
  const across = angleOf(subtract(to, from)) + Math.PI / 2;
  const places: readonly Vec[] = [0.5, 0.8, 0.2, 1, 0].map((share) => ({
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share,
  }));
  const options = { role: 'joint', end: 'none', longest, directions: [across, across + Math.PI] } as const;
  return (
    distance(from, to) > 0 &&
    [2.5, 1.8].some((height) => places.some((at) => drawLeader(drawing, at, text, { ...options, height })))
  );
}
