import {
  type Edge,
  type Frame,
  line,
  norm,
  type Outline,
  pointAt,
  type Region,
  reverseEdge,
  SECTION_TOLERANCE,
  sweepOf,
  type Vec,
} from '../../geometry/index.ts';
import { keepHalfPlane } from '../stand/section.ts';
import type { SolidPart } from './api.ts';

/**
 * The section of a prism by a slanting plane, in a frame of it whose x axis lies along the prism's faces. Only that strip of the outline counts
 * under which the plane runs through the wood; it is stretched across by as much as the plane is steeper than the outline.
 */
export function mapSlanting({ drawn }: Pick<SolidPart, 'drawn'>, frame: Frame): readonly Region[] {
  const { region, thickness } = drawn;
  const [along, climb] = [frame.x, frame.y];
  const flat = norm(climb.x, climb.y);
  const [top, bottom] = [-frame.origin.z / climb.z, (-thickness - frame.origin.z) / climb.z];
  const across = { x: climb.x / flat, y: climb.y / flat };
  const base = across.x * frame.origin.x + across.y * frame.origin.y;
  const face = { name: 'face', role: 'left' } as const;
  const back = { name: 'back', role: 'left' } as const;
  const opposite = { x: -across.x, y: -across.y };
  const upper = keepHalfPlane([region], { normal: across, offset: base + top * flat }, face);
  const strip = keepHalfPlane(upper, { normal: opposite, offset: -(base + bottom * flat) }, back);
  const map = (p: Vec): Vec => {
    const [x, y] = [p.x - frame.origin.x, p.y - frame.origin.y];
    return { x: x * along.x + y * along.y, y: (x * across.x + y * across.y) / flat };
  };
  // Seen against its normal the plane shows the outline the other way round.
  const flipped = frame.z.z < 0;
  const mapLoop = ({ edges }: Outline): Outline => {
    const mapped = edges.flatMap((edge) => mapEdge(edge, map, 1 / flat));
    return { edges: flipped ? mapped.reverse().map(reverseEdge) : mapped };
  };
  return strip.map(({ outer, holes }) => ({ outer: mapLoop(outer), holes: holes.map(mapLoop) }));
}

/** A line stays a line; of an arc an ellipse arc would come, for which chords stand. */
function mapEdge(edge: Edge, map: (p: Vec) => Vec, stretch: number): Edge[] {
  if (edge.kind === 'line') return [line(map(edge.from), map(edge.to), edge.tag)];
  const long = edge.radius * Math.max(1, stretch);
  // A chord over the angle a lies within r (1 − cos a/2) of its circle; stretching makes at most as much more of it.
  const most = 2 * Math.acos(Math.max(0, 1 - SECTION_TOLERANCE / long));
  const count = Math.max(1, Math.ceil(sweepOf(edge) / most));
  const points = Array.from({ length: count + 1 }, (_, at) => map(pointAt(edge, at / count)));
  return points.slice(1).map((to, at) => line(points[at]!, to, edge.tag));
}
