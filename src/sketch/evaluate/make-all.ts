import type { Result } from '../../core/index.ts';
import type { Vec } from '../../geometry/index.ts';
import type { SketchedPlane as Plane } from '../api.ts';
import { keyOf } from '../form/check-cycles.ts';
import { drawEdge } from '../outline/draw-edge.ts';
import type { DrawnEdge } from '../outline/drawn-edge.ts';
import { FARTHEST } from '../source/limits.ts';
import type { Place } from '../source/place.ts';
import { type Desk, openDesk } from './desk.ts';
import { makePoint } from './make-point.ts';
import type { Sheet } from './sheet.ts';
import { showPoint } from './show.ts';

/**
 * Makes every value, point, plane and edge of a form in an order in which each follows what it needs (no recursion, so that
 * no chain is too long), or some of them that need no others. What cannot be made keeps its problems, which are told only when something needs it.
 */
export function makeAll(sheet: Sheet, order: readonly string[] = sheet.form.order): void {
  const { data } = sheet.form;
  for (const key of order) {
    const edge = /^(.*)\[(\d+)\]$/.exec(key);
    if (edge !== null) {
      sheet.edges.set(key, makeEdge(edge[1]!, Number(edge[2]), sheet));
      continue;
    }
    const desk = openDesk(sheet);
    const value = data.values?.[key];
    const point = data.points?.[key];
    const plane = data.planes?.[key];
    if (value !== undefined) sheet.values.set(key, desk.close(desk.value(value)));
    else if (point !== undefined)
      sheet.values.set(
        key,
        desk.close(
          withinReach(
            makePoint(point, placeOf(key, 'points', sheet), desk),
            placeOf(key, 'points', sheet),
            desk,
          ),
        ),
      );
    else if (plane !== undefined) {
      const through = desk.point(plane.through);
      const facing = desk.figure(plane.facing);
      const made: Plane | undefined = through && facing !== undefined ? { through, facing } : undefined;
      sheet.values.set(key, desk.close(made));
    }
  }
}

/** A point far beyond any base is refused before curves and crossings are drawn to it. */
function withinReach(point: Vec | undefined, place: Place, desk: Desk): Vec | undefined {
  if (point === undefined || Math.max(Math.abs(point.x), Math.abs(point.y)) <= FARTHEST) return point;
  const message = `this point lies more than ${FARTHEST / 1000} m away, at ${showPoint(point, desk.sheet.style)}`;
  return desk.refuse(place, 'form.far', message, `at most ${FARTHEST / 1000} m`);
}

function placeOf(name: string, section: string, sheet: Sheet): Place {
  return sheet.form.places.get(`${section}#${name}`) ?? { line: 1, column: 1, path: `${section}.${name}` };
}

function makeEdge(outline: string, index: number, sheet: Sheet): Result<DrawnEdge | 'absent'> {
  const desk = openDesk(sheet);
  const spec = sheet.form.data.outlines[outline]!;
  const edge = spec.edges[index]!;
  const holds = desk.holds(edge.when);
  if (holds === false) return desk.close<DrawnEdge | 'absent'>('absent');
  let before: DrawnEdge | undefined;
  for (let earlier = index - 1; earlier >= 0 && before === undefined; earlier -= 1) {
    const made = desk.take(sheet.edges.get(keyOf(outline, earlier))!);
    if (made === undefined) return desk.close<DrawnEdge>(undefined);
    if (made !== 'absent') before = made;
  }
  const from = before?.to ?? desk.point(spec.start);
  if (holds === undefined || from === undefined) return desk.close<DrawnEdge>(undefined);
  return desk.close(drawEdge(edge, { from, before }, desk));
}
