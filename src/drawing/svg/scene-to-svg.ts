import type { Box } from '../../geometry/index.ts';
import type { LineRole, PathMark, Scene, TextMark } from '../api.ts';
import { contoursOfText, type Lettering } from '../lettering/lettering.ts';
import { fontSizeOf } from '../lettering/metrics.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { INKS, LINE_STYLES, TINT_STRENGTH } from '../styles.ts';
import { contourData, pathData, placeFrom, writeNumber } from './path-data.ts';

export interface SvgOptions {
  /** Names the drawing to whoever cannot see it. */
  readonly title?: string;
  /** Only the closed outlines of this role, for a machine to cut: no lettering, no dashes, nothing else. */
  readonly cutting?: 'part' | 'template' | 'as-routed';
  /** White space round the drawing, mm; 2 when absent, none when cutting. */
  readonly margin?: number;
}

/** Decimals of a coordinate in mm: 0.0001 mm, a two-hundredth of what a pattern is held to. */
const DECIMALS = 4;
/** Decimals of lettering: finer than a pen or a laser shows. */
const LETTER_DECIMALS = 3;

/**
 * A drawing as one SVG at full size: width and height in millimetres, one unit of the view box a millimetre, arcs as arcs. Text
 * becomes outlines of the lettering given, or stays text, in the family `Legwright`, where none is: for screens and books, which bring
 * the font along. Every role of line is a group with the role's name as its id; lettering is one group by itself,
 * so that a machine's operator can leave it out or engrave it. The same scene gives the same text.
 */
export function sceneToSvg(scene: Scene, lettering: Lettering | undefined, options: SvgOptions = {}): string {
  const { cutting } = options;
  const marks =
    cutting === undefined
      ? scene.marks
      : scene.marks.filter(
          (mark) => mark.kind === 'path' && mark.closed && mark.role === cutting && mark.fill === undefined,
        );
  const margin = options.margin ?? (cutting === undefined ? 2 : 0);
  const box = marks.length === 0 ? scene.box : boundsOfMarks(marks);
  const width = writeNumber(box.maxX - box.minX + 2 * margin, DECIMALS);
  const height = writeNumber(box.maxY - box.minY + 2 * margin, DECIMALS);
  const groups = [
    ...pathGroups(
      marks.filter((mark) => mark.kind === 'path'),
      grow(box, margin),
      cutting !== undefined,
    ),
    ...letterGroup(
      marks.filter((mark) => mark.kind === 'text'),
      grow(box, margin),
      lettering,
    ),
  ];
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}"${options.title === undefined ? '' : ' role="img"'}>`,
    ...(options.title === undefined ? [] : [`<title>${escapeXml(options.title)}</title>`]),
    ...groups,
    '</svg>',
    '',
  ].join('\n');
}

/** One group a role, in the order in which the roles first occur. */
function pathGroups(marks: readonly PathMark[], page: Box, cutting: boolean): readonly string[] {
  const place = placeFrom({ x: page.minX, y: page.maxY }, DECIMALS);
  const byRole = new Map<LineRole, PathMark[]>();
  for (const mark of marks) {
    const group = byRole.get(mark.role);
    if (group === undefined) byRole.set(mark.role, [mark]);
    else group.push(mark);
  }
  return [...byRole].map(([role, group]) => {
    const style = LINE_STYLES[role];
    const ink = INKS[style.ink];
    const isDashed = !cutting && style.dash.length > 0;
    // A continuous line ends where it ends; dash lengths are meant for round caps.
    const dash = !isDashed
      ? ''
      : ` stroke-linecap="round" stroke-dasharray="${style.dash.map((length) => writeNumber(length, DECIMALS)).join(' ')}"`;
    const attributes = `fill="none" stroke="${ink}" stroke-width="${style.width}" stroke-linejoin="round"${dash}`;
    const paths = group.map((mark) => {
      const data = pathData(mark.edges, mark.closed, place, DECIMALS);
      const fill =
        mark.fill === undefined
          ? ''
          : ` fill="${ink}" stroke="none"${mark.fill === 'tint' ? ` fill-opacity="${TINT_STRENGTH}"` : ''}`;
      return `<path d="${data}"${fill}/>`;
    });
    return `<g id="${role}" ${attributes}>\n${paths.join('\n')}\n</g>`;
  });
}

/** All lettering: filled outlines, each text named by what it says, or text. */
function letterGroup(
  marks: readonly TextMark[],
  page: Box,
  lettering: Lettering | undefined,
): readonly string[] {
  if (marks.length === 0) return [];
  if (lettering === undefined) return textGroup(marks, page);
  const place = placeFrom({ x: page.minX, y: page.maxY }, LETTER_DECIMALS);
  const paths = marks.map((mark) => {
    const data = contourData(contoursOfText(lettering, mark), place);
    const ink = INKS[LINE_STYLES[mark.role].ink];
    return `<path aria-label="${escapeXml(mark.text)}" fill="${ink}" d="${data}"/>`;
  });
  return [`<g id="lettering" stroke="none">\n${paths.join('\n')}\n</g>`];
}

const ANCHORS = { left: 'start', middle: 'middle', right: 'end' } as const;

function textGroup(marks: readonly TextMark[], page: Box): readonly string[] {
  const texts = marks.map((mark) => {
    const x = writeNumber(mark.at.x - page.minX, LETTER_DECIMALS);
    const y = writeNumber(page.maxY - mark.at.y, LETTER_DECIMALS);
    const turn =
      mark.angle === 0 ? '' : ` rotate(${writeNumber((-mark.angle * 180) / Math.PI, LETTER_DECIMALS)})`;
    const size = writeNumber(fontSizeOf(mark.height), LETTER_DECIMALS);
    const weight = mark.weight === 'semibold' ? ' font-weight="600"' : '';
    const ink = INKS[LINE_STYLES[mark.role].ink];
    return `<text transform="translate(${x} ${y})${turn}" font-size="${size}"${weight} text-anchor="${ANCHORS[mark.align]}" fill="${ink}">${escapeXml(mark.text)}</text>`;
  });
  return [`<g id="lettering" font-family="Legwright">\n${texts.join('\n')}\n</g>`];
}

function grow(box: Box, by: number): Box {
  return { minX: box.minX - by, minY: box.minY - by, maxX: box.maxX + by, maxY: box.maxY + by };
}

/** Text made safe inside an element or an attribute: marked characters escaped, those XML forbids left out. */
function escapeXml(text: string): string {
  return [...text]
    .filter((character) => isAllowed(character.codePointAt(0)!))
    .join('')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** Characters of XML 1.0, section 2.2. */
function isAllowed(code: number): boolean {
  return (
    code === 0x9 ||
    code === 0xa ||
    code === 0xd ||
    (code >= 0x20 && code <= 0xd7ff) ||
    (code >= 0xe000 && code <= 0xfffd) ||
    code >= 0x10000
  );
}
