import type { Box, Vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Mark, Scene } from '../api.ts';
import { textMark } from '../layout/drawing.ts';
import { transformMark } from '../scene/transform-scene.ts';
import { type LaidPicture, layPicture, type Picture } from './picture.ts';
import { linesOfNotes, NOTE_HEIGHT, NOTE_LEADING } from './plate-notes.ts';
import { insideOfFrame, type PageSize, sheetFrame } from './sheet-frame.ts';
import { TITLE_HEIGHT, TITLE_WIDTH, type TitleFields, titleBlock } from './title-block.ts';

/** Recommended scales of ISO 5455, largest first. */
const SCALES = [2, 1, 1 / 2, 1 / 5, 1 / 10, 1 / 20, 1 / 50] as const;
/** Between pictures, and round them within the frame, mm; above them there is room for what the page is called. */
const APART = 12;
const ROUND = 4;
const HEAD = 7;
const NAME_HEIGHT = 2.5;

/** A drawing on a sheet of its own: frame, pictures beside each other or in rows, each with its name, notes and the title block. */
export interface Plate {
  /** From the lower left corner of the sheet. */
  readonly scene: Scene;
  readonly scale: string;
  /** Paper mm of a millimetre of the world. */
  readonly factor: number;
  /** What found no room on the plate: it is among its notes. */
  readonly left: readonly string[];
}

export interface PlateOptions {
  readonly lengths: LengthStyle;
  /** The paper upright, mm. */
  readonly page: PageSize;
  readonly title: Omit<TitleFields, 'scale' | 'sheet'>;
  /** Said over the title block. */
  readonly notes?: readonly string[];
}

type Rows = readonly (readonly Picture[])[];

/** A way to share pictures out: on plates, in rows: in a row all have the same up, under each other the first ones have the same across. */
export interface PlateWay {
  readonly plates: readonly Rows[];
  /** On the paper laid on its long side. */
  readonly lying?: boolean;
  /** Scales that it is tried at, 2 to 1/50 when absent. */
  readonly most?: number;
  readonly least?: number;
}

/**
 * Pictures on framed sheets with a title block, at the largest standard scale at which one of the ways to share them out fits, the first of
 * those: the way of fewest plates is to stand first. Where nothing fits, the last way at the least scale.
 */
export function platesOf(ways: readonly PlateWay[], options: PlateOptions): readonly Plate[] {
  for (const scale of SCALES) {
    for (const way of ways) {
      const { most = SCALES[0], least = SCALES.at(-1)! } = way;
      if (scale > most || scale < least) continue;
      const drawn = drawWay(way, scale, options, false);
      if (drawn !== undefined) return drawn;
    }
  }
  const drawn = drawWay(ways.at(-1)!, SCALES.at(-1)!, options, true);
  if (drawn === undefined) throw new RangeError('a plate shows something');
  return drawn;
}

function drawWay(
  { plates, lying = false }: PlateWay,
  scale: number,
  options: PlateOptions,
  anyhow: boolean,
): readonly Plate[] | undefined {
  const { width, height } = options.page;
  const page = lying ? { width: height, height: width } : { width, height };
  const drawn: Plate[] = [];
  for (const [at, rows] of plates.entries()) {
    const plate = plateAt(rows, scale, `${at + 1}/${plates.length}`, { ...options, page }, anyhow);
    if (plate === undefined) return undefined;
    drawn.push(plate);
  }
  return drawn;
}

