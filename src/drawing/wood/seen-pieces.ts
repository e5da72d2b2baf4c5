import {
  type Box,
  dot3,
  type Edge,
  norm,
  type Projection,
  pointAt,
  pointToWorld,
  type Vec,
  type Vec3,
  vec,
} from '../../geometry/index.ts';
import type { LeafMap, LeafPiece, LeafPlace, MatchedFrame } from '../../wood/index.ts';
import { affineOf } from './faces-in-view.ts';

/** Places looked at along a curved edge. */
const CHORDS = 24;

/** A piece as one sees it who faces its frame. */
export interface SeenPiece {
  readonly piece: LeafPiece;
  /** As seen, mm of the world: x to the right, y up. */
  readonly outline: readonly Vec[];
  readonly head: Vec;
  /** From the piece's own plane, at the face that is seen. */
  readonly toSeen: Projection;
}

/** The pieces of a frame as one sees them who faces their face sides, or their backs. */
export function outlinesOf(
  map: Pick<LeafMap, 'pieces'>,
  frame: Pick<MatchedFrame, 'pieces'>,
  face: LeafPlace['face'],
): readonly SeenPiece[] {
  const own = frame.pieces.map((id) => map.pieces.find((each) => each.id === id)!);
  const way = own.reduce((sum, { frame: { z } }) => ({ x: sum.x + z.x, y: sum.y + z.y }), { x: 0, y: 0 });
  const length = norm(way.x, way.y);
  const turned = face === 'face' ? 1 : -1;
  // A face that looks straight up is seen from above, x to the right.
  const right: Vec3 =
    length < 1e-6
      ? { x: 1, y: 0, z: 0 }
      : { x: (-way.y / length) * turned, y: (way.x / length) * turned, z: 0 };
  const up: Vec3 = length < 1e-6 ? { x: 0, y: 1, z: 0 } : { x: 0, y: 0, z: 1 };
  const seen = (p: Vec3): Vec => vec(dot3(p, right), dot3(p, up));
  return own.map((piece) => {
    const z = face === 'face' ? 0 : -piece.thickness;
    const edges = piece.region.flatMap(({ outer }) => outer.edges);
    const origin = seen(pointToWorld(piece.frame, { x: 0, y: 0, z }));
    const tip = seen(pointToWorld(piece.frame, { ...piece.head, z }));
    return {
      piece,
      toSeen: affineOf((p) => seen(pointToWorld(piece.frame, { ...p, z }))),
      outline: edges.flatMap((edge) =>
        pointsOf(edge).map((p) => seen(pointToWorld(piece.frame, { ...p, z }))),
      ),
      head: vec(tip.x - origin.x, tip.y - origin.y),
    };
  });
}

const pointsOf = (edge: Edge): readonly Vec[] =>
  edge.kind === 'line' ? [edge.from] : Array.from({ length: CHORDS }, (_, at) => pointAt(edge, at / CHORDS));

/** The box round points. */
export function boxOf(points: readonly Vec[]): Box {
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}
