import { z } from 'zod';
import type { Node } from '../expression/node.ts';
import { parseExpressions } from '../expression/parse-expression.ts';
import { isScalar, placeWithin, type Scalar } from '../source/place.ts';
import type { Complaint } from './complaint.ts';

/** What is wanted where an expression stands. */
export type Wanted =
  | 'length'
  | 'angle'
  | 'number'
  | 'flag'
  | 'point'
  | 'plane'
  | 'point or angle'
  | 'number or length'
  | 'joint'
  | 'anything';

/** An expression of the file, read but not yet computed. */
export interface Expression<W extends Wanted = Wanted> {
  readonly kind: 'expression';
  readonly wanted: W;
  readonly node: Node;
  readonly source: Scalar;
}

export interface Coordinates {
  readonly kind: 'coordinates';
  readonly x: Expression<'length'>;
  readonly y: Expression<'length'>;
}

export function isExpression(value: unknown): value is Expression {
  return typeof value === 'object' && value !== null && 'kind' in value && value.kind === 'expression';
}

/** A text of the file. */
export function scalar(expected: string) {
  return z.custom<Scalar>(isScalar, { error: expected });
}

const PHRASES: Readonly<Record<Wanted, string>> = {
  length: 'a length',
  angle: 'an angle',
  number: 'a number',
  flag: 'a condition',
  point: 'a point',
  plane: 'a plane',
  'point or angle': 'a point or a direction',
  'number or length': 'a number or a length',
  joint: 'a way to join, or a choice of some',
  anything: 'an expression',
};

/** An expression of which a kind is wanted; whether it has it is checked once every name is known. */
export function expression<W extends Wanted>(wanted: W) {
  return scalar(PHRASES[wanted]).transform((source, context): Expression<W> => {
    const parsed = parseExpressions(source.text, 1);
    if (parsed.ok) return { kind: 'expression', wanted, node: parsed.nodes[0]!, source };
    context.issues.push(syntaxIssue(source, parsed.fault));
    return z.NEVER;
  });
}

/** A point: two lengths separated by a comma, or an expression that gives one. */
export const pointOrCoordinates = scalar('coordinates such as 0, 120 mm, or a point').transform(
  (source, context): Expression<'point'> | Coordinates => {
    const parsed = parseExpressions(source.text, 2);
    if (!parsed.ok) {
      context.issues.push(syntaxIssue(source, parsed.fault));
      return z.NEVER;
    }
    const [x, y] = parsed.nodes;
    if (y === undefined) return { kind: 'expression', wanted: 'point', node: x!, source };
    const part = (node: Node) => ({ kind: 'expression', wanted: 'length', node, source }) as const;
    return { kind: 'coordinates', x: part(x!), y: part(y) };
  },
);

function syntaxIssue(
  source: Scalar,
  fault: { readonly at: number; readonly message: string; readonly found: string; readonly expected: string },
) {
  const complaint: Complaint = {
    code: 'form.expression',
    message: `cannot read "${source.text.slice(0, 80)}": ${fault.message}`,
    found: fault.found,
    expected: fault.expected,
    place: placeWithin(source, fault.at),
  };
  return { code: 'custom' as const, message: fault.message, input: source, params: { complaint } };
}
