import type { Vec } from '../../geometry/index.ts';
import type { SketchedPlane as Plane } from '../api.ts';
import { LARGEST_FIGURE } from '../source/limits.ts';
import { computeCall } from './compute-call.ts';
import type { Node, Span } from './node.ts';

/** What an expression comes to: mm, rad, mm², … ; yes or no; the option chosen; a point; a plane. */
export type Value = number | boolean | string | Vec | Plane;

/** What an expression is computed with. */
export interface ValueScope {
  readonly text: string;
  /** Value of a declared name; nothing when it could not be computed, which has then been reported. */
  readonly valueOf: (name: string) => Value | undefined;
  readonly report: (span: Span, code: string, message: string, expected?: string) => void;
}

/**
 * The value of an expression whose kinds have been checked; nothing once something impossible (a division by zero, the
 * root of a negative figure) has been reported. Takes time in proportion to the length of the text.
 */
export function compute(node: Node, scope: ValueScope): Value | undefined {
  switch (node.type) {
    case 'figure':
    case 'flag':
      return node.value;
    case 'name':
      return scope.valueOf(node.name);
    case 'coordinate': {
      const point = compute(node.of, scope) as Vec | undefined;
      return point?.[node.axis];
    }
    case 'minus': {
      const value = compute(node.of, scope) as number | undefined;
      // 0 − x, so that there is never a negative zero.
      return value === undefined ? undefined : 0 - value;
    }
    case 'not': {
      const value = compute(node.of, scope);
      return value === undefined ? undefined : !value;
    }
    case 'power': {
      const base = compute(node.base, scope) as number | undefined;
      return base === undefined ? undefined : finite(base ** node.exponent, node, scope);
    }
    case 'is': {
      const value = compute(node.of, scope);
      return value === undefined ? undefined : (value === node.option) !== node.negated;
    }
    case 'binary':
      return computeBinary(node, scope);
    case 'call':
      return computeCall(node, scope);
    default:
      return node satisfies never;
  }
}

/** The figure, unless it is not one or beyond what any base needs. */
export function finite(value: number, node: Node, scope: ValueScope): number | undefined {
  if (Math.abs(value) <= LARGEST_FIGURE) return value;
  const text = scope.text.slice(node.from, node.to);
  const what = Number.isNaN(value) ? 'comes to no figure' : 'comes to a figure too large to use';
  scope.report(node, 'form.figure', `${text} ${what}`, `a figure up to ${LARGEST_FIGURE}`);
  return undefined;
}

function computeBinary(node: Extract<Node, { type: 'binary' }>, scope: ValueScope): Value | undefined {
  const { operator } = node;
  const left = compute(node.left, scope);
  if (left === undefined) return undefined;
  if (operator === 'and' || operator === 'or') {
    return left === (operator === 'or') ? left : compute(node.right, scope);
  }
  const right = compute(node.right, scope);
  if (right === undefined) return undefined;
  if (operator === '==' || operator === '!=') return (left === right) === (operator === '==');
  const [a, b] = [left as number, right as number];
  switch (operator) {
    case '+':
      return finite(a + b, node, scope);
    case '-':
      return finite(a - b, node, scope);
    case '*':
      return finite(a * b, node, scope);
    case '/':
      if (b !== 0) return finite(a / b, node, scope);
      scope.report(
        node.right,
        'form.division',
        `${scope.text.slice(node.from, node.to)} divides by zero`,
        'a divisor that is not 0',
      );
      return undefined;
    case '<':
      return a < b;
    case '<=':
      return a <= b;
    case '>':
      return a > b;
    case '>=':
      return a >= b;
    default:
      return operator satisfies never;
  }
}
