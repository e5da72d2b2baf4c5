import { type Vec, vec } from '../../geometry/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Board } from '../../wood/index.ts';
import type { Mark } from '../api.ts';
import { pathMark, textMark } from '../layout/drawing.ts';
import { writeLength } from '../layout/figures.ts';
import { narrowHead, polygon, strokes } from '../layout/strokes.ts';

const LETTERS = 2.5;
const AWAY = 8;

/** Length and width of a board beside it, the mark of its marked end, and a scale bar in both systems of units. */
export function boardSizes(board: Board, scale: number, lengths: LengthStyle): readonly Mark[] {
  const long = board.length * scale;
  const wide = board.width * scale;
  return [
    ...dimension(vec(0, -AWAY), vec(long, -AWAY), writeLength(board.length, lengths), [
      vec(0, 0),
      vec(long, 0),
    ]),
    ...dimension(vec(long + AWAY, 0), vec(long + AWAY, wide), writeLength(board.width, lengths), [
      vec(long, 0),
      vec(long, wide),
    ]),
    pathMark('reference', polygon([vec(-1.5, 0), vec(-5, wide / 2), vec(-1.5, wide)]), true),
    textMark('marked end', vec(-6.5, wide / 2), {
      height: LETTERS,
      angle: Math.PI / 2,
      align: 'middle',
      role: 'dimension',
    }),
    ...scaleBar(vec(0, -AWAY - 10), scale, [500, '500 mm']),
    ...scaleBar(vec(0, -AWAY - 16), scale, [609.6, '24 in']),
  ];
}

function dimension(from: Vec, to: Vec, figure: string, feet: readonly [Vec, Vec]): readonly Mark[] {
  const isLevel = from.y === to.y;
  const ahead = isLevel ? vec(1, 0) : vec(0, 1);
  const middle = vec((from.x + to.x) / 2, (from.y + to.y) / 2);
  const ends = [from, to].map((end, i) => {
    const past = isLevel ? vec(end.x, end.y - 1.5) : vec(end.x + 1.5, end.y);
    const near = isLevel ? vec(feet[i]!.x, feet[i]!.y - 1) : vec(feet[i]!.x + 1, feet[i]!.y);
    return pathMark('extension', strokes([near, past]));
  });
  return [
    ...ends,
    pathMark('dimension', strokes([from, to])),
    narrowHead('dimension', to, ahead),
    narrowHead('dimension', from, { x: -ahead.x, y: -ahead.y }),
    textMark(figure, isLevel ? vec(middle.x, middle.y + 1) : vec(middle.x - 1, middle.y), {
      height: LETTERS,
      angle: isLevel ? 0 : Math.PI / 2,
      align: 'middle',
      role: 'dimension',
    }),
  ];
}

function scaleBar(at: Vec, scale: number, [size, words]: readonly [number, string]): readonly Mark[] {
  const end = vec(at.x + size * scale, at.y);
  return [
    pathMark('mark', strokes([vec(at.x, at.y + 1.5), at, end, vec(end.x, end.y + 1.5)])),
    textMark(words, vec(end.x + 1.5, end.y), { height: 1.8, role: 'dimension' }),
  ];
}
