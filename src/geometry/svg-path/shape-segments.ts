import { fail, ok, type Result } from '../../core/index.ts';
import type { Vec } from '../api.ts';
import { parsePathData } from './parse-path-data.ts';
import { readNumbers } from './parse-transform.ts';
import { type EllipseArc, type PathSegment, type Subpath, wholeEllipse } from './path-segments.ts';
import type { XmlElement } from './xml-elements.ts';

/** Names of the elements that draw an outline. */
export const SHAPES: ReadonlySet<string> = new Set([
  'path',
  'rect',
  'circle',
  'ellipse',
  'polygon',
  'polyline',
  'line',
]);

/** User units to the inch at which other units are read (CSS: 96). */
const PER_INCH = 96;
const UNITS: ReadonlyMap<string, number> = new Map([
  ['', 1],
  ['px', 1],
  ['in', PER_INCH],
  ['mm', PER_INCH / 25.4],
  ['cm', PER_INCH / 2.54],
  ['q', PER_INCH / 101.6],
  ['pt', PER_INCH / 72],
  ['pc', PER_INCH / 6],
]);

/** A length in user units (96 to the inch); undefined when it cannot be read or is a percentage. */
export function readSvgLength(text: string): number | undefined {
  const match = /^([+-]?(?:\d+\.?\d*|\.\d+)(?:[eE][+-]?\d+)?)\s*([a-zA-Z]*)$/.exec(text.trim());
  const unit = UNITS.get(match?.[2]?.toLowerCase() ?? 'none');
  const value = Number(match?.[1]) * (unit ?? Number.NaN);
  return Number.isFinite(value) ? value : undefined;
}

/** What a basic shape or path draws, in user units. Source: SVG 1.1, chapters 8 and 9. */
export function shapeSegments(element: XmlElement): Result<Subpath[]> {
  const bad = (name: string): Result<never> =>
    fail({
      code: 'svg.attribute',
      message: `Line ${element.line}: ${name}="${element.attributes.get(name)?.slice(0, 40) ?? ''}" of <${element.name}> cannot be read.`,
      line: element.line,
      path: `${element.name}.${name}`,
    });
  const lengths: number[] = [];
  for (const name of LENGTHS[element.name] ?? []) {
    const text = element.attributes.get(name);
    const value = text === undefined || text === 'auto' ? 0 : readSvgLength(text);
    if (value === undefined) return bad(name);
    lengths.push(value);
  }
  const [a = 0, b = 0, c = 0, d = 0] = lengths;
  switch (element.name) {
    case 'path': {
      const parsed = parsePathData(element.attributes.get('d') ?? '');
      if (parsed.ok) return parsed;
      const problems = parsed.problems.map((problem) => ({
        ...problem,
        message: `Line ${element.line}: ${problem.message}`,
        line: element.line,
        path: 'path.d',
      }));
      return fail(...problems);
    }
    case 'circle':
      return c > 0 ? closedLoop([wholeEllipse({ x: a, y: b }, c, c)]) : ok([]);
    case 'ellipse': {
      const rx = element.attributes.has('rx') ? c : d;
      const ry = element.attributes.has('ry') ? d : c;
      return rx > 0 && ry > 0 ? closedLoop([wholeEllipse({ x: a, y: b }, rx, ry)]) : ok([]);
    }
    case 'rect': {
      if (!(c > 0 && d > 0)) return ok([]);
      const [, , , , rx = 0, ry = 0] = lengths;
      const roundX = element.attributes.has('rx') ? rx : ry;
      const roundY = element.attributes.has('ry') ? ry : rx;
      return closedLoop(roundedRectangle(a, b, c, d, Math.min(roundX, c / 2), Math.min(roundY, d / 2)));
    }
    case 'line':
      return ok([
        {
          segments: linesThrough([
            { x: a, y: b },
            { x: c, y: d },
          ]),
          closed: false,
        },
      ]);
    default: {
      const numbers = readNumbers(element.attributes.get('points') ?? '');
      if (numbers === undefined || numbers.length % 2 === 1) return bad('points');
      const points = Array.from({ length: numbers.length / 2 }, (_, i) => ({
        x: numbers[2 * i]!,
        y: numbers[2 * i + 1]!,
      }));
      const closed = element.name === 'polygon';
      return ok([{ segments: linesThrough(closed ? [...points, ...points.slice(0, 1)] : points), closed }]);
    }
  }
}

const LENGTHS: Readonly<Record<string, readonly string[]>> = {
  circle: ['cx', 'cy', 'r'],
  ellipse: ['cx', 'cy', 'rx', 'ry'],
  rect: ['x', 'y', 'width', 'height', 'rx', 'ry'],
  line: ['x1', 'y1', 'x2', 'y2'],
};

function closedLoop(segments: readonly PathSegment[]): Result<Subpath[]> {
  return ok([{ segments, closed: true }]);
}

function linesThrough(points: readonly Vec[]): PathSegment[] {
  return points.slice(1).map((to, i): PathSegment => ({ kind: 'line', from: points[i]!, to }));
}

function roundedRectangle(x: number, y: number, w: number, h: number, rx: number, ry: number): PathSegment[] {
  const isRound = rx > 0 && ry > 0;
  const [dx, dy] = isRound ? [rx, ry] : [0, 0];
  // Corner by corner, with the direction to the side before and the side after.
  const corners = [
    { x: x + w, y, start: -1 },
    { x: x + w, y: y + h, start: 0 },
    { x, y: y + h, start: 1 },
    { x, y, start: 2 },
  ];
  const rounds = corners.map((corner): EllipseArc => {
    const centre = { x: corner.x === x ? x + dx : corner.x - dx, y: corner.y === y ? y + dy : corner.y - dy };
    const across = corner.start % 2 === 0;
    const sideX = { x: corner.x, y: centre.y };
    const sideY = { x: centre.x, y: corner.y };
    const [from, to] = across ? [sideX, sideY] : [sideY, sideX];
    return {
      kind: 'ellipse',
      from,
      to,
      centre,
      u: { x: dx, y: 0 },
      v: { x: 0, y: dy },
      start: (corner.start * Math.PI) / 2,
      sweep: Math.PI / 2,
    };
  });
  return rounds.flatMap((round, i): PathSegment[] => {
    const side: PathSegment = { kind: 'line', from: rounds[(i + 3) % 4]!.to, to: round.from };
    return isRound ? [side, round] : [side];
  });
}
