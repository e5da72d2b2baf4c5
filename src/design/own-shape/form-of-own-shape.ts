import { fail, ok, type Result } from '../../core/index.ts';
import {
  type Box,
  boundsOfEdges,
  centroidOfRegions,
  edgesOfLoop,
  locate,
  type Outline,
  pointAt,
  type Region,
  reverseEdge,
  type Stroke,
  type StrokeLoop,
  type Vec,
} from '../../geometry/index.ts';
import { RAD_PER_DEGREE } from '../../measure/index.ts';
import { type Form, readForm } from '../../sketch/index.ts';
import type { OwnShape } from './api.ts';
import { checkOwnShape } from './check-own-shape.ts';

/** A form and its text, as a design keeps it. */
export interface WrittenForm {
  readonly form: Form;
  readonly text: string;
}

/**
 * The form of a shape drawn by hand, to be used as any form: its points lie at shares of a width and a length, so that it can be made
 * larger, narrower or longer; at its defaults it is the shape as drawn, within 0.001 mm, its lower left corner at the origin. Problems: those of
 * `checkOwnShape`, and of the form itself (an opening that lies outside, say).
 */
export function formOfOwnShape(shape: OwnShape): Result<WrittenForm> {
  const problems = checkOwnShape(shape);
  if (problems.length > 0) return fail(...problems);
  const text = writeForm(shape);
  const form = readForm(text, 'own shape');
  return form.ok ? ok({ form: form.value, text }) : form;
}

function writeForm(shape: OwnShape): string {
  const { title, loops, thickness, pieces } = shape;
  const [outer, ...openings] = loops as readonly [StrokeLoop, ...StrokeLoop[]];
  const box = boundsOfEdges(edgesOfLoop(outer));
  const [width, length] = [box.maxX - box.minX, box.maxY - box.minY];
  const place = placeIn(box);
  const points: string[] = [];
  const named = (p: Vec): string => {
    points.push(place(p));
    return `p${points.length}`;
  };
  const outlines = [outer, ...openings].flatMap((loop, at) =>
    linesOfLoop(loop, at === 0 ? 'shape' : `opening_${at}`, named),
  );
  const holes = openings.map((loop, at) => ({
    name: `opening_${at + 1}`,
    plunge: named(insideOf(loop)),
    at,
  }));
  const degrees = (rad: number): string => `${plain(rad / RAD_PER_DEGREE, 6)} deg`;
  const size = (label: string, mm: number, help: string): string =>
    `{ label: ${label}, kind: length, default: ${plain(mm, 3)} mm, least: ${plain(mm / 4, 3)} mm, most: ${plain(mm * 4, 3)} mm, help: ${help} }`;
  return `${[
    `form: ${nameOf(title)}`,
    'grammar: 3',
    'version: 1',
    `title: ${quoted(title)}`,
    'about: A shape drawn by hand.',
    'parameters:',
    `  width: ${size('Width', width, 'From side to side; the shape is drawn out with it.')}`,
    `  length: ${size('Length', length, 'From end to end; the shape is drawn out with it.')}`,
    `  stock: { label: Stock thickness, kind: length, default: ${plain(thickness, 6)} mm, least: 1 mm, most: 300 mm, help: As planed. }`,
    `  pieces: { label: Pieces, kind: count, default: ${pieces}, least: 1, most: 99, help: How many are made. }`,
    'points:',
    ...points.map((each, at) => `  p${at + 1}: ${each}`),
    '  corner_low: 0, 0',
    '  corner_high: width, length',
    '  axis_low: width / 2, 0',
    '  axis_high: width / 2, length',
    'outlines:',
    ...outlines,
    ...(holes.length === 0 ? [] : ['openings:']),
    ...holes.map(
      ({ name, plunge, at }) =>
        `  ${name}: { label: Opening ${at + 1}, outline: ${name}, plunge: ${plunge} }`,
    ),
    'parts:',
    '  shape:',
    `    label: ${quoted(title)}`,
    '    outline: shape',
    ...(holes.length === 0 ? [] : [`    openings: [${holes.map(({ name }) => name).join(', ')}]`]),
    '    thickness: stock',
    `    grain: ${degrees(shape.grain)}`,
    `    up: ${degrees(shape.up)}`,
    '    quantity: { left: pieces, right: 0 }',
    '    centre_line: [axis_low, axis_high]',
    '    dimensions:',
    '      width: { label: Width, between: [corner_low, corner_high], along: 0 deg }',
    '      length: { label: Length, between: [corner_low, corner_high], along: 90 deg }',
    'handles:',
    '  size: { label: Far corner, part: shape, at: corner_high, moves: [width, length] }',
  ].join('\n')}\n`;
}

