import { keptFor, once } from '../../core/index.ts';
import {
  ANGLE_TOLERANCE,
  areaOfRegions,
  CONTACT_AREA,
  CONTACT_TOLERANCE,
  cross3,
  directionToWorld,
  distance,
  dot3,
  type Edge,
  type Frame,
  type Line,
  lengthOf,
  norm,
  type Plane3,
  planeThrough,
  planeToFrame,
  planeToWorld,
  pointToWorld,
  polygonOutline,
  type Region,
  scale3,
  transformRegion,
  unit3,
  uniteRegions,
  type Vec3,
} from '../../geometry/index.ts';
import type { Cut, PlacedPart } from '../api.ts';
import { keepHalfPlane } from '../stand/section.ts';
import type { PartFace } from './api.ts';
import { sectionOfPart } from './section-of-part.ts';
import { similarityTo } from './similarity-to.ts';

const OUT: Vec3 = { x: 0, y: 0, z: 1 };

/** A flat face in the frame of its part, its outline reckoned when first asked for: most faces touch nothing. */
interface OwnFace extends Pick<PartFace, 'name' | 'kind' | 'edges' | 'own'> {
  readonly plane: Plane3;
  readonly regions: () => readonly Region[];
}

type Shape = Pick<PlacedPart, 'drawn' | 'cuts' | 'face' | 'back'>;

/**
 * Every flat face that is left of a part: face side and back, the straight edges of its outline (those in one plane as one face), and its
 * cuts. Where a cut takes an edge exactly off its line, the face is the cut's.
 */
export const facesOf: (part: PlacedPart) => readonly PartFace[] = keptFor((part) =>
  possibleFaces(part).filter(isLeft),
);

/** Have cuts left anything of a face? Face side and back are there in any case. */
export const isLeft = ({ kind, regions }: PartFace): boolean =>
  kind === 'face' || kind === 'back' || areaOfRegions(regions) > CONTACT_AREA;

/** The same with those of which cuts may have left nothing. */
export const possibleFaces: (part: PlacedPart) => readonly PartFace[] = keptFor((part) =>
  ownFaces(part).map((face) => placeFace(part, face)),
);

/** A face where its part stands. */
function placeFace({ frame }: Pick<PlacedPart, 'frame'>, face: OwnFace): PartFace {
  const { name, kind, edges, own } = face;
  return {
    name,
    kind,
    edges,
    own,
    plane: planeToWorld(frame, face.plane),
    frame: frameToWorld(frame, own),
    get regions() {
      return face.regions();
    },
  };
}

const knownFor = keptFor((_: Shape['drawn']) => new WeakMap<Shape['cuts'], readonly OwnFace[]>());

/** One list for all copies that share outline and cuts. */
function ownFaces(part: Shape): readonly OwnFace[] {
  const known = knownFor(part.drawn);
  const found = known.get(part.cuts) ?? newFaces(part);
  known.set(part.cuts, found);
  return found;
}

function newFaces(part: Shape): readonly OwnFace[] {
  const cuts = part.cuts.map((cut) => cutFace(part, cut));
  return [faceSide(part), backOf(part), ...edgeFaces(part, cuts), ...cuts];
}

function faceSide({ face }: Shape): OwnFace {
  const own = { origin: { x: 0, y: 0, z: 0 }, x: { x: 1, y: 0, z: 0 }, y: { x: 0, y: 1, z: 0 }, z: OUT };
  return { name: 'face', kind: 'face', edges: [], own, plane: planeOf(own), regions: () => face };
}

function backOf({ back, drawn }: Shape): OwnFace {
  const own: Frame = {
    origin: { x: 0, y: 0, z: -drawn.thickness },
    x: { x: -1, y: 0, z: 0 },
    y: { x: 0, y: 1, z: 0 },
    z: scale3(OUT, -1),
  };
  const turned = { turn: 0, shift: { x: 0, y: 0 }, scale: 1, mirrored: true };
  const regions = once(() => back.map((region) => transformRegion(region, turned)));
  return { name: 'back', kind: 'back', edges: [], own, plane: planeOf(own), regions };
}

