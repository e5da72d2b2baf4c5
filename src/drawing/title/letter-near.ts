import type { Vec } from '../../geometry/index.ts';
import type { Mark, TextMark } from '../api.ts';
import { createDrawing, fits, textMark } from '../layout/drawing.ts';
import { boundsOfMarks } from '../scene/bounds-of-marks.ts';

/** Words that belong to a place of a sketch. */
export interface NearWords {
  readonly text: string;
  readonly at: Vec;
}

/** Places tried round the wanted one: mm from it, and how many on each ring. */
const RINGS = [0, 1.5, 3, 4.5, 6, 8, 10, 13, 16, 20, 25, 30] as const;
const AROUND = 16;

/** Lettering as near to its places as it finds room clear of all lines and of other lettering; where there is none, at its place. */
export function letterNear(
  lines: readonly Mark[],
  words: readonly NearWords[],
  height: number,
): readonly TextMark[] {
  const { minX, minY, maxX, maxY } = boundsOfMarks(lines);
  const drawing = createDrawing(Math.max(maxX - minX, maxY - minY));
  drawing.draw(lines);
  return words.map(({ text, at }) => {
    const candidates = [...placesRound(at)].map((place) =>
      textMark(text, { x: place.x, y: place.y - height / 2 }, { align: 'middle', height, role: 'dimension' }),
    );
    const placed = candidates.find((mark) => fits(drawing, mark)) ?? candidates[0]!;
    drawing.draw([placed]);
    return placed;
  });
}

function* placesRound(at: Vec): Generator<Vec> {
  for (const far of RINGS) {
    const count = far === 0 ? 1 : AROUND;
    for (let i = 0; i < count; i++) {
      const angle = (2 * Math.PI * i) / AROUND;
      yield { x: at.x + far * Math.cos(angle), y: at.y + far * Math.sin(angle) };
    }
  }
}
