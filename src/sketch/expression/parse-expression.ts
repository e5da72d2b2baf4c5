/**
 * Expressions by precedence climbing. Each operator has a strength; an operand ends where a weaker operator follows.
 * Nesting is limited, so that the recursion is. Every node keeps its span: a message can point at either side of a
 * sum. Nothing is looked up here: what a name means, and whether units fit, is settled in infer-kind.ts.
 */
import { MOST_EXPRESSION_CHARACTERS, MOST_EXPRESSION_DEPTH } from '../source/limits.ts';
import type { Node, Operator } from './node.ts';
import { faultAt, type SyntaxFault, type Token, tokensOf } from './tokens.ts';
import { isFunction, isReserved } from './words.ts';

export type Parsed =
  | { readonly ok: true; readonly nodes: readonly Node[] }
  | { readonly ok: false; readonly fault: SyntaxFault };

const STRENGTH: Readonly<Record<string, number>> = {
  or: 1,
  and: 2,
  '<': 4,
  '<=': 4,
  '>': 4,
  '>=': 4,
  '==': 4,
  '!=': 4,
  is: 4,
  '+': 5,
  '-': 5,
  '*': 6,
  '/': 6,
};
const STRENGTH_OF_NOT = 3;
const STRENGTH_OF_MINUS = 6;

interface Reader {
  readonly text: string;
  readonly tokens: readonly Token[];
  next: number;
  depth: number;
}

/** Thrown and caught in this file only: the way out of a recursion on the first fault. */
class Stop {
  readonly fault: SyntaxFault;
  constructor(fault: SyntaxFault) {
    this.fault = fault;
  }
}

/** One expression, or two separated by a comma (coordinates) when `most` is 2. */
export function parseExpressions(text: string, most: 1 | 2): Parsed {
  if (text.length > MOST_EXPRESSION_CHARACTERS) {
    const message = `an expression has at most ${MOST_EXPRESSION_CHARACTERS} characters`;
    return { ok: false, fault: faultAt(text, MOST_EXPRESSION_CHARACTERS, message, 'a shorter expression') };
  }
  const tokens = tokensOf(text);
  if ('message' in tokens) return { ok: false, fault: tokens };
  const reader: Reader = { text, tokens, next: 0, depth: 0 };
  try {
    const nodes = [readOperand(reader, 0)];
    if (most === 2 && peek(reader).word === ',') {
      reader.next += 1;
      nodes.push(readOperand(reader, 0));
    }
    if (peek(reader).type !== 'end')
      stop(reader, 'an operator or the end should stand here', 'an operator or the end');
    return { ok: true, nodes };
  } catch (thrown) {
    if (thrown instanceof Stop) return { ok: false, fault: thrown.fault };
    throw thrown;
  }
}

function readOperand(reader: Reader, weakest: number): Node {
  reader.depth += 1;
  if (reader.depth > MOST_EXPRESSION_DEPTH) {
    stop(
      reader,
      `an expression nests at most ${MOST_EXPRESSION_DEPTH} deep`,
      'a value of its own for part of it',
    );
  }
  let left = readPrefix(reader);
  for (;;) {
    const { word, type } = peek(reader);
    const strength =
      type === 'figure' ? undefined : Object.hasOwn(STRENGTH, word) ? STRENGTH[word] : undefined;
    if (strength === undefined || strength <= weakest) break;
    reader.next += 1;
    if (word === 'is') {
      left = readIs(reader, left);
      continue;
    }
    if (strength === 4 && isComparison(left)) {
      reader.next -= 1;
      stop(reader, 'comparisons cannot be chained', 'and between two comparisons');
    }
    const right = readOperand(reader, strength);
    left = { type: 'binary', operator: word as Operator, left, right, from: left.from, to: right.to };
  }
  reader.depth -= 1;
  return left;
}

function isComparison(node: Node): boolean {
  return node.type === 'binary' && STRENGTH[node.operator] === 4;
}

