import { FIGURE_UNITS } from '../../measure/index.ts';

/** Functions of the expression language. Their kinds are in infer-call.ts, their values in compute-call.ts. */
export const FUNCTIONS = [
  'if',
  'sin',
  'cos',
  'tan',
  'asin',
  'acos',
  'atan',
  'atan2',
  'sqrt',
  'abs',
  'hypot',
  'min',
  'max',
  'clamp',
  'round',
  'floor',
  'ceil',
  'distance',
  'direction',
  'corner_angle',
  'arc_length',
] as const;

export type FunctionName = (typeof FUNCTIONS)[number];

export function isFunction(name: string): name is FunctionName {
  return (FUNCTIONS as readonly string[]).includes(name);
}

const WORDS: ReadonlySet<string> = new Set([...FIGURE_UNITS, 'and', 'or', 'not', 'is', 'yes', 'no', 'pi']);

/**
 * Whether a word has a meaning of its own in expressions, so that nothing can be called by it. Functions are told by
 * their bracket: a plane may be called `floor`.
 */
export function isReserved(name: string): boolean {
  return WORDS.has(name);
}
