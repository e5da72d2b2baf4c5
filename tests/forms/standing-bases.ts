import { type PlacedPart, type StandingBase, standBase } from '../../src/base/index.ts';
import {
  areaOfOutline,
  areaOfRegions,
  cross3,
  dot3,
  type Edge,
  frameAlong,
  intersectRegions,
  type Plane3,
  planeThrough,
  planeToWorld,
  pointAt,
  pointToFrame,
  pointToWorld,
  polygonOutline,
  type Region,
  type Vec3,
} from '../../src/geometry/index.ts';
import { evaluateForm, type SketchedBase } from '../../src/sketch/index.ts';
import { formCalled, type Values } from './forms.ts';

/** How closely (mm) faces that touch lie in one plane. */
const TOUCHING = 1e-6;

/** A flat face of a piece of wood in the world: its plane, the normal out of the wood, and its polygons. */
export interface WorldFace {
  readonly id: string;
  readonly plane: Plane3;
  readonly polygons: readonly (readonly Vec3[])[];
}

export function baseOf(name: string, values: Values = {}): SketchedBase {
  const sketch = evaluateForm(formCalled(name), values);
  if (!sketch.ok) throw new Error(`${name}: ${sketch.problems.map(({ message }) => message).join('; ')}`);
  return sketch.value.base!;
}

/** A base form standing at values that are known to suit it. */
export function standingOf(name: string, values: Values = {}): StandingBase {
  const sketch = evaluateForm(formCalled(name), values);
  if (!sketch.ok) throw new Error(`${name}: ${sketch.problems.map(({ message }) => message).join('; ')}`);
  const standing = standBase(sketch.value);
  if (!standing.ok) throw new Error(`${name}: ${standing.problems.map(({ message }) => message).join('; ')}`);
  return standing.value;
}

export function partsAt({ parts }: StandingBase, place: string): readonly PlacedPart[] {
  const found = parts.filter((part) => part.place === place);
  if (found.length === 0) throw new Error(`nothing stands at ${place}`);
  return found;
}

/** The piece of a place with this mark. */
export function markedAt(base: StandingBase, place: string, mark: string): PlacedPart {
  const found = partsAt(base, place).find((part) => part.mark === mark);
  if (found === undefined) throw new Error(`no ${place} is marked ${mark}`);
  return found;
}

/** Corners and points on the curves of a piece, both sides of it, in the world. */
export function pointsOf({ frame, face, back, drawn }: PlacedPart): readonly Vec3[] {
  return [
    ...around(face).map((p) => pointToWorld(frame, { ...p, z: 0 })),
    ...around(back).map((p) => pointToWorld(frame, { ...p, z: -drawn.thickness })),
  ];
}

export function extentOf(parts: readonly PlacedPart[], axis: 'x' | 'y' | 'z'): readonly [number, number] {
  const all = parts.flatMap(pointsOf).map((p) => p[axis]);
  return [Math.min(...all), Math.max(...all)];
}

/** Every flat face of a piece: its show face, its back, its straight edges and its cuts. */
export function flatFacesOf(part: PlacedPart): readonly WorldFace[] {
  const { frame, face, back, drawn, cuts } = part;
  const depth = -drawn.thickness;
  const lift = (z: number) => (p: { readonly x: number; readonly y: number }) =>
    pointToWorld(frame, { ...p, z });
  const broad = (id: string, regions: readonly Region[], z: number): WorldFace => ({
    id,
    plane: planeToWorld(frame, { normal: { x: 0, y: 0, z: z === 0 ? 1 : -1 }, offset: z === 0 ? 0 : -z }),
    polygons: regions.map(({ outer }) => outer.edges.flatMap(pointsAlong).map(lift(z))),
  });
  const ids = new Set(linesOf(face).map(({ tag }) => tag.id));
  const narrow = [...ids].flatMap((id): readonly WorldFace[] => {
    const [front, rear] = [face, back].map((regions) => linesOf(regions).filter(({ tag }) => tag.id === id));
    if (front === undefined || rear === undefined || front.length !== rear.length) return [];
    const cut = cuts.find(({ name }) => name === id);
    const [first] = front;
    const own: Plane3 =
      cut?.plane ??
      planeThrough(
        { ...first!.from, z: 0 },
        { x: first!.to.y - first!.from.y, y: first!.from.x - first!.to.x, z: 0 },
      );
    const polygons = front.map((edge, at) => [
      ...[edge.from, edge.to].map(lift(0)),
      ...[rear[at]!.to, rear[at]!.from].map(lift(depth)),
    ]);
    return [{ id, plane: planeToWorld(frame, own), polygons }];
  });
  return [broad('face', face, 0), broad('back', back, depth), ...narrow];
}

/** Area (mm²) in which a face bears on flat faces of other pieces: in one plane, looking at each other. */
export function bearing(face: WorldFace, others: readonly PlacedPart[]): number {
  const mates = others.flatMap(flatFacesOf).filter(({ plane }) => {
    const apart = Math.abs(plane.offset + face.plane.offset);
    const { normal } = plane;
    const turn = Math.hypot(
      normal.x + face.plane.normal.x,
      normal.y + face.plane.normal.y,
      normal.z + face.plane.normal.z,
    );
    return turn < 1e-9 && apart < TOUCHING;
  });
  const mated = mates.flatMap((mate) => flattened(mate.polygons, face.plane));
  return areaOfRegions(intersectRegions(flattened(face.polygons, face.plane), mated));
}

export function areaOfFace(face: WorldFace): number {
  return areaOfRegions(flattened(face.polygons, face.plane));
}

/** Angle (rad) between two directions. */
export function angleBetween(a: Vec3, b: Vec3): number {
  return Math.atan2(Math.hypot(...Object.values(cross3(a, b))), dot3(a, b));
}

/** Polygons of a plane seen against its normal, in a plane of their own, anticlockwise. */
function flattened(polygons: readonly (readonly Vec3[])[], { normal }: Plane3): readonly Region[] {
  const towards = Math.abs(normal.z) < 0.9 ? { x: 0, y: 0, z: 1 } : { x: 1, y: 0, z: 0 };
  const frame = frameAlong({ x: 0, y: 0, z: 0 }, normal, towards)!;
  return polygons.map((polygon) => {
    const corners = polygon.map((p) => {
      const { x, z } = pointToFrame(frame, p);
      return { x, y: z };
    });
    const outer = polygonOutline(corners, TAG);
    return { outer: areaOfOutline(outer) < 0 ? polygonOutline(corners.reverse(), TAG) : outer, holes: [] };
  });
}

const TAG = { id: 'face', role: 'joint' } as const;

const around = (regions: readonly Region[]) =>
  regions.flatMap(({ outer }) => outer.edges.flatMap(pointsAlong));

const linesOf = (regions: readonly Region[]): readonly Edge[] =>
  regions.flatMap(({ outer }) => outer.edges.filter(({ kind }) => kind === 'line'));

function pointsAlong(edge: Edge) {
  if (edge.kind === 'line') return [edge.from];
  return [0, 0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875].map((share) => pointAt(edge, share));
}
