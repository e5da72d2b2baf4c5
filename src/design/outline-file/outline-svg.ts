import { fail, ok, type Result } from '../../core/index.ts';
import {
  boundsOfRegions,
  type Region,
  readSvgDrawing,
  type Vec,
  writeSvgPath,
} from '../../geometry/index.ts';
import { regionsOfShapes } from './regions-of-shapes.ts';

/** Outlines read from a drawing, and what of it they leave out. */
export interface ReadOutlines {
  readonly regions: readonly Region[];
  /** A sentence each. */
  readonly remarks: readonly string[];
}

/** Decimals of a written coordinate, mm. */
const DECIMALS = 5;

/**
 * The regions drawn in an SVG text, mm, y up, as `regionsOfShapes` reads them. Lines that do not close have no inside: they are
 * left out with a remark, and a problem where there is nothing else.
 */
export function readOutlineSvg(text: string, file: string): Result<ReadOutlines> {
  const read = readSvgDrawing(text, 'routed');
  if (!read.ok) return fail(...read.problems.map((problem) => ({ ...problem, file })));
  const { outlines, shapes, open, skipped, scale } = read.value;
  const gap = open[0];
  if (gap && outlines.length === 0) {
    const found = `an open line from ${placeOf(gap.from)}`;
    const expected = `a closed outline: its ends are ${gap.gap.toFixed(2)} mm apart`;
    return fail({
      code: 'outline.open',
      message: `Found ${found}, expected ${expected}.`,
      file,
      found,
      expected,
    });
  }
  if (outlines.length === 0) {
    const message = 'The drawing has no closed outline.';
    return fail({ code: 'outline.none', message, file, found: 'none', expected: 'a closed outline' });
  }
  const { regions, covered } = regionsOfShapes(outlines, shapes);
  return ok({
    regions,
    remarks: [
      ...(scale === 'assumed'
        ? ['The drawing states no size in mm or inches: 96 units are taken for an inch.']
        : []),
      ...open
        .slice(0, MOST_NAMED)
        .map(
          ({ from, gap }) =>
            `Passed over an open line from ${placeOf(from)}: its ends are ${gap.toFixed(2)} mm apart.`,
        ),
      ...(open.length > MOST_NAMED ? [`Passed over ${open.length - MOST_NAMED} more open lines.`] : []),
      ...(covered > 0
        ? [
            `${covered} filled outline${covered === 1 ? '' : 's'} inside another filled one ${covered === 1 ? 'is' : 'are'} covered by it. A hole is drawn in one path with its outline, or with fill="none".`,
          ]
        : []),
      ...(skipped.length > 0 ? [`Passed over, because no outlines: ${skipped.join(', ')}.`] : []),
    ],
  });
}

/** Open lines that are named each; a drawing of hundreds is not a mistake to be shown one by one. */
const MOST_NAMED = 5;

/** As the drawing has it: y down. */
function placeOf({ x, y }: Vec): string {
  return `x ${x.toFixed(2)}, y ${(-y).toFixed(2)} mm`;
}

/**
 * Regions as SVG at full size, one unit of the view box a millimetre, arcs as arcs. Coordinates are those of the regions, so
 * that the drawing they come from and this one fit over each other.
 */
export function writeOutlineSvg(regions: readonly Region[]): string {
  const box = boundsOfRegions(regions);
  const [left, top, width, height] = [box.minX, -box.maxY, box.maxX - box.minX, box.maxY - box.minY].map(
    (value) => String(Number(value.toFixed(DECIMALS))),
  );
  const paths = regions.map(({ outer, holes }) => {
    const d = [outer, ...holes].map(({ edges }) => writeSvgPath(edges, true, DECIMALS)).join(' ');
    return `<path d="${d}" fill="none" stroke="#000" stroke-width="0.25"/>`;
  });
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="${left} ${top} ${width} ${height}">`,
    ...paths,
    '</svg>',
    '',
  ].join('\n');
}
