import { inferCall } from './infer-call.ts';
import { ANGLE, FLAG, type Kind, LENGTH, NUMBER, nameOfKind, ZERO } from './kind.ts';
import { describe, expectKind, inferCommon, inferQuantity, type KindScope } from './kind-scope.ts';
import type { Node } from './node.ts';

type Quantity = Extract<Kind, { type: 'quantity' }>;

/** The kind of an expression, by the kinds of its parts; nothing once something wrong has been reported. */
export function inferKind(node: Node, scope: KindScope): Kind | undefined {
  switch (node.type) {
    case 'figure':
      if (node.of !== 'number') return node.of === 'length' ? LENGTH : ANGLE;
      return node.value === 0 ? ZERO : NUMBER;
    case 'flag':
      return FLAG;
    case 'name':
      return scope.kindOf(node.name, node);
    case 'coordinate':
      return expectKind(node.of, { type: 'point' }, scope) === undefined ? undefined : LENGTH;
    case 'minus':
      return inferQuantity(node.of, scope);
    case 'not':
      return expectKind(node.of, FLAG, scope);
    case 'power':
      return inferPower(node, scope);
    case 'is':
      return inferIs(node, scope);
    case 'binary':
      return inferBinary(node, scope);
    case 'call':
      return inferCall(node, scope);
    default:
      return node satisfies never;
  }
}

function inferPower(node: Extract<Node, { type: 'power' }>, scope: KindScope): Kind | undefined {
  const base = inferQuantity(node.base, scope);
  if (base?.type !== 'quantity') return base;
  return { type: 'quantity', length: base.length * node.exponent, angle: base.angle * node.exponent };
}

function inferIs(node: Extract<Node, { type: 'is' }>, scope: KindScope): Kind | undefined {
  const kind = scope.infer(node.of);
  if (kind === undefined) return undefined;
  if (kind.type !== 'choice') {
    scope.report(
      node.of,
      'form.kind',
      `${describe(node.of, kind, scope)}: only a choice can be asked with "is"`,
      'a choice',
    );
    return undefined;
  }
  if (kind.options.includes(node.option)) return FLAG;
  const options = kind.options.join(', ');
  scope.report(
    node,
    'form.option',
    `"${node.option}" is not among its options: ${options}`,
    `one of ${options}`,
  );
  return undefined;
}

function inferBinary(node: Extract<Node, { type: 'binary' }>, scope: KindScope): Kind | undefined {
  const { operator, left, right } = node;
  switch (operator) {
    case 'and':
    case 'or': {
      const a = expectKind(left, FLAG, scope);
      const b = expectKind(right, FLAG, scope);
      return a && b;
    }
    case '+':
    case '-': {
      const doing = operator === '+' ? 'cannot be added' : 'cannot be subtracted';
      return ofQuantities(node, inferCommon([left, right], scope, doing), scope);
    }
    case '<':
    case '<=':
    case '>':
    case '>=': {
      const kind = ofQuantities(node, inferCommon([left, right], scope, 'cannot be compared'), scope);
      return kind && FLAG;
    }
    case '==':
    case '!=': {
      const kind = inferCommon([left, right], scope, 'cannot be compared');
      if (kind === undefined || kind.type === 'flag') return kind && FLAG;
      return ofQuantities(node, kind, scope) && FLAG;
    }
    case '*':
    case '/': {
      const a = inferQuantity(left, scope);
      const b = inferQuantity(right, scope);
      if (a === undefined || b === undefined) return undefined;
      return productOf(a, b, operator === '*' ? 1 : -1);
    }
    default:
      return operator satisfies never;
  }
}

function ofQuantities(node: Node, kind: Kind | undefined, scope: KindScope): Kind | undefined {
  if (kind === undefined || kind.type === 'quantity' || kind.type === 'zero') return kind;
  const message = `${nameOfKind(kind)} cannot stand on either side of this: figures are needed`;
  scope.report(node, 'form.kind', message, 'figures');
  return undefined;
}

/** A bare 0 times or divided by anything is a bare 0; divided by it the other way round is of the other's kind. */
function productOf(a: Kind, b: Kind, sign: 1 | -1): Kind {
  if (a.type === 'zero' || b.type === 'zero') return a.type === 'zero' ? ZERO : sign === 1 ? ZERO : a;
  const [p, q] = [a as Quantity, b as Quantity];
  return { type: 'quantity', length: p.length + sign * q.length, angle: p.angle + sign * q.angle };
}
