import type { MadePart, PlacedPart } from '../../base/index.ts';
import { breaksOf } from './breaks-of.ts';
import { isWithin, type Piece } from './broken.ts';
import { partPictures } from './part-pictures.ts';
import type { Picture } from './picture.ts';
import { type Plate, type PlateOptions, type PlateWay, platesOf } from './plate.ts';

/** At a smaller scale than this joints are too small to read: the part is broken, or its ends are drawn again by themselves. */
const READABLE = 1 / 2;
/** Of a part's length that is looked over for what belongs to an end, and shown beside it, mm of the world. */
const END_SHARE = 0.3;
const BESIDE = 25;

/**
 * A part on plates, from its right and square to its face (first angle: the view from the right stands at the left): whole where that can be read,
 * upright or lying, else broken where nothing is to be seen, else whole with its ends larger on plates of their own.
 */
export function platesOfPart(made: MadePart, part: PlacedPart, options: PlateOptions): readonly Plate[] {
  const [face, side] = partPictures(made, part) as readonly [Picture, Picture];
  const broken = [READABLE, 1 / 5].flatMap((scale): readonly PlateWay[] => {
    const pieces = breaksOf([face, side], scale);
    if (pieces === undefined) return [];
    const row = [side, face].map((picture) => ({ ...picture, pieces }));
    return [{ plates: [[row]], most: scale, least: scale }];
  });
  const whole = waysOf(side, face);
  const drawn = platesOf([...whole, ...broken], options);
  if (drawn[0]!.factor >= READABLE) return drawn;
  const ends = [endOf([face, side], 'upper'), endOf([face, side], 'lower')].filter(({ piece }) =>
    [face, side].some(({ dimensions }) => dimensions.some((each) => isWithin(each, piece))),
  );
  const isInEnd = (dimension: Picture['dimensions'][number]): boolean =>
    ends.some(({ piece }) => isWithin(dimension, piece));
  const without = (picture: Picture): Picture => ({
    ...picture,
    dimensions: picture.dimensions.filter((each) => !isInEnd(each)),
  });
  const rows = ends.map(({ name, piece }) =>
    [side, face].map((picture) => ({
      ...picture,
      name: `${name}, ${picture.name.toLowerCase()}`,
      pieces: [piece],
    })),
  );
  const title = { ...options.title, documentType: 'Ends of a part' };
  if (rows.length === 0) return drawn;
  return [
    ...platesOf(waysOf(without(side), without(face)), options),
    ...platesOf([{ plates: [rows], most: READABLE }], { ...options, title }),
  ];
}

/** Beside each other upright, or lying under each other. */
function waysOf(side: Picture, face: Picture): readonly PlateWay[] {
  const lying = [side, face].map((picture) => [{ ...picture, lying: true }]);
  return [
    { plates: [[[side, face]]], most: 1 },
    { plates: [lying], most: 1, lying: true },
  ];
}

/** The end of a part with all that is cut there. */
function endOf(
  pictures: readonly Picture[],
  end: 'upper' | 'lower',
): { readonly name: string; readonly piece: Piece } {
  const heights = pictures.flatMap(({ view }) =>
    view.lines.flatMap(({ edges }) => edges.flatMap(({ from, to }) => [from.y, to.y])),
  );
  const [low, high] = [Math.min(...heights), Math.max(...heights)];
  const share = END_SHARE * (high - low);
  if (end === 'upper') {
    const least = Math.min(...heights.filter((y) => y > high - share));
    return { name: 'Upper end', piece: { from: Math.max(least - BESIDE, high - share), to: Infinity } };
  }
  const most = Math.max(...heights.filter((y) => y < low + share));
  return { name: 'Lower end', piece: { from: -Infinity, to: Math.min(most + BESIDE, low + share) } };
}
