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
  const marks: Mark[] = [];
  let [right, top, foot] = [0, 0, 0];
  for (const { marks: own, box, name } of laid) {
    const wide = box.maxX - box.minX;
    if (right > 0 && right + wide > width) [right, top] = [0, foot - APART];
    const shift = { x: right - box.minX, y: top - box.maxY };
    marks.push(...own.map((mark) => transformMark(mark, { turn: 0, shift, scale: 1, mirrored: false })));
    const under = top - (box.maxY - box.minY) - NAME.under;
    const middle = { x: right + wide / 2, y: under };
    const said = textMark(name, middle, { height: NAME.height, align: 'middle', role: 'dimension' });
    const over = boundsOfMarks([said]).minX - right;
    marks.push(over < 0 ? { ...said, at: { ...middle, x: middle.x - over } } : said);
    right = Math.max(right + wide, boundsOfMarks([marks.at(-1)!]).maxX) + APART;
    foot = Math.min(foot, under);
  }
  return { marks, box: boundsOfMarks(marks) };
}