function readPrefix(reader: Reader): Node {
  const { word, from, type } = peek(reader);
  if (type !== 'figure' && (word === '-' || word === 'not')) {
    reader.next += 1;
    const of = readOperand(reader, word === '-' ? STRENGTH_OF_MINUS : STRENGTH_OF_NOT);
    return { type: word === '-' ? 'minus' : 'not', of, from, to: of.to };
  }
  let node = readAtom(reader);
  while (peek(reader).word === '.') {
    reader.next += 1;
    const axis = peek(reader);
    if (axis.word !== 'x' && axis.word !== 'y') stop(reader, 'a point has x and y', 'x or y');
    reader.next += 1;
    node = { type: 'coordinate', of: node, axis: axis.word as 'x' | 'y', from: node.from, to: axis.to };
  }
  if (peek(reader).word !== '^') return node;
  reader.next += 1;
  const exponent = peek(reader);
  const whole = exponent.type === 'figure' && exponent.of === 'number' && Number.isInteger(exponent.value);
  if (!whole || exponent.value < 1 || exponent.value > 6) {
    return stop(reader, 'a power is a whole figure from 1 to 6', 'a figure such as 2');
  }
  reader.next += 1;
  return { type: 'power', base: node, exponent: exponent.value, from: node.from, to: exponent.to };
}

function readAtom(reader: Reader): Node {
  const token = peek(reader);
  const { from, to } = token;
  if (token.type === 'figure') {
    reader.next += 1;
    return { type: 'figure', value: token.value, of: token.of, from, to };
  }
  if (token.word === '(') {
    reader.next += 1;
    const inner = readOperand(reader, 0);
    const end = expect(reader, ')');
    return { ...inner, from, to: end };
  }
  if (token.type !== 'word') return stop(reader, 'a value is missing', 'a figure, a name or a bracket');
  reader.next += 1;
  if (token.word === 'yes' || token.word === 'no')
    return { type: 'flag', value: token.word === 'yes', from, to };
  if (token.word === 'pi') return { type: 'figure', value: Math.PI, of: 'number', from, to };
  if (isFunction(token.word) && peek(reader).word === '(') return readCall(reader, token.word, from);
  reader.next -= 1;
  if (isReserved(token.word))
    return stop(reader, `"${token.word}" cannot stand here`, 'a figure, a name or a bracket');
  if (!/^[a-z][a-z0-9_]*$/.test(token.word)) {
    return stop(
      reader,
      `"${token.word.slice(0, 40)}" cannot be a name`,
      'small letters, digits and _, a letter first',
    );
  }
  reader.next += 1;
  if (peek(reader).word === '(') {
    reader.next -= 1;
    return stop(reader, `there is no function "${token.word}"`, 'a function of the grammar');
  }
  return { type: 'name', name: token.word, from, to };
}

function readCall(reader: Reader, name: string, from: number): Node {
  expect(reader, '(');
  const inputs: Node[] = [];
  if (peek(reader).word !== ')') {
    inputs.push(readOperand(reader, 0));
    while (peek(reader).word === ',') {
      reader.next += 1;
      inputs.push(readOperand(reader, 0));
    }
  }
  return { type: 'call', name, inputs, from, to: expect(reader, ')') };
}

function readIs(reader: Reader, of: Node): Node {
  const negated = peek(reader).word === 'not';
  if (negated) reader.next += 1;
  const option = peek(reader);
  if (option.type !== 'word') return stop(reader, 'an option is missing after "is"', 'the name of an option');
  reader.next += 1;
  return { type: 'is', of, option: option.word, negated, from: of.from, to: option.to };
}

function peek(reader: Reader): Token & { readonly word: string } {
  const token = reader.tokens[reader.next]!;
  return token.type === 'figure' ? { ...token, word: '' } : token;
}

function expect(reader: Reader, word: string): number {
  const token = peek(reader);
  if (token.word !== word) stop(reader, `"${word}" is missing`, `"${word}"`);
  reader.next += 1;
  return token.to;
}

function stop(reader: Reader, message: string, expected: string): never {
  throw new Stop(faultAt(reader.text, peek(reader).from, message, expected));
}
