import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import {
  add3,
  cross3,
  dot3,
  type Frame,
  flipPlane,
  length3,
  type Plane3,
  planeThrough,
  planeToWorld,
  scale3,
  subtract3,
  unit3,
  type Vec3,
} from '../../geometry/index.ts';
import type { BasePlane, FaceOfPlace, SketchedBase, SketchedPart } from '../../sketch/index.ts';
import { movePlane } from './copies.ts';

/** A place whose frame is known. */
export interface FramedPlace {
  readonly frame: Frame;
  readonly drawn: SketchedPart;
}

/** The form's planes in the world; otherwise which of them cannot be made, and why. */
export function planesOfBase(
  base: SketchedBase,
  places: ReadonlyMap<string, FramedPlace>,
): Result<Readonly<Record<string, Plane3>>> {
  const problems: Problem[] = [];
  const made = new Map<string, Plane3 | undefined>();
  const planeOf = (name: string, from: readonly string[]): Plane3 | undefined => {
    if (made.has(name)) return made.get(name);
    const plane = base.planes[name];
    const refuse = (message: string, expected: string): undefined => {
      problems.push({ code: 'base.plane', message, path: `base.planes.${name}`, expected });
      return undefined;
    };
    if (plane === undefined)
      return refuse(`there is no plane called ${name}`, Object.keys(base.planes).join(', '));
    if (from.includes(name))
      return refuse(`planes need each other: ${[...from, name].join(' → ')}`, 'no circle');
    const result = makePlane(plane, places, (other) => planeOf(other, [...from, name]), refuse);
    made.set(name, result);
    return result;
  };
  const all = Object.keys(base.planes).map((name) => [name, planeOf(name, [])] as const);
  if (problems.length > 0) return fail(...problems);
  return ok(
    Object.fromEntries(all.filter((each): each is readonly [string, Plane3] => each[1] !== undefined)),
  );
}

function makePlane(
  plane: BasePlane,
  places: ReadonlyMap<string, FramedPlace>,
  planeOf: (name: string) => Plane3 | undefined,
  refuse: (message: string, expected: string) => undefined,
): Plane3 | undefined {
  switch (plane.kind) {
    case 'through':
      if (length3(plane.facing) === 0)
        return refuse('this plane faces nowhere', 'a direction of some length');
      return planeThrough(plane.through, plane.facing);
    case 'face': {
      const face = faceOfPlace(plane.of, places);
      if (face === undefined) {
        return refuse(
          `${plane.of.place} has no flat face called ${plane.of.face}`,
          'face, back, or a straight edge of its outline',
        );
      }
      return { ...face, offset: face.offset + plane.out };
    }
    case 'mitre': {
      const [a, b] = plane.between.map(planeOf);
      if (a === undefined || b === undefined) return undefined;
      return mitrePlane(a, b, plane.facing) ?? refuse('these two planes are parallel', 'planes that cross');
    }
    default:
      return plane satisfies never;
  }
}

/** The plane of a flat face of a part, its normal out of the wood; nothing where it has none of that name. */
export function faceOfPlace(
  { place, face, mirrored }: FaceOfPlace,
  places: ReadonlyMap<string, FramedPlace>,
): Plane3 | undefined {
  const found = places.get(place);
  const own = found && ownFace(found.drawn, face);
  if (found === undefined || own === undefined) return undefined;
  return movePlane(planeToWorld(found.frame, own), { mirrored, turn: 0, shift: { x: 0, y: 0, z: 0 } });
}

/** A flat face in the part's own frame. */
function ownFace({ region, thickness }: SketchedPart, face: string): Plane3 | undefined {
  if (face === 'face') return { normal: { x: 0, y: 0, z: 1 }, offset: 0 };
  if (face === 'back') return { normal: { x: 0, y: 0, z: -1 }, offset: thickness };
  const edge = [region.outer, ...region.holes]
    .flatMap(({ edges }) => edges)
    .find(({ tag }) => tag.id === face);
  if (edge?.kind !== 'line') return undefined;
  // The wood lies to the left of every edge.
  const out: Vec3 = { x: edge.to.y - edge.from.y, y: edge.from.x - edge.to.x, z: 0 };
  return planeThrough({ ...edge.from, z: 0 }, out);
}

/** Of the two planes that halve the angle of two, through the line where they cross, the one whose normal is nearer to a direction. */
function mitrePlane(a: Plane3, b: Plane3, facing: Vec3): Plane3 | undefined {
  const along = cross3(a.normal, b.normal);
  const square = dot3(along, along);
  if (square < 1e-18) return undefined;
  // The point of the crossing line nearest to the origin.
  const through = scale3(
    add3(scale3(cross3(b.normal, along), a.offset), scale3(cross3(along, a.normal), b.offset)),
    1 / square,
  );
  const halves = [add3(a.normal, b.normal), subtract3(a.normal, b.normal)].map((normal) =>
    planeThrough(through, normal),
  );
  const towards = unit3(facing);
  const [best] = halves.toSorted(
    (p, q) => Math.abs(dot3(q.normal, towards)) - Math.abs(dot3(p.normal, towards)),
  );
  return best && (dot3(best.normal, towards) < 0 ? flipPlane(best) : best);
}
