import type { Vec } from '../../geometry/index.ts';
import { computeCall } from './compute-call.ts';
import type { Node } from './node.ts';
import { finite, type Value, type ValueScope } from './value-scope.ts';

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
      const point = scope.compute(node.of) as Vec | undefined;
      return point?.[node.axis];
    }
    case 'minus': {
      const value = scope.compute(node.of) as number | undefined;
      // 0 − x, so that there is never a negative zero.
      return value === undefined ? undefined : 0 - value;
    }
    case 'not': {
      const value = scope.compute(node.of);
      return value === undefined ? undefined : !value;
    }
    case 'power': {
      const base = scope.compute(node.base) as number | undefined;
      return base === undefined ? undefined : finite(base ** node.exponent, node, scope);
    }
    case 'is': {
      const value = scope.compute(node.of);
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

function computeBinary(node: Extract<Node, { type: 'binary' }>, scope: ValueScope): Value | undefined {
  const { operator } = node;
  const left = scope.compute(node.left);
  if (left === undefined) return undefined;
  if (operator === 'and' || operator === 'or') {
    return left === (operator === 'or') ? left : scope.compute(node.right);
  }
  const right = scope.compute(node.right);
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
