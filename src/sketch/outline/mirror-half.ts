import {
  ANGLE_TOLERANCE,
  type Arc,
  directionAt,
  distance,
  dot,
  type Edge,
  POSITION_TOLERANCE,
  reverseEdge,
  type Vec,
} from '../../geometry/index.ts';
import { type Desk, dropOnto, mirrorOver, type Straight } from '../evaluate/desk.ts';
import { showPoint } from '../evaluate/show.ts';
import type { OutlineSpec } from '../schema/construction.ts';
import type { Side } from './side.ts';

/**
 * The whole loop of sides from one half drawn from the axis to the axis. The other half runs back; its names have the
 * suffix; the corner where it closes is called as the start. A side that meets the axis square and its mirror image become one.
 */
export function mirrorHalf(
  half: readonly Side[],
  startCorner: string,
  spec: NonNullable<OutlineSpec['mirror']>,
  desk: Desk,
): readonly Side[] | undefined {
  const axis = desk.straight(spec.over);
  if (axis === undefined) return undefined;
  const start = half[0]!.pieces[0]!.from;
  const end = half.at(-1)!.pieces.at(-1)!.to;
  for (const [place, what] of [
    [start, 'starts'],
    [end, 'ends'],
  ] as const) {
    const off = distance(place, dropOnto(place, axis));
    if (off <= POSITION_TOLERANCE) continue;
    const message = `the half ${what} at ${showPoint(place, desk.sheet.style)}, which is not on the line it is mirrored over`;
    return desk.refuse(spec.suffix.place, 'form.mirror', message, 'a half drawn from the line to the line');
  }
  const suffix = `_${spec.suffix.text}`;
  const images = half.map((side, index): Side => {
    const pieces = side.pieces
      .map((piece) => mirrorEdge(piece, axis, [start, end], `${side.name}${suffix}`))
      .reverse();
    // Run backwards, the corner at a side's end is the one that was at its start.
    const before = half[index - 1]?.corner;
    return {
      ...side,
      name: `${side.name}${suffix}`,
      pieces,
      corner: before === undefined ? undefined : `${before}${suffix}`,
    };
  });
  const back = images.reverse();
  const last = { ...back.at(-1)!, corner: startCorner };
  const atEnd = join(half.at(-1)!, back[0]!, axis);
  if (half.length === 1) {
    return atEnd === undefined ? [half[0]!, last] : [{ ...atEnd, corner: last.corner }];
  }
  const sides =
    atEnd === undefined
      ? [...half, ...back.slice(0, -1)]
      : [...half.slice(0, -1), atEnd, ...back.slice(1, -1)];
  const atStart = join(last, sides[0]!, axis);
  if (atStart === undefined) return [...sides, last];
  // Named as drawn, not by the image that comes before it.
  const { name, role, corner } = half[0]!;
  const pieces = atStart.pieces.map((piece) => ({ ...piece, tag: { id: name, role } }));
  return [{ name, role, pieces, corner }, ...sides.slice(1)];
}

/** Two sides as one, when the first arrives square at the axis and the second is its image; nothing otherwise. */
function join(first: Side, second: Side, axis: Straight): Side | undefined {
  const [a, b] = [first.pieces.at(-1)!, second.pieces[0]!];
  if (Math.abs(dot(directionAt(a, 1), axis.direction)) > ANGLE_TOLERANCE) return undefined;
  if (a.kind !== b.kind) return undefined;
  const tag = a.tag;
  const joined: Edge = a.kind === 'line' ? { ...a, to: b.to } : { ...(a as Arc), to: b.to };
  const rest = second.pieces.slice(1).map((piece) => ({ ...piece, tag }));
  return { ...first, pieces: [...first.pieces.slice(0, -1), joined, ...rest], corner: second.corner };
}

/** The image of an edge, run backwards; ends on the axis stay exactly where they are. */
function mirrorEdge(edge: Edge, axis: Straight, fixed: readonly Vec[], id: string): Edge {
  const image = (p: Vec): Vec => (fixed.includes(p) ? p : mirrorOver(p, axis));
  const tag = { ...edge.tag, id };
  const ends = { from: image(edge.from), to: image(edge.to), tag };
  const mirrored: Edge =
    edge.kind === 'line'
      ? { ...edge, ...ends }
      : { ...edge, ...ends, centre: mirrorOver(edge.centre, axis), turn: edge.turn === 1 ? -1 : 1 };
  return reverseEdge(mirrored);
}
