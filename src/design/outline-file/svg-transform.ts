import type { Similarity } from '../../geometry/index.ts';

/** x ↦ a x + c y + e, y ↦ b x + d y + f: the six numbers of SVG's `matrix()`. */
export type Matrix = readonly [a: number, b: number, c: number, d: number, e: number, f: number];

/** `first` after `then`: what `then` makes of a point goes into `first`. */
export function multiply(first: Matrix, then: Matrix): Matrix {
  const [a, b, c, d, e, f] = first;
  const [a2, b2, c2, d2, e2, f2] = then;
  return [
    a * a2 + c * b2,
    b * a2 + d * b2,
    a * c2 + c * d2,
    b * c2 + d * d2,
    a * e2 + c * f2 + e,
    b * e2 + d * f2 + f,
  ];
}

const STEP = /\s*,?\s*(matrix|translate|scale|rotate|skewX|skewY)\s*\(([^)]*)\)\s*/y;

/** A `transform` attribute (SVG 1.1, section 7.6) as a matrix; undefined when it cannot be read. */
export function readTransform(text: string): Matrix | undefined {
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let at = 0;
  while (at < text.length) {
    STEP.lastIndex = at;
    const found = STEP.exec(text);
    if (!found) return text.slice(at).trim() === '' ? matrix : undefined;
    at = STEP.lastIndex;
    const numbers = found[2]!
      .trim()
      .split(/[\s,]+/)
      .map(Number);
    const step = numbers.every(Number.isFinite) ? matrixOf(found[1]!, numbers) : undefined;
    if (!step) return undefined;
    matrix = multiply(matrix, step);
  }
  return matrix;
}

function matrixOf(kind: string, [p = Number.NaN, q, r, s, t, u]: readonly number[]): Matrix | undefined {
  const radians = (p * Math.PI) / 180;
  switch (kind) {
    case 'matrix':
      return u === undefined ? undefined : [p, q!, r!, s!, t!, u];
    case 'translate':
      return [1, 0, 0, 1, p, q ?? 0];
    case 'scale':
      return [p, 0, 0, q ?? p, 0, 0];
    case 'rotate': {
      const turn: Matrix = [
        Math.cos(radians),
        Math.sin(radians),
        -Math.sin(radians),
        Math.cos(radians),
        0,
        0,
      ];
      if (q === undefined || r === undefined) return turn;
      return multiply(multiply([1, 0, 0, 1, q, r], turn), [1, 0, 0, 1, -q, -r]);
    }
    case 'skewX':
      return [1, 0, Math.tan(radians), 1, 0, 0];
    default:
      return [1, Math.tan(radians), 0, 1, 0, 0];
  }
}

/** How far, as a share, the two directions of a drawing may be stretched apart and still count as alike. */
const STRETCH_TOLERANCE = 1e-6;

/** The matrix as a similarity, which keeps arcs arcs; undefined when it stretches or shears. */
export function similarityOf([a, b, c, d, e, f]: Matrix): Similarity | undefined {
  const scale = Math.hypot(a, b);
  const mirrored = a * d - b * c < 0;
  const side = mirrored ? -1 : 1;
  const off = Math.hypot(c + side * b, d - side * a);
  if (!(scale > 0) || off > STRETCH_TOLERANCE * scale) return undefined;
  // Mirrored means x ↦ −x before the turn, so that the image of +x is turned half round.
  return { turn: mirrored ? Math.atan2(-b, -a) : Math.atan2(b, a), shift: { x: e, y: f }, scale, mirrored };
}
