import { fail, ok, type Problem, type Result } from '../../core/index.ts';
import type { Edge, EdgeTag, Outline, Vec } from '../api.ts';
import { line } from '../edge.ts';
import { FAIRING_TOLERANCE } from '../tolerance.ts';
import { distance } from '../vec.ts';
import { type Affine, compose, IDENTITY } from './affine.ts';
import { edgesOfSegments } from './edges-of-segments.ts';
import { type Painting, paintingOf } from './painting-of.ts';
import { parseTransform, readNumbers } from './parse-transform.ts';
import { mapSegment, type Subpath } from './path-segments.ts';
import { readSvgLength, SHAPES, shapeSegments } from './shape-segments.ts';
import { type XmlElement, xmlElements } from './xml-elements.ts';

/** The outlines of a drawing in millimetres, y up, the top left corner of the drawing at the origin. */
export interface SvgDrawing {
  /** Closed loops in the order and direction drawn; they may nest, touch or cross. Edge ids count the loops: `outline-1` … */
  readonly outlines: readonly Outline[];
  /** The elements that drew them, in order. */
  readonly shapes: readonly SvgShape[];
  /** Lines that are drawn but do not close, with the distance between their ends, mm. */
  readonly open: readonly { readonly from: Vec; readonly to: Vec; readonly gap: number }[];
  /** Names of elements that were passed over because they are no outlines: `text`, `image`, `use` … */
  readonly skipped: readonly string[];
  /** How sizes were found: from the size the file states in mm, in and the like, or taking 96 units to the inch. */
  readonly scale: 'stated' | 'assumed';
}

/** The closed loops of one element, and what the drawing says of its inside. */
export interface SvgShape extends Painting {
  /** Indices of outlines. */
  readonly loops: readonly number[];
}

/** Ends nearer than this (mm) close a loop: what drawing programs leave through rounding, and no pencil shows. */
const CLOSING_GAP = 0.01;
/** Elements that hold others and draw them. */
const GROUPS: ReadonlySet<string> = new Set(['svg', 'g', 'a', 'switch']);
/** Elements that say something of the drawing but draw nothing themselves. */
const SILENT: ReadonlySet<string> = new Set([
  'title',
  'desc',
  'metadata',
  'defs',
  'style',
  'script',
  'namedview',
]);
const MM_PER_UNIT = 25.4 / 96;
/** Nothing in a workshop is larger (mm). */
const LARGEST = 1e6;

/**
 * The outlines of an SVG text: paths, rectangles, circles, ellipses, polygons and polylines, with their transforms, at the size
 * that the drawing states. Circles stay exact under turns, moves and even scaling; other curves become arcs within a tolerance (mm).
 * Styles are not read, save `display="none"`. What cannot be read comes back as problems with their lines.
 */
export function readSvgDrawing(
  text: string,
  role: EdgeTag['role'],
  tolerance = FAIRING_TOLERANCE,
): Result<SvgDrawing> {
  const parsed = xmlElements(text);
  if (!parsed.ok) return parsed;
  const root = parsed.value;
  if (root.name !== 'svg') {
    return fail({
      code: 'svg.unreadable',
      message: `This is no SVG drawing: its root is <${root.name}>.`,
      line: root.line,
      found: root.name,
      expected: 'svg',
    });
  }
  const scale = scaleOfRoot(root);
  if (!scale.ok) return scale;
  const problems: Problem[] = [];
  const skipped = new Set<string>();
  const found: Found[] = [];
  const visit = (element: XmlElement, outer: Affine, inherited: Painting): void => {
    if (isHidden(element)) return;
    const painting = paintingOf(element, inherited);
    const own = parseTransform(element.attributes.get('transform') ?? '');
    if (own === undefined) {
      problems.push({
        code: 'svg.attribute',
        message: `Line ${element.line}: the transform of <${element.name}> cannot be read.`,
        line: element.line,
        path: `${element.name}.transform`,
      });
      return;
    }
    const by = compose(outer, own);
    if (SHAPES.has(element.name)) {
      const drawn = shapeSegments(element);
      if (!drawn.ok) problems.push(...drawn.problems);
      else
        for (const { segments, closed } of drawn.value)
          found.push({ segments: segments.map((s) => mapSegment(s, by)), closed, element, painting });
    } else if (GROUPS.has(element.name) && (element.name !== 'svg' || element === root)) {
      for (const child of element.children) visit(child, by, painting);
    } else if (!SILENT.has(element.name)) skipped.add(element.name);
  };
  visit(root, scale.value.map, { rule: 'nonzero', isFilled: true });
  if (problems.length > 0) return fail(...problems);
  return outlinesOf(found, role, tolerance, [...skipped], scale.value.source);
}

