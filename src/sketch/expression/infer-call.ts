import { ANGLE, FLAG, type Kind, LENGTH, NUMBER, POINT, ZERO } from './kind.ts';
import { describe, expectKind, inferCommon, inferQuantity, type KindScope } from './kind-scope.ts';
import type { Node } from './node.ts';
import type { FunctionName } from './words.ts';

type Call = Extract<Node, { type: 'call' }>;

/** How many inputs each function takes: least, most. */
const COUNTS: Readonly<Record<FunctionName, readonly [number, number]>> = {
  if: [3, 3],
  sin: [1, 1],
  cos: [1, 1],
  tan: [1, 1],
  asin: [1, 1],
  acos: [1, 1],
  atan: [1, 1],
  atan2: [2, 2],
  sqrt: [1, 1],
  abs: [1, 1],
  hypot: [2, 8],
  min: [2, 8],
  max: [2, 8],
  clamp: [3, 3],
  round: [1, 2],
  floor: [1, 2],
  ceil: [1, 2],
  distance: [2, 2],
  direction: [2, 2],
  corner_angle: [3, 3],
  arc_length: [2, 2],
};

/** The kind of what a function gives, its inputs checked; nothing once something wrong has been reported. */
export function inferCall(node: Call, scope: KindScope): Kind | undefined {
  const name = node.name as FunctionName;
  const [least, most] = COUNTS[name];
  if (node.inputs.length < least || node.inputs.length > most) {
    const wanted = least === most ? `${least}` : `${least} to ${most}`;
    scope.report(
      node,
      'form.inputs',
      `${name} takes ${wanted} values, not ${node.inputs.length}`,
      `${wanted} values`,
    );
    return undefined;
  }
  const [first, second] = node.inputs as [Node, Node];
  switch (name) {
    case 'if': {
      const condition = expectKind(first, FLAG, scope);
      const kind = inferCommon(node.inputs.slice(1), scope, 'cannot be the two outcomes of one "if"');
      return condition && kind;
    }
    case 'sin':
    case 'cos':
    case 'tan':
      return expectAll(node.inputs, ANGLE, scope) && NUMBER;
    case 'asin':
    case 'acos':
    case 'atan':
      return expectAll(node.inputs, NUMBER, scope) && ANGLE;
    case 'atan2':
      return quantities(node.inputs, scope, 'cannot be the two sides of one angle') && ANGLE;
    case 'sqrt':
      return inferRoot(first, scope);
    case 'abs':
      return inferQuantity(first, scope);
    case 'hypot':
    case 'min':
    case 'max':
    case 'clamp':
      return quantities(node.inputs, scope, `cannot be given to one "${name}"`);
    case 'round':
    case 'floor':
    case 'ceil':
      if (second === undefined) return expectAll(node.inputs, NUMBER, scope);
      return quantities(node.inputs, scope, 'cannot be a figure and its step');
    case 'distance':
      return expectAll(node.inputs, POINT, scope) && LENGTH;
    case 'direction':
    case 'corner_angle':
      return expectAll(node.inputs, POINT, scope) && ANGLE;
    case 'arc_length': {
      const radius = expectKind(first, LENGTH, scope);
      return expectKind(second, ANGLE, scope) && radius;
    }
    default:
      return name satisfies never;
  }
}

function expectAll(inputs: readonly Node[], kind: Kind, scope: KindScope): Kind | undefined {
  const kinds = inputs.map((input) => expectKind(input, kind, scope));
  return kinds.includes(undefined) ? undefined : kind;
}

function quantities(inputs: readonly Node[], scope: KindScope, doing: string): Kind | undefined {
  return inferCommon(inputs, scope, doing, inferQuantity);
}

function inferRoot(input: Node, scope: KindScope): Kind | undefined {
  const kind = inferQuantity(input, scope);
  if (kind === undefined) return undefined;
  if (kind.type !== 'quantity') return ZERO;
  if (kind.length % 2 === 0 && kind.angle % 2 === 0) {
    return { type: 'quantity', length: kind.length / 2, angle: kind.angle / 2 };
  }
  const message = `${describe(input, kind, scope)}: a square root can be taken of a number or an area`;
  scope.report(input, 'form.kind', message, 'a number or an area');
  return undefined;
}
