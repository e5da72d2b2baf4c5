import type { BasePlaneSpec, BaseSpec } from '../schema/base.ts';
import type { FormData } from '../schema/form.ts';
import { MOST_BASE_PLANES, MOST_PLACES } from '../source/limits.ts';
import type { Place, Scalar } from '../source/place.ts';
import { type Complaints, noSuch } from './complaints.ts';
import { flatFacesOf } from './face-names.ts';
import { own } from './own.ts';

/** Planes that every base has: where its feet end, and the underside of its top. */
const REQUIRED: readonly string[] = ['floor', 'underside'];

/** Everything that a base calls by name must be there: parts, places, planes, flat faces. */
export function checkBase(data: FormData, places: ReadonlyMap<string, Place>, complaints: Complaints): void {
  const placeOf = (path: string, key: string): Place =>
    places.get(`${path}#${key}`) ?? { line: 1, column: 1, path: path === '' ? key : `${path}.${key}` };
  checkQuantities(data, placeOf, complaints);
  const { base } = data;
  if (base === undefined) return;
  if (data.grammar === 1) {
    complaints.add(placeOf('', 'base'), 'form.grammar', 'a base belongs to grammar 2: this form says 1', {
      found: 'grammar: 1',
      expected: 'grammar: 2',
    });
  }
  checkCounts(base, placeOf, complaints);
  const planes = Object.keys(base.planes);
  const stands = Object.keys(base.places);
  const known = ({ text, place }: Scalar, what: string, all: readonly string[]): boolean => {
    if (all.includes(text)) return true;
    complaints.add(place, 'form.unknown', noSuch(what, text, all), { found: text });
    return false;
  };
  for (const plane of Object.values(base.planes)) {
    if ('between' in plane) for (const one of plane.between) known(one, 'plane in the base', planes);
    if (!('face' in plane)) continue;
    const { place, face, source } = plane.face;
    const found = own(base.places, place);
    if (!known({ ...source, text: place }, 'place', stands) || found === undefined) continue;
    const part = own(data.parts, found.part.text);
    const faces = part === undefined ? [] : flatFacesOf(part, data);
    if (part === undefined || faces.includes(face)) continue;
    complaints.add(source.place, 'form.unknown', `${place} has no flat face "${face}"`, {
      found: face,
      expected: `one of ${faces.slice(0, 12).join(', ')}`,
    });
  }
  for (const spec of Object.values(base.places)) {
    known(spec.part, 'part', Object.keys(data.parts));
    for (const trim of spec.trims ?? [])
      known('inside' in trim ? trim.inside : trim.against, 'plane in the base', planes);
  }
  for (const joint of Object.values(base.joints ?? {}))
    for (const one of joint.between) known(one, 'place', stands);
  checkCircles(base.planes, placeOf, complaints);
}

/** A part that the base places is counted there; any other says how often it is made. */
function checkQuantities(
  data: FormData,
  placeOf: (path: string, key: string) => Place,
  complaints: Complaints,
): void {
  const placed = Object.values(data.base?.places ?? {}).map(({ part }) => part.text);
  // A place that asks for a part by a wrong name says so itself.
  if (placed.some((part) => own(data.parts, part) === undefined)) return;
  for (const [name, { quantity }] of Object.entries(data.parts)) {
    if (quantity !== undefined || placed.includes(name)) continue;
    const message =
      data.base === undefined
        ? 'quantity is missing: a map'
        : `${name} stands nowhere in the base, so it needs a quantity`;
    complaints.add(placeOf('parts', name), 'form.missing', message, { expected: '{ left: 1, right: 0 }' });
  }
}

function checkCounts(
  base: BaseSpec,
  placeOf: (path: string, key: string) => Place,
  complaints: Complaints,
): void {
  const over = (section: 'planes' | 'places', most: number): void => {
    const count = Object.keys(base[section]).length;
    if (count <= most) return;
    complaints.add(
      placeOf('base', section),
      'form.too-many',
      `the base has ${count} ${section}: at most ${most} are read`,
      { expected: `at most ${most}` },
    );
  };
  over('planes', MOST_BASE_PLANES);
  over('places', MOST_PLACES);
  if (Object.keys(base.places).length === 0)
    complaints.add(placeOf('base', 'places'), 'form.missing', 'a base places at least one part');
  for (const name of REQUIRED) {
    if (Object.hasOwn(base.planes, name)) continue;
    complaints.add(placeOf('base', 'planes'), 'form.missing', `a base has a plane called ${name}`, {
      expected: name,
    });
  }
}

/** A plane between two others cannot be one of those that they are made of. */
function checkCircles(
  planes: Readonly<Record<string, BasePlaneSpec>>,
  placeOf: (path: string, key: string) => Place,
  complaints: Complaints,
): void {
  const done = new Set<string>();
  const visit = (name: string, way: readonly string[]): boolean => {
    if (done.has(name)) return false;
    const met = way.indexOf(name);
    if (met >= 0) {
      const circle = [...way.slice(met), name].join(' → ');
      complaints.add(placeOf('base.planes', name), 'form.cycle', `these need each other: ${circle}`, {
        found: circle,
      });
      return true;
    }
    const plane = own(planes, name);
    const needs = plane !== undefined && 'between' in plane ? plane.between.map(({ text }) => text) : [];
    if (needs.some((need) => visit(need, [...way, name]))) return true;
    done.add(name);
    return false;
  };
  for (const name of Object.keys(planes)) if (visit(name, [])) return;
}
