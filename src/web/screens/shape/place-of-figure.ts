import type { ScreenFigure } from '../../engine/answers/picture.ts';

type Lettered = ScreenFigure['text'];
/** Width of a digit and height of capitals as shares of the size of the text, about. */
const WIDTH = 0.5;
const HEIGHT = 0.7;
const STARTS = { start: 0, middle: -0.5, end: -1 } as const;

/** The middle of a figure's lettering, about, in the scene. */
export function middleOf({ text, size, anchor, turn, x, y }: Lettered): {
  readonly x: number;
  readonly y: number;
} {
  const along = (STARTS[anchor] + 0.5) * WIDTH * text.length * size;
  const up = (HEIGHT / 2) * size;
  const rad = (turn * Math.PI) / 180;
  return {
    x: x + along * Math.cos(rad) + up * Math.sin(rad),
    y: y + along * Math.sin(rad) - up * Math.cos(rad),
  };
}

/** What is to be hit for a figure, before it is turned and moved to its place: at least `least` each way, in units of the scene. */
export function reachOf({ text, size, anchor }: Lettered, least: number) {
  const own = WIDTH * text.length * size;
  const width = Math.max(own, least);
  const height = Math.max(HEIGHT * size, least);
  const middle = (STARTS[anchor] + 0.5) * own;
  return { x: middle - width / 2, y: (-HEIGHT / 2) * size - height / 2, width, height };
}
