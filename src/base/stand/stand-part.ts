import {
  add3,
  boundsOfRegions,
  directionToWorld,
  type Frame,
  frameAlong,
  type Plane3,
  planeToFrame,
  type Region,
  subtract3,
  turn3,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedSketch, SketchedPart } from '../../sketch/index.ts';
import type { Cut, PlacedPart } from '../api.ts';
import { meetingOf } from './meeting.ts';
import { halfPlaneAt, keepHalfPlane } from './section.ts';

const AXES: Readonly<Record<'x' | 'y' | 'z', Vec3>> = {
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 1, z: 0 },
  z: { x: 0, y: 0, z: 1 },
};

/** The part's frame in the world; nothing when its length and its face look the same way. */
export function frameOfPlace(place: PlacedSketch): Frame | undefined {
  const { pin, at, pinDepth } = place;
  const turned = (v: Vec3): Vec3 => place.turns.reduce((to, { about, by }) => turn3(to, AXES[about], by), v);
  const frame = frameAlong(at, turned(place.along), turned(place.face));
  if (frame === undefined) return undefined;
  const toPin = directionToWorld(frame, { x: pin.x, y: pin.y, z: -pinDepth });
  return { ...frame, origin: subtract3(at, toPin) };
}

/**
 * What a part is like once it is cut by planes of the world (their normals out of the wood that stays): its outlines on the face and on the
 * back, which differ where a cut is bevelled, and what holds both and everything between.
 */
export function cutPart(
  drawn: SketchedPart,
  frame: Frame,
  planes: readonly { readonly name: string; readonly plane: Plane3 }[],
): Pick<PlacedPart, 'cuts' | 'face' | 'back' | 'silhouette'> {
  const bare = planes.map(({ name, plane }) => ({
    name,
    role: 'sawn' as const,
    plane: planeToFrame(frame, plane),
  }));
  const depth = -drawn.thickness;
  const start: readonly Region[] = [drawn.region];
  const sectionAt = (z: (cut: Omit<Cut, 'meets' | 'short'>) => number) =>
    bare.reduce((regions, cut) => keepHalfPlane(regions, halfPlaneAt(cut, z(cut)), cut), start);
  const face = sectionAt(() => 0);
  const back = sectionAt(() => depth);
  // Of a bevelled cut the longer side counts: the one from which its normal leans away.
  const onFace = bare.filter(({ plane }) => plane.normal.z < 0).length;
  const silhouette =
    onFace === bare.length
      ? face
      : onFace === 0
        ? back
        : sectionAt(({ plane }) => (plane.normal.z < 0 ? 0 : depth));
  const faces = [
    { regions: face, z: 0 },
    { regions: back, z: depth },
  ];
  return {
    face,
    back,
    silhouette,
    cuts: bare.map((cut) => ({ ...cut, ...meetingOf(cut, drawn, faces) })),
  };
}

/** The middle of a part in the world: of the box round its silhouette, at half its thickness. */
export function middleOf({
  frame,
  silhouette,
  drawn,
}: Pick<PlacedPart, 'frame' | 'silhouette' | 'drawn'>): Vec3 {
  const box = boundsOfRegions(silhouette.length > 0 ? silhouette : [drawn.region]);
  const own = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2, z: -drawn.thickness / 2 };
  return add3(frame.origin, directionToWorld(frame, own));
}