function cutFace(part: Shape, cut: Cut): OwnFace {
  const { normal, offset } = cut.plane;
  const own = wallFrame(scale3(normal, offset), normal);
  // The line on the face side through the part is what the frame starts from: its origin climbs to depth 0.
  const climb = -own.origin.z / own.y.z;
  const origin = shift(own.origin, own.y, climb);
  const placed = { ...own, origin };
  const regions = once(() => sectionOfPart(part, placed, (name) => name === cut.name));
  return { name: cut.name, kind: 'cut', edges: [cut.name], own: placed, plane: cut.plane, regions };
}

/** The walls that straight edges make, but for those that lie in the plane of a cut face. */
function edgeFaces(part: Shape, cuts: readonly OwnFace[]): readonly OwnFace[] {
  const { region, thickness } = part.drawn;
  const faces: OwnFace[] = [];
  for (const edge of [region.outer, ...region.holes].flatMap((loop) => loop.edges)) {
    if (!isWall(edge)) continue;
    const out = { x: edge.to.y - edge.from.y, y: edge.from.x - edge.to.x, z: 0 };
    const plane = planeThrough({ ...edge.from, z: 0 }, out);
    if (cuts.some((cut) => isSamePlane(cut.plane, plane) && areaOfRegions(cut.regions()) > CONTACT_AREA))
      continue;
    const own = wallFrame({ ...edge.from, z: 0 }, plane.normal);
    const wall = once(() => wallOf(part, own, edge, thickness));
    const at = faces.findIndex((face) => isSamePlane(face.plane, plane));
    const other = faces[at];
    if (other === undefined)
      faces.push({
        name: edge.tag.id,
        kind: 'edge',
        edges: [edge.tag.id],
        own,
        plane: planeOf(own),
        regions: wall,
      });
    else faces[at] = joined(other, edge.tag.id, own, wall);
  }
  return faces;
}

/** A face with one more wall in its plane. */
function joined(face: OwnFace, edge: string, own: Frame, wall: OwnFace['regions']): OwnFace {
  const regions = once(() => {
    const to = similarityTo(own, face.own);
    return uniteRegions(
      face.regions(),
      wall().map((each) => transformRegion(each, to)),
    );
  });
  return { ...face, edges: [...face.edges, edge], regions };
}

const isWall = (edge: Edge): edge is Line => edge.kind === 'line' && lengthOf(edge) > CONTACT_TOLERANCE;

/** What the cuts leave of the rectangle that an edge spans down to the back. */
function wallOf({ cuts }: Shape, own: Frame, edge: Line, thickness: number): readonly Region[] {
  const long = distance(edge.from, edge.to);
  const corners = [
    { x: 0, y: -thickness },
    { x: long, y: -thickness },
    { x: long, y: 0 },
    { x: 0, y: 0 },
  ];
  const whole: readonly Region[] = [{ outer: polygonOutline(corners, edge.tag), holes: [] }];
  return cuts.reduce((regions, cut) => {
    const { normal, offset } = planeToFrame(own, cut.plane);
    const within = { x: normal.x, y: normal.y };
    if (norm(within.x, within.y) < ANGLE_TOLERANCE) return offset < -CONTACT_TOLERANCE ? [] : regions;
    return keepHalfPlane(regions, { normal: within, offset }, cut);
  }, whole);
}

/** A frame on a wall: z out of it, y climbing towards the face side, x along the part's faces with the wood on its left. */
function wallFrame(origin: Vec3, out: Vec3): Frame {
  const x = unit3(cross3(OUT, out));
  return { origin, x, y: cross3(out, x), z: out };
}

const planeOf = ({ origin, z }: Frame): Plane3 => planeThrough(origin, z);

const isSamePlane = (a: Plane3, b: Plane3): boolean =>
  dot3(a.normal, b.normal) > 1 - ANGLE_TOLERANCE && Math.abs(a.offset - b.offset) <= CONTACT_TOLERANCE;

const frameToWorld = (outer: Frame, frame: Frame): Frame => ({
  origin: pointToWorld(outer, frame.origin),
  x: directionToWorld(outer, frame.x),
  y: directionToWorld(outer, frame.y),
  z: directionToWorld(outer, frame.z),
});

const shift = (p: Vec3, along: Vec3, by: number): Vec3 => ({
  x: p.x + along.x * by,
  y: p.y + along.y * by,
  z: p.z + along.z * by,
});
