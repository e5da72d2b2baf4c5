import type { Bore, JointWork, PlacedPart, Tenon } from '../../base/index.ts';
import {
  add3,
  type Frame,
  line,
  norm,
  pointToFrame,
  STAY,
  scale3,
  transformRegion,
  type Vec3,
} from '../../geometry/index.ts';
import type { Camera, Pocket, ViewedPart } from '../view/api.ts';
import type { PictureLine } from './picture.ts';

const TAG = { id: 'middle', role: 'left' } as const;
/** mm in the picture: a drilled line seen end on is a point. */
const POINT = 0.01;

/** A part with its mortises, holes and halvings taken out, and its tenons beside it. */
export function woodWithWork(part: PlacedPart, work: readonly JointWork[]): readonly ViewedPart[] {
  const { frame } = part;
  const pockets = work.flatMap((each): readonly Pocket[] => {
    switch (each.kind) {
      case 'mortise':
      case 'hole':
        return [belowMouth(each)];
      case 'pocket':
        return each.region.map((region) => ({
          name: each.joint,
          frame: { ...OWN, origin: { x: 0, y: 0, z: each.fromZ } },
          region,
          depth: each.fromZ - each.toZ,
        }));
      case 'tenon':
        return [];
      default:
        return each satisfies never;
    }
  });
  const tenons = work
    .filter((each): each is Tenon => each.kind === 'tenon')
    .map(
      ({ own, outline, length, joint }): ViewedPart => ({
        id: `${part.id} ${joint}`,
        frame: { ...own, origin: add3(own.origin, scale3(own.z, length)) },
        drawn: { region: outline, thickness: length },
        cuts: [],
      }),
    );
  return [{ id: part.id, frame, drawn: part.drawn, cuts: part.cuts, pockets }, ...tenons];
}

const OWN: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
};

/** A bore is drilled along its z, a pocket lies below its own: seen from the other side, the outline is mirrored. */
function belowMouth({ own, outline, depth, joint }: Bore): Pocket {
  return {
    name: joint,
    frame: { ...own, x: scale3(own.x, -1), z: scale3(own.z, -1) },
    region: transformRegion(outline, { ...STAY, mirrored: true }),
    depth,
  };
}

/** Middles of mortises, holes and tenons: along the drilled line, or a cross where one looks along it. */
export function centresOfWork(work: readonly JointWork[], camera: Camera): readonly PictureLine[] {
  return work.flatMap((each) => {
    if (each.kind === 'pocket') return [];
    return each.kind === 'tenon'
      ? middles(each.own, [each.width, each.thickness, each.length], camera)
      : middles(each.own, [each.length, each.width, each.depth], camera);
  });
}

/** Of a thing this large along its x and y, that reaches so far along its z. */
function middles(
  own: Frame,
  [length, width, reach]: readonly [number, number, number],
  camera: Camera,
): readonly PictureLine[] {
  const between = (from: Vec3, to: Vec3): readonly PictureLine[] => {
    const [a, b] = [pointToFrame(camera, from), pointToFrame(camera, to)];
    if (norm(b.x - a.x, b.y - a.y) < POINT) return [];
    return [{ role: 'axis', edges: [line({ x: a.x, y: a.y }, { x: b.x, y: b.y }, TAG)], past: 2 }];
  };
  const at = (direction: Vec3, by: number): Vec3 => add3(own.origin, scale3(direction, by));
  const drilled = between(own.origin, at(own.z, reach));
  if (drilled.length > 0) return drilled;
  return [
    ...between(at(own.x, -length / 2), at(own.x, length / 2)),
    ...between(at(own.y, -width / 2), at(own.y, width / 2)),
  ];
}