interface Found extends Subpath {
  readonly element: XmlElement;
  readonly painting: Painting;
}

function outlinesOf(
  found: readonly Found[],
  role: EdgeTag['role'],
  tolerance: number,
  skipped: readonly string[],
  scale: SvgDrawing['scale'],
): Result<SvgDrawing> {
  const outlines: Outline[] = [];
  const open: { from: Vec; to: Vec; gap: number }[] = [];
  const shapes = new Map<XmlElement, SvgShape & { readonly loops: number[] }>();
  for (const { segments, element, painting } of found) {
    const tag = { id: `outline-${outlines.length + 1}`, role };
    const isTooLarge = segments.some((segment) => !isWithin(segment));
    if (isTooLarge)
      return fail({ code: 'svg.too-large', message: `The drawing reaches beyond ${LARGEST / 1000} m.` });
    const edges = edgesOfSegments(segments, tag, tolerance);
    const first = edges[0];
    const last = edges.at(-1);
    if (first === undefined || last === undefined) continue;
    const gap = distance(last.to, first.from);
    if (gap > CLOSING_GAP) open.push({ from: first.from, to: last.to, gap });
    else {
      const shape = shapes.get(element) ?? { ...painting, loops: [] };
      shapes.set(element, shape);
      shape.loops.push(outlines.length);
      outlines.push({ edges: closeLoop(edges, gap) });
    }
  }
  return ok({ outlines, shapes: [...shapes.values()], open, skipped, scale });
}

function closeLoop(edges: readonly Edge[], gap: number): readonly Edge[] {
  const first = edges[0]!;
  const last = edges.at(-1)!;
  return gap === 0 ? edges : [...edges, line(last.to, first.from, last.tag)];
}

function isWithin(segment: Subpath['segments'][number]): boolean {
  const points =
    segment.kind === 'cubic' ? Object.values<Vec>({ ...segment.curve }) : [segment.from, segment.to];
  if (segment.kind === 'ellipse') points.push(segment.u, segment.v, segment.centre);
  return points.every(({ x, y }) => Math.abs(x) <= LARGEST && Math.abs(y) <= LARGEST);
}

function isHidden(element: XmlElement): boolean {
  const style = element.attributes.get('style') ?? '';
  return element.attributes.get('display') === 'none' || /(?:^|;)\s*display\s*:\s*none/.test(style);
}

/** From user units to millimetres with y up: by `viewBox` on the stated width and height, else 96 units to the inch. */
function scaleOfRoot(
  root: XmlElement,
): Result<{ readonly map: Affine; readonly source: SvgDrawing['scale'] }> {
  const box = root.attributes.get('viewBox');
  const numbers = box === undefined ? undefined : readNumbers(box);
  const sizes = ['width', 'height'].map((name) => {
    const text = root.attributes.get(name);
    return text === undefined || text.trim().endsWith('%') ? undefined : readSvgLength(text);
  });
  const isBad = box !== undefined && (numbers?.length !== 4 || !(numbers[2]! > 0 && numbers[3]! > 0));
  if (isBad || sizes.some((size) => size !== undefined && !(size > 0))) {
    return fail({
      code: 'svg.attribute',
      message: `Line ${root.line}: the width, height or viewBox of the drawing cannot be read.`,
      line: root.line,
      path: 'svg.viewBox',
    });
  }
  const [x = 0, y = 0, w = 1, h = 1] = numbers ?? [];
  const [width, height] = sizes;
  let [sx, sy] = [1, 1];
  if (numbers !== undefined && (width !== undefined || height !== undefined)) {
    sx = (width ?? (height! * w) / h) / w;
    sy = (height ?? (width! * h) / w) / h;
    const fit = root.attributes.get('preserveAspectRatio')?.trim() ?? 'xMidYMid meet';
    if (!fit.startsWith('none')) sx = sy = fit.includes('slice') ? Math.max(sx, sy) : Math.min(sx, sy);
  }
  const isStated = ['width', 'height'].some((name) =>
    /(?:mm|cm|in|pt|pc|q)$/i.test(root.attributes.get(name)?.trim() ?? ''),
  );
  const map = {
    ...IDENTITY,
    a: sx * MM_PER_UNIT,
    d: -sy * MM_PER_UNIT,
    e: -x * sx * MM_PER_UNIT,
    f: y * sy * MM_PER_UNIT,
  };
  return ok({ map, source: isStated ? 'stated' : 'assumed' });
}
