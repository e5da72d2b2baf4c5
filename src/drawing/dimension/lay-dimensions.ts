import { joinBoxes, type Similarity, STAY, type Vec } from '../../geometry/index.ts';
import type { Mark, PathMark } from '../api.ts';
import { createDrawing, type Drawing } from '../layout/drawing.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { boundsOfMark } from '../scene/bounds-of-marks.ts';
import { transformMark } from '../scene/transform-scene.ts';
import { angleMarks } from './angle-marks.ts';
import type { Dimension, DimensionStyle, LaidDimension, LaidDimensions } from './api.ts';
import { FIGURE, figureOf } from './figure-of.ts';
import { layLanes } from './lanes.ts';
import { leaderMarks } from './leader-marks.ts';
import { figureMarks, linesOf } from './length-marks.ts';

/** mm: how closely the reach of curves is followed. */
const HULL = 0.5;

/**
 * Dimensions laid round a picture that is on paper already (`marks`, mm): all lines of lengths first, in lanes; then every figure where
 * nothing else stands; then angles, radii and notes as near to their places as there is room. Figures are never on lines, never on other
 * lettering, and are measured from the points alone.
 */
export function layDimensions(
  dimensions: readonly Dimension[],
  marks: readonly Mark[],
  style: DimensionStyle,
): LaidDimensions {
  const { height = FIGURE } = style;
  if (height === FIGURE) return layAtUsualSize(dimensions, marks, style);
  // Larger figures want larger heads and lanes farther apart: all is laid at the usual size on a smaller picture, and that is enlarged.
  const grown = height / FIGURE;
  const toPaper = { ...style.toPaper, ...shrunk(style.toPaper, grown) };
  const small = marks.map((mark) => transformMark(mark, { ...STAY, scale: 1 / grown }));
  const { laid, left } = layAtUsualSize(dimensions, small, { ...style, toPaper });
  const enlarge = (mark: Mark): Mark => transformMark(mark, { ...STAY, scale: grown });
  return { laid: laid.map((each) => ({ ...each, marks: each.marks.map(enlarge) })), left };
}

const shrunk = ({ scale, shift }: Similarity, by: number): Pick<Similarity, 'scale' | 'shift'> => ({
  scale: scale / by,
  shift: { x: shift.x / by, y: shift.y / by },
});

function layAtUsualSize(
  dimensions: readonly Dimension[],
  marks: readonly Mark[],
  style: DimensionStyle,
): LaidDimensions {
  const box = marks.map(boundsOfMark).reduce(joinBoxes, { minX: 0, minY: 0, maxX: 0, maxY: 0 });
  const drawing = createDrawing(Math.max(box.maxX - box.minX, box.maxY - box.minY) + 200);
  drawing.draw(marks);
  const laid = layLengths(dimensions, marks, drawing, style);
  const left: { dimension: Dimension; figure: string }[] = [];
  for (const dimension of dimensions) {
    if (dimension.kind === 'length') continue;
    const made =
      dimension.kind === 'angle'
        ? angleMarks(dimension, drawing, style)
        : leaderMarks(dimension, drawing, style);
    const figure = figureOf(dimension, style.lengths);
    if (made === undefined) left.push({ dimension, figure });
    else {
      drawing.draw(made);
      laid.push({ dimension, figure, marks: made });
    }
  }
  return { laid, left };
}

function layLengths(
  dimensions: readonly Dimension[],
  marks: readonly Mark[],
  drawing: Drawing,
  style: DimensionStyle,
): LaidDimension[] {
  const hull = marks.filter(isWide).flatMap(({ edges }) => edges.flatMap((edge) => flattenEdge(edge, HULL)));
  const lengths = dimensions.filter((each) => each.kind === 'length');
  const lines = layLanes(lengths, hull.length > 0 ? hull : [{ x: 0, y: 0 } satisfies Vec], style);
  const drawn = lines.map((line) => ({ line, own: linesOf(line) }));
  for (const { own } of drawn) drawing.draw(own);
  return drawn.map(({ line, own }) => {
    const figure = figureMarks(line, drawing);
    drawing.draw(figure);
    return { dimension: line.dimension, figure: line.figure, marks: [...own, ...figure] };
  });
}

/** What lengths stand off from. */
function isWide(mark: Mark): mark is PathMark {
  return mark.kind === 'path' && (mark.role === 'visible' || mark.role === 'phantom' || mark.role === 'part');
}
