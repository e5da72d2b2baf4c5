import type { FormData } from '../schema/form.ts';
import type { HandleSpec } from '../schema/handle.ts';
import type { Place } from '../source/place.ts';
import { type Complaints, noSuch } from './complaints.ts';
import { cornerNames } from './outline-names.ts';
import { own } from './own.ts';

/** Kinds of parameter that a pulled point can set: whatever changes little by little. */
const CONTINUOUS: readonly string[] = ['length', 'angle', 'ratio'];

/** What a handle calls by name must be there; what it moves must be figures that can change little by little. */
export function checkHandles(
  data: FormData,
  places: ReadonlyMap<string, Place>,
  complaints: Complaints,
): void {
  const { handles } = data;
  if (handles === undefined) return;
  const placeOf = (path: string, key: string): Place =>
    places.get(`${path}#${key}`) ?? { line: 1, column: 1, path: key };
  if (data.grammar < 3) {
    const message = `handles belong to grammar 3: this form says ${data.grammar}`;
    complaints.add(placeOf('', 'handles'), 'form.grammar', message, {
      found: `grammar: ${data.grammar}`,
      expected: 'grammar: 3',
    });
  }
  for (const [name, handle] of Object.entries(handles)) {
    checkMoves(handle, data, complaints);
    if ('part' in handle) checkPoint(handle, data, complaints);
    else if (data.base === undefined) {
      const message = `${name} is a point of the base, and this form has none: name its part`;
      complaints.add(placeOf('handles', name), 'form.handle', message, { expected: 'part' });
    }
  }
}

function checkMoves({ moves }: HandleSpec, data: FormData, complaints: Complaints): void {
  const names = Object.keys(data.parameters);
  for (const [index, { text, place }] of moves.entries()) {
    const parameter = own(data.parameters, text);
    if (parameter === undefined) {
      complaints.add(place, 'form.unknown', noSuch('parameter', text, names), { found: text });
    } else if (!CONTINUOUS.includes(parameter.kind)) {
      const message = `${text} is a ${parameter.kind}: a handle moves lengths, angles and ratios`;
      complaints.add(place, 'form.handle', message, { found: text, expected: CONTINUOUS.join(', ') });
    } else if (moves.findIndex((each) => each.text === text) !== index) {
      complaints.add(place, 'form.twice', `${text} is moved twice`, { found: text });
    }
  }
}

function checkPoint(
  { part, corner }: Extract<HandleSpec, { part: unknown }>,
  data: FormData,
  complaints: Complaints,
): void {
  if (own(data.parts, part.text) === undefined) {
    const message = noSuch('part', part.text, Object.keys(data.parts));
    complaints.add(part.place, 'form.unknown', message, { found: part.text });
  }
  if (corner === undefined) return;
  const outline = own(data.outlines, corner.outline);
  const { place } = corner.source;
  if (outline === undefined) {
    complaints.add(place, 'form.unknown', noSuch('outline', corner.outline, Object.keys(data.outlines)));
    return;
  }
  const corners = cornerNames(outline);
  if (!corners.includes(corner.corner)) {
    complaints.add(place, 'form.unknown', noSuch('corner', corner.corner, corners));
  }
}
