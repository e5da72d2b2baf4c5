import type { Box, Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Mark, Scene } from '../api.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';
import { transformMark } from '../scene/transform-scene.ts';
import { layPicture, type Picture } from './picture.ts';
import { TITLE_HEIGHT, TITLE_WIDTH, type TitleFields, titleBlock } from './title-block.ts';

/** Recommended scales of ISO 5455, largest first. */
const SCALES = [2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50] as const;
/** Between pictures, and between them and the title block, mm. */
const APART = 12;
const NAME_HEIGHT = 2.5;

/** A drawing on one plate: pictures beside each other or in rows, each with its name, and the title block under them. */
export interface Plate {
  readonly scene: Scene;
  readonly scale: string;
  /** What found no room on the plate: to be said beside it. */
  readonly left: readonly string[];
}

export interface PlateOptions {
  readonly lengths: LengthStyle;
  /** Room on paper, mm. */
  readonly width: number;
  readonly height: number;
  readonly title: Omit<TitleFields, 'scale' | 'sheet'>;
}

/** Ways to set pictures in rows: in a row all have the same up, under each other the first ones have the same across. */
type Rows = readonly (readonly Picture[])[];

/**
 * Pictures on plates, each with a title block of ISO 7200 under it, at the largest standard scale at which one of the ways to share them out
 * fits, the first of those: the way of fewest plates is to stand first. A way is a list of plates, a plate a list of rows.
 */
export function platesOf(ways: readonly (readonly Rows[])[], options: PlateOptions): readonly Plate[] {
  for (const scale of SCALES) {
    for (const way of ways) {
      const plates = way.map((rows, at) =>
        plateAt(rows, scale, `${at + 1}/${way.length}`, options, scale === SCALES.at(-1)),
      );
      const fitting = plates.filter((plate) => plate !== undefined);
      if (fitting.length === way.length) return fitting;
    }
  }
  throw new RangeError('a plate shows something');
}

function plateAt(
  rows: Rows,
  scale: number,
  sheet: string,
  { lengths, width, height, title }: PlateOptions,
  last: boolean,
): Plate | undefined {
  const laid = rows.map((row) => row.map((picture) => ({ picture, ...layPicture(picture, scale, lengths) })));
  const places = laid.map((row) => placesInRow(row.map(({ box }) => box)));
  const least = Math.min(...places.flat().map(({ minX }) => minX));
  const wide = Math.max(...places.flat().map(({ maxX }) => maxX)) - least;
  const tall = laid.reduce((sum, row) => sum + rowHeight(row), TITLE_HEIGHT);
  if ((wide > width || tall > height) && !last) return undefined;
  const block = Math.min(TITLE_WIDTH, width);
  const full = Math.max(block, wide);
  const name = scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
  const marks: Mark[] = [];
  let top = 0;
  for (const [i, row] of laid.entries()) {
    const origin = top - Math.max(...row.map(({ box }) => box.maxY));
    for (const [j, { picture, marks: own }] of row.entries()) {
      const { origin: x, minX, maxX } = places[i]![j]!;
      const aside = (full - wide) / 2 - least;
      const shift = { x: x + aside, y: origin };
      marks.push(...own.map((mark) => transformMark(mark, { turn: 0, shift, scale: 1, mirrored: false })));
      const middle = (minX + maxX) / 2 + aside;
      marks.push(nameUnder(picture.name, { x: middle, y: top - rowHeight(row) + APART }));
    }
    top -= rowHeight(row);
  }
  const corner = { x: full - block, y: top - TITLE_HEIGHT };
  marks.push(...titleBlock({ ...title, sheet, scale: name }, corner, block));
  return {
    scene: { marks, box: boundsOfMarks(marks) },
    scale: name,
    left: laid
      .flat()
      .flatMap(({ left }) => left.map(({ dimension, figure }) => `${dimension.name} ${figure}`)),
  };
}

interface PlaceInRow {
  /** Where the picture's own origin comes to stand, and the sides of what is drawn, mm. */
  readonly origin: number;
  readonly minX: number;
  readonly maxX: number;
}

/** The first picture of every row has its origin at 0, so that views of one thing stand under each other. */
function placesInRow(boxes: readonly Box[]): readonly PlaceInRow[] {
  let right: number | undefined;
  return boxes.map(({ minX, maxX }) => {
    const origin = right === undefined ? 0 : right + APART - minX;
    right = origin + maxX;
    return { origin, minX: origin + minX, maxX: right };
  });
}

/** Pictures of a row stand at the same height, as views of one thing do: what they take together, with their names. */
function rowHeight(row: readonly { readonly box: Box }[]): number {
  const top = Math.max(...row.map(({ box }) => box.maxY));
  const foot = Math.min(...row.map(({ box }) => box.minY));
  return top - foot + NAME_HEIGHT + 4 + APART;
}

const nameUnder = (text: string, at: Vec): Mark => ({
  kind: 'text',
  text,
  at,
  height: NAME_HEIGHT,
  angle: 0,
  align: 'middle',
  weight: 'semibold',
  role: 'dimension',
});
