import { type Affine, compose, IDENTITY } from './affine.ts';
import { numberPattern } from './parse-path-data.ts';

/**
 * The map that an SVG `transform` attribute stands for; undefined when it cannot be read.
 * Source: SVG 1.1, chapter 7.6 (angles in degrees).
 */
export function parseTransform(text: string): Affine | undefined {
  const gap = /\s*,?\s*/y;
  const item = /(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^()]{0,400})\)/y;
  let result = IDENTITY;
  let at = 0;
  const end = text.trimEnd().length;
  while (at < end) {
    gap.lastIndex = at;
    gap.test(text);
    item.lastIndex = gap.lastIndex;
    const match = item.exec(text);
    if (match === null) return undefined;
    const numbers = readNumbers(match[2]!);
    const map = numbers === undefined ? undefined : mapOf(match[1]!, numbers);
    if (map === undefined) return undefined;
    result = compose(result, map);
    at = item.lastIndex;
  }
  return result;
}

/** Numbers parted by spaces or commas; undefined when anything else is among them. */
export function readNumbers(text: string): number[] | undefined {
  const pattern = numberPattern();
  const gap = /\s*,?\s*/y;
  const numbers: number[] = [];
  let at = 0;
  const end = text.trimEnd().length;
  while (at < end) {
    gap.lastIndex = at;
    gap.test(text);
    pattern.lastIndex = gap.lastIndex;
    const match = pattern.exec(text);
    if (match === null) return undefined;
    const value = Number(match[0]);
    if (!Number.isFinite(value)) return undefined;
    numbers.push(value);
    at = pattern.lastIndex;
  }
  return numbers;
}

function mapOf(name: string, n: readonly number[]): Affine | undefined {
  const [first, second = 0] = n;
  if (first === undefined) return undefined;
  const radians = (first * Math.PI) / 180;
  switch (name) {
    case 'matrix': {
      const [a, b, c, d, e, f] = n;
      if (n.length !== 6) return undefined;
      return { a: a!, b: b!, c: c!, d: d!, e: e!, f: f! };
    }
    case 'translate':
      return n.length > 2 ? undefined : { ...IDENTITY, e: first, f: second };
    case 'scale':
      return n.length > 2 ? undefined : { ...IDENTITY, a: first, d: n[1] ?? first };
    case 'skewX':
      return n.length > 1 ? undefined : { ...IDENTITY, c: Math.tan(radians) };
    case 'skewY':
      return n.length > 1 ? undefined : { ...IDENTITY, b: Math.tan(radians) };
    default: {
      if (n.length !== 1 && n.length !== 3) return undefined;
      const [c, s] = turnOf(first);
      const turn = { a: c, b: s, c: -s, d: c, e: 0, f: 0 };
      const [, x = 0, y = 0] = n;
      return compose({ ...IDENTITY, e: x, f: y }, compose(turn, { ...IDENTITY, e: -x, f: -y }));
    }
  }
}

/** Cosine and sine of degrees, exact at quarter turns. */
function turnOf(degrees: number): [number, number] {
  const quarters = degrees / 90;
  if (Number.isInteger(quarters)) {
    const q = ((quarters % 4) + 4) % 4;
    return [[1, 0, -1, 0][q]!, [0, 1, 0, -1][q]!];
  }
  const radians = (degrees * Math.PI) / 180;
  return [Math.cos(radians), Math.sin(radians)];
}
