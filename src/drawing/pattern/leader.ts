import { polar, type Vec } from '../../geometry/index.ts';
import type { LineRole } from '../api.ts';
import { type Drawing, fits, pathMark, textMark } from '../layout/drawing.ts';
import { narrowHead, step, stroke } from '../layout/strokes.ts';

export interface LeaderOptions {
  /** Directions tried first, rad; then all round. */
  readonly directions?: readonly number[];
  readonly role?: LineRole;
  readonly height?: number;
  /** Longest leader tried, mm. */
  readonly longest?: number;
  /** `arrow` at a line, `none` at a place. */
  readonly end?: 'arrow' | 'none';
}

const LENGTHS = [7, 11, 16, 22, 30, 40, 55, 75] as const;
const AROUND = 24;

/**
 * Words at the end of a thin line that points at a place: as near as there is room for them. False when there is none
 * within 75 mm.
 */
export function drawLeader(drawing: Drawing, at: Vec, text: string, options: LeaderOptions = {}): boolean {
  const { role = 'dimension', height = 2.5, end = 'arrow', longest = Infinity } = options;
  const around = Array.from({ length: AROUND }, (_, i) => ((i + 0.5) * 2 * Math.PI) / AROUND);
  for (const length of LENGTHS) {
    if (length > longest) break;
    for (const direction of [...(options.directions ?? []), ...around]) {
      const away = polar(direction);
      const elbow = step(at, away, length);
      const right = away.x >= 0;
      const shelf = { x: elbow.x + (right ? 2 : -2), y: elbow.y };
      const words = textMark(
        text,
        { x: shelf.x + (right ? 0.8 : -0.8), y: shelf.y - height / 2 },
        { height, align: right ? 'left' : 'right', role },
      );
      if (!fits(drawing, words)) continue;
      if (!drawing.occupancy.isClearOfBoxes(at, elbow)) continue;
      if (!drawing.occupancy.isClearOfBoxes(elbow, shelf)) continue;
      drawing.draw([
        pathMark('thin', [stroke(at, elbow), stroke(elbow, shelf)]),
        ...(end === 'arrow' ? [narrowHead('thin', at, { x: -away.x, y: -away.y }, 2.5)] : []),
        words,
      ]);
      return true;
    }
  }
  return false;
}
