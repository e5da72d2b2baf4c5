import type { Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Mark, Scene } from '../api.ts';
import { textMark } from '../layout/drawing.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { transformMark } from '../scene/transform-scene.ts';
import { layPicture, type Picture } from './picture.ts';

/** Between pictures, and over the names under them, mm. */
const APART = 9;
const NAME = { height: 1.8, under: 5 } as const;

export interface NamedPicture {
  readonly picture: Omit<Picture, 'view'> & Partial<Pick<Picture, 'view'>>;
  readonly scale: number;
}

/**
 * Pictures beside each other, each with its name and its scale under it, in as many rows as a width (mm) asks for. For a book of text: on a
 * sheet of their own pictures stand on a plate.
 */
export function pictureRow(pictures: readonly NamedPicture[], width: number, lengths: LengthStyle): Scene {
  const laid = pictures.map(({ picture, scale }) => ({
    ...layPicture(picture, scale, lengths),
    name: `${picture.name}, ${scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`}`,
  }));
  const rows: { right: number; marks: Mark[] }[] = [];
  for (const { marks: own, box, name } of laid) {
    const under = { x: (box.minX + box.maxX) / 2, y: box.minY - NAME.under };
    const said = textMark(name, under, { height: NAME.height, align: 'middle', role: 'dimension' });
    const [low, high] = [boundsOfMarks([said]).minX, boundsOfMarks([said]).maxX];
    const left = Math.min(box.minX, low);
    const wide = Math.max(box.maxX, high) - left;
    // In the first row that has room left: a small picture stands beside an earlier one rather than under a wide one.
    const free = rows.find(({ right }) => right + wide <= width);
    const row = free ?? { right: 0, marks: [] };
    if (free === undefined) rows.push(row);
    const shift = { x: row.right - left, y: -box.maxY };
    row.marks.push(...[...own, said].map((mark) => moved(mark, shift)));
    row.right += wide + APART;
  }
  let top = 0;
  const marks = rows.flatMap((row) => {
    const placed = row.marks.map((mark) => moved(mark, { x: 0, y: top }));
    top = boundsOfMarks(placed).minY - APART;
    return placed;
  });
  return { marks, box: boundsOfMarks(marks) };
}

const moved = (mark: Mark, shift: Vec): Mark =>
  transformMark(mark, { turn: 0, shift, scale: 1, mirrored: false });
