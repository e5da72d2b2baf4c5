import type { Vec } from '../../geometry/index.ts';
import type { Handle } from '../api.ts';
import { keyOf } from '../form/check-cycles.ts';
import { startName } from '../form/outline-names.ts';
import type { HandleSpec } from '../schema/handle.ts';
import type { Desk } from './desk.ts';
import { makeDirection, makeSpot } from './make-spot.ts';

/** A handle where its point is with these numbers; nothing where its condition does not hold or the point cannot be made. */
export function makeHandle(name: string, spec: HandleSpec, desk: Desk): Handle | undefined {
  if (desk.holds(spec.when) !== true) return undefined;
  const told = { name, label: spec.label, moves: spec.moves.map(({ text }) => text) };
  if ('views' in spec) {
    const at = makeSpot(spec.at, desk);
    const along = spec.along === undefined ? undefined : makeDirection(spec.along, desk);
    if (at === undefined || (spec.along !== undefined && along === undefined)) return undefined;
    return { ...told, of: 'base', at, ...(along === undefined ? {} : { along }), views: spec.views };
  }
  const at = pointOf(spec, desk);
  const along = spec.along === undefined ? undefined : desk.figure(spec.along);
  if (at === undefined || (spec.along !== undefined && along === undefined)) return undefined;
  const { text: part } = spec.part;
  return { ...told, of: 'part', part, at, ...(along === undefined ? {} : { along }) };
}

function pointOf({ at, corner }: Extract<HandleSpec, { part: unknown }>, desk: Desk): Vec | undefined {
  if (at !== undefined) return desk.point(at);
  const { outline, corner: name } = corner!;
  const spec = desk.sheet.form.data.outlines[outline]!;
  if (startName(spec) === name) return desk.point(spec.start);
  for (const index of spec.edges.keys()) {
    const edge = desk.take(desk.sheet.edges.get(keyOf(outline, index))!);
    if (edge !== undefined && edge !== 'absent' && edge.corner === name) return edge.to;
  }
  return undefined;
}
