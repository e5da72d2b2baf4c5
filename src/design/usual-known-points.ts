import type { TypedWood } from './design-schema.ts';

type TypedBoard = NonNullable<TypedWood['boards']>[number];
type KnownPoint = NonNullable<TypedBoard['photographs']>[number]['points'][number];

/** Share of the picture that is left round the board until its points are pulled to where they are. */
const LEFT_ROUND = { x: 0.06, y: 0.3 };

/**
 * Known points to begin with, as if the board lay level in the middle of the picture, its marked end at the left: its four corners, or the
 * middles of its ends. The lower face is seen with the board turned over about its length.
 */
export function usualKnownPoints(
  { length, width }: Pick<TypedBoard, 'length' | 'width'>,
  face: 'upper' | 'lower',
  size: { readonly width: number; readonly height: number },
  count: 2 | 4,
): readonly KnownPoint[] {
  const left = Math.round(size.width * LEFT_ROUND.x);
  const right = size.width - left;
  const top = Math.round(size.height * LEFT_ROUND.y);
  const bottom = size.height - top;
  const [near, far] = face === 'upper' ? [bottom, top] : [top, bottom];
  const none = '0 mm';
  if (count === 2) {
    const middle = Math.round(size.height / 2);
    return [
      { pixel: [left, middle], on: [none, none] },
      { pixel: [right, middle], on: [length, none] },
    ];
  }
  return [
    { pixel: [left, near], on: [none, none] },
    { pixel: [right, near], on: [length, none] },
    { pixel: [right, far], on: [length, width] },
    { pixel: [left, far], on: [none, width] },
  ];
}