function plateAt(
  rows: Rows,
  scale: number,
  sheet: string,
  { lengths, page, title, notes = [] }: PlateOptions,
  anyhow: boolean,
): Plate | undefined {
  const inside = insideOfFrame(page);
  const laid = rows.map((row) => row.map((picture) => ({ picture, ...layPicture(picture, scale, lengths) })));
  const left = laid
    .flat()
    .flatMap((each) => each.left.map(({ dimension, figure }) => `${dimension.name} ${figure}`));
  const block = Math.min(TITLE_WIDTH, inside.maxX - inside.minX);
  const name = scale >= 1 ? `${scale}:1` : `1:${Math.round(1 / scale)}`;
  const said =
    left.length === 0 ? notes : [...notes, `Not in the drawing for want of room: ${left.join('; ')}.`];
  const noted = notesBeside(said, inside, block);
  const room: Box = {
    minX: inside.minX + ROUND,
    maxX: inside.maxX - ROUND,
    minY: noted.top + ROUND,
    maxY: inside.maxY - HEAD,
  };
  const placed = placeRows(laid, room);
  if (placed === undefined && !anyhow) return undefined;
  const corner = { x: inside.maxX - block, y: inside.minY };
  return {
    scene: {
      marks: [
        ...sheetFrame(page),
        ...(placed ?? []),
        ...noted.marks,
        ...titleBlock({ ...title, sheet, scale: name }, corner, block),
      ],
      box: { minX: 0, minY: 0, maxX: page.width, maxY: page.height },
    },
    scale: name,
    factor: scale,
    left,
  };
}

/** Notes at the left of the title block where there is room for them, else over it. */
function notesBeside(
  notes: readonly string[],
  inside: Box,
  block: number,
): { readonly marks: readonly Mark[]; readonly top: number } {
  const width = inside.maxX - inside.minX - 2 * ROUND;
  const beside = width - block - ROUND;
  const over = inside.minY + TITLE_HEIGHT;
  const isBeside = beside > 70 && linesOfNotes(notes, beside).length * NOTE_LEADING + ROUND <= TITLE_HEIGHT;
  const lines = linesOfNotes(notes, isBeside ? beside : width);
  const foot = (isBeside ? inside.minY : over) + ROUND;
  const tall = lines.length * NOTE_LEADING;
  const marks = lines.map((line, at) =>
    textMark(
      line,
      { x: inside.minX + ROUND, y: foot + tall - NOTE_LEADING * at - NOTE_HEIGHT },
      { height: NOTE_HEIGHT, role: 'dimension' },
    ),
  );
  return { marks, top: isBeside || lines.length === 0 ? over : foot + tall };
}

type Laid = LaidPicture & { readonly picture: Picture };

/** The rows in the middle of the room; nothing where they do not fit. */
function placeRows(rows: readonly (readonly Laid[])[], room: Box): readonly Mark[] | undefined {
  const places = rows.map((row) => placesInRow(row.map(({ box }) => box)));
  const least = Math.min(...places.flat().map(({ minX }) => minX));
  const wide = Math.max(...places.flat().map(({ maxX }) => maxX)) - least;
  const tall = rows.reduce((sum, row) => sum + rowHeight(row), -APART);
  const [width, height] = [room.maxX - room.minX, room.maxY - room.minY];
  if (wide > width || tall > height) return undefined;
  const aside = room.minX + (width - wide) / 2 - least;
  // A little above the middle, and rows apart by what there is room for.
  const spare = (height - tall) / (rows.length + 1);
  let top = room.maxY - spare * (rows.length > 1 ? 1 : 0.8);
  return rows.flatMap((row, i) => {
    const origin = top - Math.max(...row.map(({ box }) => box.maxY));
    const foot = top - (rowHeight(row) - APART);
    top = foot - APART - spare;
    return row.flatMap(({ picture, marks }, j) => {
      const { origin: x, minX, maxX } = places[i]![j]!;
      const shift = { x: x + aside, y: origin };
      return [
        ...marks.map((mark) => transformMark(mark, { turn: 0, shift, scale: 1, mirrored: false })),
        nameUnder(picture.name, { x: (minX + maxX) / 2 + aside, y: foot }),
      ];
    });
  });
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

const nameUnder = (text: string, at: Vec): Mark =>
  textMark(text, at, { height: NAME_HEIGHT, align: 'middle', weight: 'semibold', role: 'dimension' });
