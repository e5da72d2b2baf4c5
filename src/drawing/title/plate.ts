import type { Box } from '../../geometry/index.ts';
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
  readonly title: Omit<TitleFields, 'scale'>;
}

/** Ways to set pictures in rows. */
type Rows = readonly (readonly Picture[])[];

/**
 * Pictures at the largest standard scale at which one of the ways to set them in rows fits, the first of those, with a title block of ISO
 * 7200 under them.
 */
export function plateOf(ways: readonly Rows[], options: PlateOptions): Plate {
  for (const scale of SCALES) {
    for (const rows of ways) {
      const plate = plateAt(rows, scale, options, scale === SCALES.at(-1));
      if (plate !== undefined) return plate;
    }
  }
  throw new RangeError('a plate shows something');
}

function plateAt(
  rows: Rows,
  scale: number,
  { lengths, width, height, title }: PlateOptions,
  last: boolean,
): Plate | undefined {
  const laid = rows.map((row) => row.map((picture) => ({ picture, ...layPicture(picture, scale, lengths) })));
  const widths = laid.map((row) => row.reduce((sum, { box }) => sum + widthOf(box) + APART, -APART));
  const heights = laid.map(
    (row) => Math.max(...row.map(({ box }) => heightOf(box))) + NAME_HEIGHT + 4 + APART,
  );
  const total = heights.reduce((sum, each) => sum + each, 0) + TITLE_HEIGHT;
  if ((Math.max(...widths) > width || total > height) && !last) return undefined;
  const name = scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
  const marks: Mark[] = [];
  let top = 0;
  for (const [i, row] of laid.entries()) {
    let x = Math.max(0, (Math.max(TITLE_WIDTH, ...widths) - widths[i]!) / 2);
    const tall = Math.max(...row.map(({ box }) => heightOf(box)));
    for (const { picture, box, marks: own } of row) {
      const shift = { x: x - box.minX, y: top - tall - box.minY };
      marks.push(...own.map((mark) => transformMark(mark, { turn: 0, shift, scale: 1, mirrored: false })));
      marks.push({
        kind: 'text',
        text: picture.name,
        at: { x: x + widthOf(box) / 2, y: top - tall - 6 },
        height: NAME_HEIGHT,
        angle: 0,
        align: 'middle',
        weight: 'semibold',
        role: 'dimension',
      });
      x += widthOf(box) + APART;
    }
    top -= heights[i]!;
  }
  const full = Math.max(TITLE_WIDTH, ...widths);
  marks.push(...titleBlock({ ...title, scale: name }, { x: full - TITLE_WIDTH, y: top - TITLE_HEIGHT }));
  return {
    scene: { marks, box: boundsOfMarks(marks) },
    scale: name,
    left: laid
      .flat()
      .flatMap(({ left }) => left.map(({ dimension, figure }) => `${dimension.name} ${figure}`)),
  };
}

const widthOf = ({ minX, maxX }: Box): number => maxX - minX;
const heightOf = ({ minY, maxY }: Box): number => maxY - minY;
