import type { Result } from '../../core/index.ts';
import type { BasePlane, JointKind, JointSketch, SketchedBase, SketchedPart, TopSketch } from '../api.ts';
import { type BasePlaneSpec, type BaseSpec, type JointSpec, jointKindOf } from '../schema/base.ts';
import { MOST_COPIES } from '../source/limits.ts';
import type { Place } from '../source/place.ts';
import { type Desk, openDesk } from './desk.ts';
import { copiesIn, makePlace } from './make-place.ts';
import { makeDirection, makeSpot } from './make-spot.ts';
import type { Sheet } from './sheet.ts';

/**
 * Where the parts of a form stand. What a condition leaves out takes with it what is made of it: a place without its part, a plane
 * without the place whose face it is, a joint without one of its places.
 */
export function makeBase(spec: BaseSpec, sheet: Sheet, parts: readonly SketchedPart[]): Result<SketchedBase> {
  const desk = openDesk(sheet);
  const partOf = (place: string): SketchedPart | undefined =>
    parts.find(({ name }) => name === spec.places[place]?.part.text);
  const standing = Object.entries(spec.places).filter(
    ([name, place]) => desk.holds(place.when) === true && partOf(name) !== undefined,
  );
  const stands = new Set(standing.map(([name]) => name));
  const wanted = wantedPlanes(spec.planes, stands, desk);
  const planes = Object.entries(spec.planes).flatMap(([name, plane]) => {
    const made = wanted.has(name) ? makePlane(plane, partOf, desk) : undefined;
    return made === undefined ? [] : [[name, made] as const];
  });
  const places = standing.flatMap(([name, place]) => makePlace(name, place, wanted, desk) ?? []);
  const joints = Object.entries(spec.joints ?? {}).flatMap(
    ([name, joint]) => makeJoint(name, joint, stands, desk) ?? [],
  );
  const top = makeTop(spec.top, desk);
  const levellers = spec.levellers === undefined ? 0 : desk.figure(spec.levellers);
  const whole = placeOf('base', 'places', sheet);
  const copies = places.reduce((sum, place) => sum + copiesIn(place.copies), 0);
  if (copies > MOST_COPIES) {
    const message = `the base has ${copies} pieces of wood: at most ${MOST_COPIES} are placed`;
    desk.refuse(whole, 'form.too-many', message, `at most ${MOST_COPIES}`);
  }
  if (standing.length === 0) {
    desk.refuse(whole, 'form.absent', `${sheet.form.name} places no part with these numbers`);
  }
  if (top === undefined || levellers === undefined) return desk.close<SketchedBase>(undefined);
  return desk.close<SketchedBase>({
    use: spec.use,
    top,
    levellers,
    planes: Object.fromEntries(planes),
    places,
    joints,
  });
}

function makeTop(spec: BaseSpec['top'], desk: Desk): TopSketch | undefined {
  const round = spec.round !== undefined && desk.holds(spec.round) === true;
  const length = desk.size(spec.length, round ? 'a diameter' : 'a length of the top');
  const across = round || spec.width === undefined ? length : desk.size(spec.width, 'a width of the top');
  const thickness = desk.size(spec.thickness, 'a thickness of the top');
  const level = desk.size(spec.level, 'a level of the top');
  if (length === undefined || across === undefined || thickness === undefined || level === undefined)
    return undefined;
  return { shape: round ? 'round' : 'rectangle', length, width: across, thickness, level };
}

/** Planes that are there with these numbers: neither left out by a condition nor made of something that is. */
function wantedPlanes(
  planes: Readonly<Record<string, BasePlaneSpec>>,
  stands: ReadonlySet<string>,
  desk: Desk,
): ReadonlySet<string> {
  const there = new Map<string, boolean>();
  const isThere = (name: string): boolean => {
    const known = there.get(name);
    if (known !== undefined) return known;
    const plane = planes[name]!;
    const made =
      desk.holds(plane.when) === true &&
      (!('face' in plane) || stands.has(plane.face.place)) &&
      (!('between' in plane) || plane.between.every(({ text }) => isThere(text)));
    there.set(name, made);
    return made;
  };
  return new Set(Object.keys(planes).filter(isThere));
}

function makePlane(
  plane: BasePlaneSpec,
  partOf: (place: string) => SketchedPart | undefined,
  desk: Desk,
): BasePlane | undefined {
  if ('through' in plane) {
    const [through, facing] = [makeSpot(plane.through, desk), makeDirection(plane.facing, desk)];
    return through && facing && { kind: 'through', through, facing };
  }
  if ('between' in plane) {
    const facing = makeDirection(plane.facing, desk);
    const [a, b] = plane.between;
    return facing && { kind: 'mitre', between: [a.text, b.text], facing };
  }
  const { place, face, source } = plane.face;
  const out = plane.out === undefined ? 0 : desk.figure(plane.out);
  if (out === undefined) return undefined;
  const part = partOf(place);
  if (part !== undefined && !hasFlatFace(part, face)) {
    const message = `${source.text} is absent or rounded away with these numbers, so it is no flat face`;
    return desk.refuse(source.place, 'form.absent', message, 'a straight edge, or a condition on the plane');
  }
  return { kind: 'face', of: { place, face, mirrored: plane.mirrored ?? [] }, out };
}

function hasFlatFace({ region }: SketchedPart, face: string): boolean {
  if (face === 'face' || face === 'back') return true;
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  return edges.some(({ kind, tag }) => kind === 'line' && tag.id === face);
}

function makeJoint(
  name: string,
  joint: JointSpec,
  stands: ReadonlySet<string>,
  desk: Desk,
): JointSketch | undefined {
  const [a, b] = joint.between;
  if (desk.holds(joint.when) !== true || !stands.has(a.text) || !stands.has(b.text)) return undefined;
  const chosen = typeof joint.by === 'string' ? joint.by : desk.value(joint.by);
  if (typeof chosen !== 'string') return undefined;
  // Checked when the form was read: every option of the choice is a way to join.
  const kind = jointKindOf(chosen) as JointKind;
  return { name, label: joint.label, between: [a.text, b.text], kind };
}

function placeOf(path: string, key: string, sheet: Sheet): Place {
  return sheet.form.places.get(`${path}#${key}`) ?? { line: 1, column: 1, path: `${path}.${key}` };
}
