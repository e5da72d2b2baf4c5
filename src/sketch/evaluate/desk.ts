import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import {
  ANGLE_TOLERANCE,
  add,
  leftOf,
  norm,
  POSITION_TOLERANCE,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import type { SketchedPlane as Plane } from '../api.ts';
import { compute } from '../expression/compute.ts';
import type { Value, ValueScope } from '../expression/value-scope.ts';
import type { LineRef } from '../schema/construction.ts';
import type { Coordinates, Expression } from '../schema/expression.ts';
import { type Place, placeWithin } from '../source/place.ts';
import { headingOf } from './heading.ts';
import type { Sheet } from './sheet.ts';
import { show } from './show.ts';

/** A straight line without end: a point on it and its unit direction. */
export interface Straight {
  readonly at: Vec;
  readonly direction: Vec;
}

/**
 * Where one thing of a form is made: reads its expressions, and collects what goes wrong. Whatever could not be read is
 * undefined, its problem collected.
 */
export interface Desk {
  readonly sheet: Sheet;
  readonly problems: readonly Problem[];
  /** A figure in mm, rad or plain. */
  readonly figure: (expression: Expression<'length' | 'angle' | 'number'>) => number | undefined;
  /** A length that must be more than 0. */
  readonly size: (expression: Expression<'length'>, what: string) => number | undefined;
  /** Yes when there is no condition. */
  readonly holds: (condition: Expression<'flag'> | undefined) => boolean | undefined;
  readonly point: (expression: Expression<'point'> | Coordinates) => Vec | undefined;
  readonly points: <const T extends readonly Expression<'point'>[]>(
    all: T,
  ) => { [K in keyof T]: Vec } | undefined;
  readonly straight: (line: LineRef) => Straight | undefined;
  readonly value: (expression: Expression) => Value | undefined;
  readonly refuse: (place: Place, code: string, message: string, expected?: string) => undefined;
  /** What the collected problems leave of a result. */
  readonly close: <T>(value: T | undefined) => Result<T>;
  /** Takes over the problems of something that this thing needs. */
  readonly take: <T>(result: Result<T>) => T | undefined;
}

export function openDesk(sheet: Sheet): Desk {
  const problems: Problem[] = [];
  const refuse: Desk['refuse'] = (place, code, message, expected) => {
    problems.push({
      code,
      message,
      file: sheet.form.file,
      ...place,
      ...(expected === undefined ? {} : { expected }),
    });
    return undefined;
  };
  const take: Desk['take'] = (result) => {
    if (result.ok) return result.value;
    for (const problem of result.problems) if (!problems.includes(problem)) problems.push(problem);
    return undefined;
  };
  const value: Desk['value'] = ({ node, source }) => {
    const scope: ValueScope = {
      text: source.text,
      stepless: sheet.stepless ?? false,
      compute: (part) => compute(part, scope),
      valueOf: (name) => {
        const made = sheet.values.get(name);
        if (made === undefined) throw new Error(`${name} is used before it is made`);
        return take(made);
      },
      report: (span, code, message, expected) =>
        refuse(placeWithin(source, span.from), code, message, expected),
    };
    return compute(node, scope);
  };
  const figure: Desk['figure'] = (expression) => value(expression) as number | undefined;
  const point: Desk['point'] = (expression) => {
    if (expression.kind === 'expression') return value(expression) as Vec | undefined;
    const x = figure(expression.x);
    const y = figure(expression.y);
    return x === undefined || y === undefined ? undefined : { x, y };
  };
  return {
    sheet,
    problems,
    refuse,
    take,
    value,
    figure,
    point,
    size: (expression, what) => {
      const size = figure(expression);
      if (size === undefined || size > POSITION_TOLERANCE) return size;
      const message = `${what} of ${show(size, sheet.style)} is none: it must be more than 0`;
      return refuse(expression.source.place, 'form.size', message, 'more than 0');
    },
    holds: (condition) => (condition === undefined ? true : (value(condition) as boolean | undefined)),
    points: <const T extends readonly Expression<'point'>[]>(all: T) => {
      const found = all.map(point);
      return found.includes(undefined) ? undefined : (found as unknown as { [K in keyof T]: Vec });
    },
    straight: (line) => {
      if (!isPair(line)) {
        const plane = value(line) as Plane | undefined;
        return plane && { at: plane.through, direction: leftOf(headingOf(plane.facing)) };
      }
      const at = point(line[0]);
      const other = value(line[1]) as Vec | number | undefined;
      if (at === undefined || other === undefined) return undefined;
      if (typeof other === 'number') return { at, direction: headingOf(other) };
      const along = subtract(other, at);
      if (norm(along.x, along.y) > POSITION_TOLERANCE) return { at, direction: unit(along) };
      const message = 'the two points of this line are the same place';
      return refuse(line[0].source.place, 'form.line', message, 'two points apart from each other');
    },
    close: (made) => (made === undefined || problems.length > 0 ? fail(...problems) : ok(made)),
  };
}

function isPair(line: LineRef): line is Extract<LineRef, readonly unknown[]> {
  return Array.isArray(line);
}

/** Where two straight lines cross; nothing when they are parallel. */
export function crossingOf(a: Straight, b: Straight): Vec | undefined {
  const turn = a.direction.x * b.direction.y - a.direction.y * b.direction.x;
  if (Math.abs(turn) <= ANGLE_TOLERANCE) return undefined;
  const way = subtract(b.at, a.at);
  const t = (way.x * b.direction.y - way.y * b.direction.x) / turn;
  return add(a.at, { x: t * a.direction.x, y: t * a.direction.y });
}

/** The nearest point of a straight line. */
export function dropOnto(p: Vec, line: Straight): Vec {
  const way = subtract(p, line.at);
  const t = way.x * line.direction.x + way.y * line.direction.y;
  return add(line.at, { x: t * line.direction.x, y: t * line.direction.y });
}

export function mirrorOver(p: Vec, line: Straight): Vec {
  const foot = dropOnto(p, line);
  return { x: 2 * foot.x - p.x, y: 2 * foot.y - p.y };
}
