import type { PlacedPart } from '../../base/index.ts';
import {
  centroidOfRegions,
  dot3,
  type Frame,
  type Outline,
  type Projection,
  pointAt,
  pointToFrame,
  pointToWorld,
  type Region,
  type Vec,
} from '../../geometry/index.ts';
import type { LeafFace } from '../../wood/index.ts';
import type { Camera } from '../view/api.ts';

/** A face of a piece as a view shows it, with what the piece hides of those behind it. */
export interface SeenFace {
  readonly piece: string;
  /** Absent where it is seen from its edge: it only hides. */
  readonly face?: LeafFace;
  /** Outline of that face in the picture, loops of points, mm, y up. */
  readonly loops: readonly (readonly Vec[])[];
  /** All that the piece covers in the picture, as loops that may lie over each other. */
  readonly covers: readonly (readonly Vec[])[];
  /** From the piece's own plane, at that face, to the picture. */
  readonly toPicture: Projection;
}

/** Places looked at along a curved edge; chords of a wide curve stay within a tenth of a millimetre. */
const CHORDS = 24;

/** A face whose cosine to the line of sight is less shows too little of its figure to be drawn. */
const FROM_ITS_EDGE = 0.05;

/**
 * The faces that a camera sees of pieces standing in a base, the farthest first: drawn one after the other, each after what it covers is
 * cleared, nearer ones hide those behind them. The order is by the middles of the pieces, as sticks that cross at their ends and are
 * much longer than thick allow it.
 */
export function facesInView(
  parts: readonly Pick<PlacedPart, 'id' | 'frame' | 'face' | 'back' | 'drawn'>[],
  camera: Camera,
): readonly SeenFace[] {
  return parts
    .map((part) => ({ part, depth: pointToFrame(camera, middleOf(part)).z }))
    .toSorted((a, b) => a.depth - b.depth)
    .map(({ part }) => faceInView(part, camera));
}

function faceInView(
  { id, frame, face, back, drawn }: Pick<PlacedPart, 'id' | 'frame' | 'face' | 'back' | 'drawn'>,
  camera: Camera,
): SeenFace {
  const towards = dot3(frame.z, camera.z);
  const shown = Math.abs(towards) < FROM_ITS_EDGE ? undefined : towards > 0 ? 'face' : 'back';
  const depth = shown === 'back' ? -drawn.thickness : 0;
  const seen = seenBy(frame, camera);
  // Loops run as their region's do, outer ones anticlockwise, whichever side is seen: filled together they add up.
  const way = (loop: readonly Vec[]): readonly Vec[] => (towards < 0 ? loop.toReversed() : loop);
  const front = loopsOf(face).map((loop) => way(loop.map((p) => seen(p, 0))));
  const behind = loopsOf(back).map((loop) => way(loop.map((p) => seen(p, -drawn.thickness))));
  const sides = loopsOf(face).flatMap((loop) =>
    loop.map((p, at) => {
      const next = loop[(at + 1) % loop.length]!;
      return anticlockwise([
        seen(p, 0),
        seen(next, 0),
        seen(next, -drawn.thickness),
        seen(p, -drawn.thickness),
      ]);
    }),
  );
  return {
    piece: id,
    ...(shown === undefined ? {} : { face: shown }),
    loops: shown === 'back' ? behind : front,
    covers: [...front, ...behind, ...sides],
    toPicture: affineOf((p) => seen(p, depth)),
  };
}

function anticlockwise(loop: readonly Vec[]): readonly Vec[] {
  const twice = loop.reduce((sum, p, at) => {
    const q = loop[(at + 1) % loop.length]!;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  return twice < 0 ? loop.toReversed() : loop;
}

const middleOf = ({ frame, face, drawn }: Pick<PlacedPart, 'frame' | 'face' | 'drawn'>) =>
  pointToWorld(frame, { ...centroidOfRegions(face), z: -drawn.thickness / 2 });

const seenBy =
  (frame: Frame, camera: Camera) =>
  (p: Vec, z: number): Vec => {
    const { x, y } = pointToFrame(camera, pointToWorld(frame, { ...p, z }));
    return { x, y };
  };

/** What takes a plane to another and keeps parallels, by where it takes the origin and the ends of both axes. */
export function affineOf(to: (p: Vec) => Vec): Projection {
  const origin = to({ x: 0, y: 0 });
  const x = to({ x: 1, y: 0 });
  const y = to({ x: 0, y: 1 });
  return [x.x - origin.x, y.x - origin.x, origin.x, x.y - origin.y, y.y - origin.y, origin.y, 0, 0, 1];
}

/** Loops of points round regions; a curve in chords. */
export function loopsOf(regions: readonly Region[]): readonly (readonly Vec[])[] {
  return regions.flatMap(({ outer, holes }) => [outer, ...holes]).map(pointsOf);
}

const pointsOf = ({ edges }: Outline): readonly Vec[] =>
  edges.flatMap((edge) =>
    edge.kind === 'line'
      ? [edge.from]
      : Array.from({ length: CHORDS }, (_, at) => pointAt(edge, at / CHORDS)),
  );
