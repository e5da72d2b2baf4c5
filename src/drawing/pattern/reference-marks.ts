import {
  add,
  angleOf,
  arc,
  directionAt,
  type Edge,
  type EdgeRole,
  leftOf,
  lengthOf,
  middle,
  pointAt,
  scale,
  type Vec,
} from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { type Drawing, fits, pathMark, textMark } from '../layout/drawing.ts';
import { cornersOf, type OrientedBox } from '../layout/oriented-box.ts';
import { DRAWN, readable, step, stroke } from '../layout/strokes.ts';
import type { PatternSource } from './source.ts';

/** Which edges make the better face edge: one that stays as the board came, then a joint, then a routed one. */
const WORTH: Readonly<Record<EdgeRole, number>> = { left: 2, joint: 1.4, routed: 1, sawn: 0 };
/** Repeated every so many mm along the face edge. */
const REPEAT = 420;
/** Room that the pair of marks takes along the edge and into the part, mm. */
const ROOM_ALONG = 22;
const ROOM_DEEP = 10;

/**
 * The edge that the marking-out starts from: the longest straight one that is not an end cut; of a part without straight
 * edges, the longest.
 */
function faceEdgeOf(source: PatternSource): Edge | undefined {
  const worth = (edge: Edge): number =>
    lengthOf(edge) * WORTH[edge.tag.role] * (edge.kind === 'line' ? 10 : 1);
  return source.part.region.outer.edges.reduce<Edge | undefined>(
    (best, edge) => (best === undefined || worth(edge) > worth(best) ? edge : best),
    undefined,
  );
}

/** On the show face a loop whose tail runs to the face edge, and at that edge a V whose point stands on it. */
export function drawReferenceMarks(drawing: Drawing, source: PatternSource): void {
  const edge = faceEdgeOf(source);
  if (edge === undefined) return;
  const total = lengthOf(edge);
  const count = Math.max(1, Math.round(total / REPEAT));
  for (let i = 0; i < count; i++) {
    for (const shift of [0, 12, -12, 24, -24, 36, -36, 48, -48, 60, -60, 80, -80]) {
      const t = (((i + 0.5) * total) / count + shift) / total;
      if (t * total < ROOM_ALONG / 2 || t * total > total - ROOM_ALONG / 2) continue;
      if (drawPair(drawing, edge, t)) break;
    }
  }
}

function drawPair(drawing: Drawing, edge: Edge, t: number): boolean {
  const foot = pointAt(edge, t);
  const along = directionAt(edge, t);
  const inward = leftOf(along);
  const room = {
    centre: add(foot, scale(inward, ROOM_DEEP / 2 + 0.9)),
    halfWidth: ROOM_ALONG / 2,
    halfHeight: ROOM_DEEP / 2,
    angle: angleOf(along),
  };
  // The template's line may run through the marks; lettering may not, nor any line that crosses them.
  if (!isOpen(drawing, room)) return false;
  const marks: Mark[] = [...faceLoop(step(foot, along, -5), along), ...faceV(step(foot, along, 5), along)];
  drawing.draw(marks);
  const words = (at: Vec, text: string) => {
    const label = textMark(text, at, {
      height: 1.8,
      angle: readable(angleOf(along)),
      align: 'middle',
      role: 'reference',
    });
    if (fits(drawing, label)) drawing.draw([label]);
  };
  const deep = step(foot, along, 0, ROOM_DEEP + 2.6);
  words(deep, 'face side, face edge');
  drawing.occupancy.addBox(room);
  return true;
}

function isOpen(drawing: Drawing, room: OrientedBox): boolean {
  const [a, b, c, d] = cornersOf(room);
  const rays = [
    [a, c],
    [b, d],
    [a, d],
    [b, c],
    [middle(a, b), middle(c, d)],
  ] as const;
  return rays.every(([from, to]) => drawing.occupancy.isClearOfBoxes(from, to));
}

/** A stem from the edge that curls over itself. */
function faceLoop(foot: Vec, along: Vec): readonly Mark[] {
  const top = step(foot, along, 0, 7);
  const radius = 1.9;
  const centre = step(top, along, -radius);
  // Three quarters of a turn, and on across the stem.
  const end = step(centre, along, 0, -radius);
  return [
    pathMark('reference', [
      stroke(step(foot, along, 0, 1), top),
      arc(top, end, centre, 1, DRAWN),
      stroke(end, step(end, along, radius * 2.2)),
    ]),
  ];
}

function faceV(foot: Vec, along: Vec): readonly Mark[] {
  const apex = step(foot, along, 0, 0.4);
  return [
    pathMark('reference', [stroke(step(foot, along, -3, 7), apex), stroke(apex, step(foot, along, 3, 7))]),
  ];
}
