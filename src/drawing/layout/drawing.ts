import type { Edge } from '../../geometry/index.ts';
import type { Mark, PathMark, TextMark } from '../api.ts';
import { createOccupancy, type Occupancy } from './occupancy.ts';
import { boxOfText, growBox } from './oriented-box.ts';

/** A drawing while it is laid out: the marks so far and the room they take. Lives as long as one call. */
export interface Drawing {
  readonly occupancy: Occupancy;
  /** Adds marks and keeps later lettering off them. */
  readonly draw: (marks: readonly Mark[]) => void;
  /** Adds marks that lettering may stand on: washes, hatching, lines that give way. */
  readonly drawUnder: (marks: readonly Mark[]) => void;
  /** Marks drawn in this step may be left out together (`optional` in the marks). */
  readonly asOptional: <T>(name: string, step: () => T) => T;
  readonly marks: () => readonly Mark[];
}

/** `span`: about how far the drawing will reach, mm. */
export function createDrawing(span: number): Drawing {
  const occupancy = createOccupancy(span);
  const marks: Mark[] = [];
  return {
    occupancy,
    draw: (added) => {
      for (const mark of added) {
        marks.push(mark);
        if (mark.kind === 'path') occupancy.addEdges(mark.edges);
        else occupancy.addBox(boxOfText(mark));
      }
    },
    drawUnder: (added) => {
      marks.push(...added);
    },
    asOptional: (name, step) => {
      const before = marks.length;
      const outcome = step();
      for (let i = before; i < marks.length; i++) marks[i] = { ...marks[i]!, optional: name };
      return outcome;
    },
    marks: () => marks,
  };
}

/** White kept round a text, in heights of its capitals. */
const AIR = 0.22;

/** Is there room for the text, with a little white round it? */
export function fits(drawing: Drawing, mark: TextMark): boolean {
  return drawing.occupancy.isFree(growBox(boxOfText(mark), AIR * mark.height));
}

/** Draws the first of the texts that finds room; false when none does. */
export function letter(drawing: Drawing, candidates: Iterable<TextMark>): boolean {
  for (const mark of candidates) {
    if (fits(drawing, mark)) {
      drawing.draw([mark]);
      return true;
    }
  }
  return false;
}

export function pathMark(role: PathMark['role'], edges: readonly Edge[], closed = false): PathMark {
  return { kind: 'path', role, edges, closed };
}

export function textMark(
  text: string,
  at: TextMark['at'],
  how: Partial<Omit<TextMark, 'kind' | 'text' | 'at'>> = {},
): TextMark {
  return {
    kind: 'text',
    text,
    at,
    height: 2.5,
    angle: 0,
    align: 'left',
    weight: 'regular',
    role: 'mark',
    ...how,
  };
}
