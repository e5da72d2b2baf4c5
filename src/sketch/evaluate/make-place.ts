import { cross3, length3, type Vec3, vec3 } from '../../geometry/index.ts';
import type { CopyOfPlace, PlacedSketch, TrimOfPlace } from '../api.ts';
import type { CopySpec, PlaceSpec, TrimSpec } from '../schema/base.ts';
import type { Expression } from '../schema/expression.ts';
import { MOST_COPIES } from '../source/limits.ts';
import type { Desk } from './desk.ts';
import { makeDirection, makeSpot } from './make-spot.ts';
import { thicknessOfPart } from './thickness-of-part.ts';

const UP: Vec3 = vec3(0, 0, 1);
const TO_THE_SITTER: Vec3 = vec3(0, -1, 0);
const AXES = { up: 'z', 'left-right': 'x', 'front-back': 'y' } as const;
/** As close as this (rad) two directions are one. */
const ONE_DIRECTION = 1e-9;

/** A part standing in the base; nothing when it cannot be placed, the desk then having the reason. */
export function makePlace(
  name: string,
  spec: PlaceSpec,
  planes: ReadonlySet<string>,
  desk: Desk,
): PlacedSketch | undefined {
  const pin = desk.point(spec.pin);
  const at = makeSpot(spec.at, desk);
  const along = spec.along === undefined ? UP : makeDirection(spec.along, desk);
  const face = spec.face === undefined ? TO_THE_SITTER : makeDirection(spec.face, desk);
  const turns = (spec.turns ?? []).flatMap(({ about, by, when }) => {
    const angle = desk.holds(when) === true ? desk.figure(by) : undefined;
    return angle === undefined ? [] : [{ about: AXES[about], by: angle }];
  });
  const thickness = thicknessOfPart(spec.part.text, desk);
  const pinDepth =
    spec.deep === undefined ? 0 : spec.deep === 'half' ? thickness && thickness / 2 : desk.figure(spec.deep);
  const trims = (spec.trims ?? []).flatMap((trim) => makeTrim(name, trim, planes, desk) ?? []);
  const copies = (spec.copies ?? []).flatMap((copy) => makeCopy(copy, desk) ?? []);
  const beam = spec.beam !== undefined && desk.holds(spec.beam) === true;
  if (pin === undefined || at === undefined || along === undefined || face === undefined) return undefined;
  if (pinDepth === undefined) return undefined;
  if (length3(cross3(along, face)) < ONE_DIRECTION) {
    const { source } = (spec.face ?? spec.along)!.ways[0];
    const message = `${name} cannot be placed: its length and its face look the same way`;
    return desk.refuse(source.place, 'form.direction', message, 'two directions across each other');
  }
  const { label, part } = spec;
  return { name, label, part: part.text, pin, at, along, face, turns, pinDepth, trims, copies, beam };
}

function makeTrim(
  place: string,
  trim: TrimSpec,
  planes: ReadonlySet<string>,
  desk: Desk,
): TrimOfPlace | undefined {
  if (desk.holds(trim.when) !== true) return undefined;
  const otherSide = 'against' in trim;
  const plane = otherSide ? trim.against : trim.inside;
  if (planes.has(plane.text)) return { plane: plane.text, otherSide };
  const message = `${plane.text} is absent with these numbers, so ${place} cannot be cut by it`;
  return desk.refuse(
    plane.place,
    'form.absent',
    message,
    'a plane that is present, or a condition on the trim',
  );
}

function makeCopy(copy: CopySpec, desk: Desk): CopyOfPlace | undefined {
  if (desk.holds(copy.when) !== true) return undefined;
  if ('mirror' in copy) return { kind: 'mirror', across: copy.mirror };
  const count = countOf('repeat' in copy ? copy.repeat : copy.turn, desk);
  if (count === undefined) return undefined;
  if ('turn' in copy) return { kind: 'turn', count };
  const step = makeSpot(copy.step, desk);
  return step && { kind: 'repeat', count, step };
}

function countOf(expression: Expression<'number'>, desk: Desk): number | undefined {
  const count = desk.figure(expression);
  if (count === undefined || (Number.isInteger(count) && count >= 1 && count <= MOST_COPIES)) return count;
  const expected = `a whole number from 1 to ${MOST_COPIES}`;
  return desk.refuse(
    expression.source.place,
    'form.quantity',
    `${count} copies are not ${expected}`,
    expected,
  );
}

/** How many pieces of wood a place stands for. */
export function copiesIn(copies: readonly CopyOfPlace[]): number {
  return copies.reduce((product, copy) => product * (copy.kind === 'mirror' ? 2 : copy.count), 1);
}
