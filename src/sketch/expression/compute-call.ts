import { angleOf, distance, subtract, type Vec } from '../../geometry/index.ts';

import type { Node } from './node.ts';
import { finite, type Value, type ValueScope } from './value-scope.ts';
import type { FunctionName } from './words.ts';

type Call = Extract<Node, { type: 'call' }>;

/** What a function gives; nothing once something impossible has been reported. See README.md for what each does. */
export function computeCall(node: Call, scope: ValueScope): Value | undefined {
  const name = node.name as FunctionName;
  if (name === 'if') {
    const condition = scope.compute(node.inputs[0]!);
    return condition === undefined ? undefined : scope.compute(node.inputs[condition ? 1 : 2]!);
  }
  const inputs: Value[] = [];
  for (const input of node.inputs) {
    const value = scope.compute(input);
    if (value === undefined) return undefined;
    inputs.push(value);
  }
  if (name === 'distance' || name === 'direction' || name === 'corner_angle') {
    return ofPoints(name, inputs as readonly Vec[], node, scope);
  }
  const value = ofFigures(name, inputs as readonly number[], node, scope);
  return value === undefined ? undefined : finite(value, node, scope);
}

function ofFigures(
  name: Exclude<FunctionName, 'if' | 'distance' | 'direction' | 'corner_angle'>,
  inputs: readonly number[],
  node: Call,
  scope: ValueScope,
): number | undefined {
  const [a, b, c] = inputs as [number, number, number];
  const refuse = (message: string, expected: string): undefined => {
    scope.report(node, 'form.figure', `${scope.text.slice(node.from, node.to)}: ${message}`, expected);
    return undefined;
  };
  switch (name) {
    case 'sin':
      return Math.sin(a);
    case 'cos':
      return Math.cos(a);
    case 'tan':
      return Math.tan(a);
    case 'asin':
    case 'acos':
      if (Math.abs(a) > 1)
        return refuse(
          `no angle has ${show(a)} as its ${name === 'asin' ? 'sine' : 'cosine'}`,
          'from -1 to 1',
        );
      return name === 'asin' ? Math.asin(a) : Math.acos(a);
    case 'atan':
      return Math.atan(a);
    case 'atan2':
      return Math.atan2(a, b);
    case 'sqrt':
      return a < 0 ? refuse(`${show(a)} has no square root`, '0 or more') : Math.sqrt(a);
    case 'abs':
      return Math.abs(a);
    case 'hypot':
      return Math.hypot(...inputs);
    case 'min':
      return Math.min(...inputs);
    case 'max':
      return Math.max(...inputs);
    case 'clamp':
      if (b > c)
        return refuse(`the least, ${show(b)}, is more than the most, ${show(c)}`, 'least up to most');
      return Math.min(Math.max(a, b), c);
    case 'round':
    case 'floor':
    case 'ceil':
      if (b !== undefined && b <= 0) return refuse('the step must be more than 0', 'a step above 0');
      return scope.stepless ? a : Math[name](a / (b ?? 1)) * (b ?? 1);
    case 'arc_length':
      return a * b;
    default:
      return name satisfies never;
  }
}

function ofPoints(
  name: 'distance' | 'direction' | 'corner_angle',
  [p, q, r]: readonly Vec[],
  node: Call,
  scope: ValueScope,
): number | undefined {
  if (name === 'distance') return distance(p!, q!);
  const arms = name === 'direction' ? [subtract(q!, p!)] : [subtract(p!, q!), subtract(r!, q!)];
  if (arms.some((arm) => arm.x === 0 && arm.y === 0)) {
    const message = `${scope.text.slice(node.from, node.to)}: two of the points are the same place`;
    scope.report(node, 'form.figure', message, 'points apart from each other');
    return undefined;
  }
  if (name === 'direction') return angleOf(arms[0]!);
  const turn = Math.abs(angleOf(arms[0]!) - angleOf(arms[1]!));
  return Math.min(turn, 2 * Math.PI - turn);
}

function show(value: number): string {
  return `${Number(value.toPrecision(6))}`;
}
