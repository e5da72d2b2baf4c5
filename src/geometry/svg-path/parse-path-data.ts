import type { Problem, Result } from '../../core/index.ts';
import { fail, ok } from '../../core/index.ts';
import type { Vec } from '../api.ts';
import { cubicOfQuadratic } from '../fairing/cubic.ts';
import { arcFromEndpoints, type PathSegment, type Subpath } from './path-segments.ts';

/** How many numbers each command takes; m and z are lower-cased. */
const ARGUMENTS: Readonly<Record<string, number>> = {
  m: 2,
  l: 2,
  h: 1,
  v: 1,
  c: 6,
  s: 4,
  q: 4,
  t: 2,
  a: 7,
  z: 0,
};

/**
 * What SVG path data draws: every command, absolute and relative, by the grammar of the standard. Data that it does not allow are
 * refused with the place (a column counted from 1) rather than drawn up to there.
 * Source: SVG 2 (W3C Candidate Recommendation), chapter 9.3, and SVG 1.1 for the arcs.
 */
export function parsePathData(d: string): Result<Subpath[]> {
  const subpaths: Subpath[] = [];
  let segments: PathSegment[] = [];
  let hasMoved = false;
  let start: Vec = { x: 0, y: 0 };
  let pen = start;
  // Control point that a smooth command mirrors, and the kind of curve it belongs to.
  let control: { readonly at: Vec; readonly of: 'c' | 'q' } | undefined;
  let at = 0;

  const finish = (closed: boolean): void => {
    if (segments.length > 0) subpaths.push({ segments, closed });
    segments = [];
  };
  const skip = (pattern: RegExp): void => {
    pattern.lastIndex = at;
    if (pattern.test(d)) at = pattern.lastIndex;
  };
  const fault = (expected: string): { ok: false; problems: readonly Problem[] } =>
    fail({
      code: 'svg.path',
      message: `The path data cannot be read at character ${at + 1}: ${expected} expected.`,
      column: at + 1,
      found: at < d.length ? d.slice(at, at + 12) : 'the end',
      expected,
    });

  const patterns = {
    space: /[ \t\n\f\r]*/y,
    comma: /[ \t\n\f\r]*,?[ \t\n\f\r]*/y,
    flag: /[01]/y,
    number: numberPattern(),
  };
  skip(patterns.space);
  let command = '';
  while (at < d.length) {
    const letter = d[at]!;
    const isLetter = ARGUMENTS[letter.toLowerCase()] !== undefined;
    if (isLetter) {
      command = letter;
      at++;
      skip(patterns.space);
    } else if (command === '' || command === 'z' || command === 'Z') return fault('a command');
    const kind = command.toLowerCase();
    if (!hasMoved && kind !== 'm') return fault('a move (M)');

    const numbers: number[] = [];
    const count = ARGUMENTS[kind]!;
    for (let i = 0; i < count; i++) {
      if (i > 0) skip(patterns.comma);
      const pattern = kind === 'a' && (i === 3 || i === 4) ? patterns.flag : patterns.number;
      pattern.lastIndex = at;
      const match = pattern.exec(d);
      if (match === null) return fault(pattern === patterns.flag ? 'a flag, 0 or 1' : 'a number');
      const value = Number(match[0]);
      if (!(Math.abs(value) <= LARGEST)) return fault(`a number up to ${LARGEST}`);
      numbers.push(value);
      at = pattern.lastIndex;
    }

    const isRelative = command === kind;
    const origin = isRelative ? pen : { x: 0, y: 0 };
    const point = (i: number): Vec => ({ x: origin.x + numbers[i]!, y: origin.y + numbers[i + 1]! });
    const from = pen;
    let mirrored: typeof control;
    switch (kind) {
      case 'm':
        finish(false);
        pen = point(0);
        start = pen;
        hasMoved = true;
        // Further pairs after a move are lines.
        command = isRelative ? 'l' : 'L';
        break;
      case 'z':
        if (pen.x !== start.x || pen.y !== start.y) segments.push({ kind: 'line', from, to: start });
        finish(true);
        pen = start;
        break;
      case 'l':
        pen = point(0);
        segments.push({ kind: 'line', from, to: pen });
        break;
      case 'h':
        pen = { x: origin.x + numbers[0]!, y: pen.y };
        segments.push({ kind: 'line', from, to: pen });
        break;
      case 'v':
        pen = { x: pen.x, y: origin.y + numbers[0]! };
        segments.push({ kind: 'line', from, to: pen });
        break;
      case 'c':
      case 's': {
        const isSmooth = kind === 's';
        const p1 = isSmooth ? mirror(control, 'c', from) : point(0);
        const p2 = point(isSmooth ? 0 : 2);
        pen = point(isSmooth ? 2 : 4);
        segments.push({ kind: 'cubic', curve: { p0: from, p1, p2, p3: pen } });
        mirrored = { at: p2, of: 'c' };
        break;
      }
      case 'q':
      case 't': {
        const isSmooth = kind === 't';
        const p1 = isSmooth ? mirror(control, 'q', from) : point(0);
        pen = point(isSmooth ? 0 : 2);
        segments.push({ kind: 'cubic', curve: cubicOfQuadratic(from, p1, pen) });
        mirrored = { at: p1, of: 'q' };
        break;
      }
      default: {
        pen = point(5);
        const radii = { x: numbers[0]!, y: numbers[1]! };
        const rotation = (numbers[2]! * Math.PI) / 180;
        const arc = arcFromEndpoints(from, pen, radii, rotation, numbers[3] === 1, numbers[4] === 1);
        if (arc !== undefined) segments.push(arc);
      }
    }
    control = mirrored;
    // A comma may part two sets of numbers of one command, but not stand before a command or at the end.
    skip(patterns.space);
    if (count > 0 && d[at] === ',') {
      at++;
      skip(patterns.space);
      if (at >= d.length || ARGUMENTS[d[at]!.toLowerCase()] !== undefined) return fault('a number');
    }
  }
  finish(false);
  return ok(subpaths);
}

/** No drawing of a part is this large in any unit; beyond it rounding would show. */
const LARGEST = 1e9;

export function numberPattern(): RegExp {
  return /[+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?/y;
}

function mirror(control: { readonly at: Vec; readonly of: string } | undefined, of: string, pen: Vec): Vec {
  if (control?.of !== of) return pen;
  return { x: 2 * pen.x - control.at.x, y: 2 * pen.y - control.at.y };
}
