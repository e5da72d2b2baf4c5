import { readFigure } from '../../measure/index.ts';
import type { Span } from './node.ts';

export type Token = Span &
  (
    | { readonly type: 'figure'; readonly value: number; readonly of: 'length' | 'angle' | 'number' }
    | { readonly type: 'word'; readonly word: string }
    | { readonly type: 'sign'; readonly word: string }
    | { readonly type: 'end'; readonly word: '' }
  );

/** Something wrong in the text of an expression. */
export interface SyntaxFault {
  readonly at: number;
  readonly message: string;
  readonly found: string;
  readonly expected: string;
}

const SIGN = /^(?:<=|>=|==|!=|[-+*/^<>(),.])/;

/** The tokens of an expression, the last one `end`; or the first character that none can start with. */
export function tokensOf(text: string): readonly Token[] | SyntaxFault {
  const tokens: Token[] = [];
  let at = 0;
  while (at < text.length) {
    if (/\s/.test(text[at]!)) {
      at += 1;
      continue;
    }
    const figure = readFigure(text, at);
    if (figure !== undefined) {
      if (figure.end === at) return faultAt(text, at, 'a figure has too many digits', 'at most 15 digits');
      tokens.push({ type: 'figure', value: figure.value, of: figure.of, from: at, to: figure.end });
      at = figure.end;
      if (/[a-z0-9_]/i.test(text[at] ?? '')) {
        return faultAt(
          text,
          at,
          'a figure runs into a word',
          'a unit (mm, cm, m, in, ft, deg, rad) or an operator',
        );
      }
      continue;
    }
    const rest = text.slice(at, at + 64);
    const word = /^[a-zA-Z_][a-zA-Z0-9_]*/.exec(rest)?.[0];
    const sign = word ?? SIGN.exec(rest)?.[0];
    if (sign === undefined) {
      return faultAt(text, at, 'an expression cannot contain this', 'a figure, a name or an operator');
    }
    tokens.push({ type: word === undefined ? 'sign' : 'word', word: sign, from: at, to: at + sign.length });
    at += sign.length;
  }
  tokens.push({ type: 'end', word: '', from: text.length, to: text.length });
  return tokens;
}

export function faultAt(text: string, at: number, message: string, expected: string): SyntaxFault {
  const rest = text.slice(at, at + 16);
  return { at, message, found: rest === '' ? 'the end' : `"${rest}"`, expected };
}
