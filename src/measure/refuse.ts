import type { Problem } from '../core/index.ts';
import type { Refusal } from './read-number.ts';

/** Longer than any length or angle that a person types; keeps hostile input cheap. */
export const LONGEST_TEXT = 64;

const NOUNS = {
  length: 'a length',
  angle: 'an angle',
  ratio: 'a ratio',
  count: 'a count',
  temperature: 'a temperature',
} as const;

/** The problem of a text that was refused at one place, with what stands there. */
export function refusalToProblem(what: keyof typeof NOUNS, text: string, refusal: Refusal): Problem {
  const rest = text.slice(refusal.at, refusal.at + 12);
  const found = rest === '' ? 'the end of the text' : `"${rest}"`;
  return {
    code: `${what}.${refusal.code}`,
    message: `cannot read "${text.slice(0, LONGEST_TEXT)}" as ${NOUNS[what]}: ${refusal.message}`,
    column: [...text.slice(0, refusal.at)].length + 1,
    found,
    expected: refusal.expected,
  };
}

/** The refusal of a text that is empty or longer than anyone types. */
export function refuseBySize(text: string, expected: string): Refusal | undefined {
  if (text.trim() === '') return { at: 0, code: 'empty', message: 'nothing is typed', expected };
  if (text.length <= LONGEST_TEXT) return undefined;
  const message = `it is longer than ${LONGEST_TEXT} characters`;
  return { at: LONGEST_TEXT, code: 'too-long', message, expected };
}

/** −1, or 1 when there is no sign, and where the number starts. */
export function signAt(text: string, position: number): { readonly sign: 1 | -1; readonly end: number } {
  const character = text[position] ?? '';
  if (/[-−‐‑–]/.test(character)) return { sign: -1, end: position + 1 };
  return { sign: 1, end: character === '+' ? position + 1 : position };
}