function linesOfLoop(loop: StrokeLoop, name: string, named: (p: Vec) => string): readonly string[] {
  const start = named(loop.start);
  const last = loop.strokes.length - 1;
  const edges = loop.strokes.map((stroke, at) => {
    const between = partsOf(stroke, at, named);
    const to = at === last ? start : named(stroke.to);
    return `      - { ${between.head}, to: ${to}, role: ${stroke.role}${between.tail} }`;
  });
  return [`  ${name}:`, `    start: ${start}`, '    edges:', ...edges];
}

function partsOf(
  stroke: Stroke,
  at: number,
  named: (p: Vec) => string,
): { readonly head: string; readonly tail: string } {
  const name = `edge_${at + 1}`;
  switch (stroke.kind) {
    case 'line':
      return { head: `line: ${name}`, tail: '' };
    case 'arc':
      return { head: `arc: ${name}`, tail: `, through: ${named(stroke.through)}` };
    case 'batten': {
      const nails = stroke.nails.map(named);
      const smooth = stroke.smooth && at > 0 ? ', leaving: smooth' : '';
      return { head: `batten: ${name}, through: [${nails.join(', ')}]`, tail: smooth };
    }
    default:
      return stroke satisfies never;
  }
}

/** A point as shares of the width and the length of a box, fine enough for 0.0001 mm in any shape. */
function placeIn({ minX, minY, maxX, maxY }: Box): (p: Vec) => string {
  return ({ x, y }) =>
    `width * ${share((x - minX) / (maxX - minX))}, length * ${share((y - minY) / (maxY - minY))}`;
}

const share = (value: number): string => {
  const text = plain(value, 10);
  return value < 0 ? `(${text})` : text;
};

/** A figure without an exponent, which the grammar does not know. */
function plain(value: number, decimals: number): string {
  const text = value.toFixed(decimals).replace(/\.?0+$/, '');
  return text === '-0' ? '0' : text;
}

/** A name as forms are called, from whatever a title says. */
function nameOf(title: string): string {
  const words = title
    .normalize('NFKD')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '')
    .slice(0, 6);
  const name = words.join('-');
  return /^[a-z]/.test(name) ? name : `shape${name === '' ? '' : `-${name}`}`;
}

/** YAML reads a text of JSON as it stands. */
function quoted(title: string): string {
  return JSON.stringify(
    title
      .replace(/\p{Cc}+/gu, ' ')
      .trim()
      .slice(0, 120) || 'Own shape',
  );
}

/** A place inside an opening, for the cutter to go down: its centroid, or beside the middle of an edge where that lies outside. */
function insideOf(loop: StrokeLoop): Vec {
  const edges = edgesOfLoop(loop);
  const outline: Outline = {
    edges: edges.map((edge, i) => (i === edges.length - 1 ? { ...edge, to: edges[0]!.from } : edge)),
  };
  const turned: Outline = { edges: outline.edges.toReversed().map(reverseEdge) };
  for (const outer of [outline, turned]) {
    const region: Region = { outer, holes: [] };
    const centre = centroidOfRegions([region]);
    if (centre !== undefined && locate([region], centre) === 'inside') return centre;
  }
  const box = boundsOfEdges(edges);
  const step = Math.min(box.maxX - box.minX, box.maxY - box.minY) / 20;
  for (const edge of edges) {
    const { x, y } = pointAt(edge, 0.5);
    for (const p of [
      { x: x + step, y },
      { x: x - step, y },
      { x, y: y + step },
      { x, y: y - step },
    ]) {
      if ([outline, turned].some((outer) => locate([{ outer, holes: [] }], p) === 'inside')) return p;
    }
  }
  return pointAt(edges[0]!, 0.5);
}
