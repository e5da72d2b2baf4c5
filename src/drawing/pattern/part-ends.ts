import { angleOf, directionAt, type Edge, type EdgeRole, lengthOf, pointAt } from '../../geometry/index.ts';
import type { TextMark } from '../api.ts';
import { type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { readable, step } from '../layout/strokes.ts';
import { drawLeader } from './leader.ts';
import type { PatternSource } from './source.ts';

const WORDS: Readonly<Record<Exclude<EdgeRole, 'routed'>, string>> = {
  sawn: 'end of the part',
  joint: 'edge of the part at a joint',
  left: 'edge of the part',
};
/** A shorter edge, mm, is drawn without words where they find no room along it. */
const LEAST = 12;

/**
 * The edges of the part that are not routed, thin, where they lie under the template: it runs on past them, and is laid
 * on the blank by them.
 */
export function drawPartEnds(drawing: Drawing, source: PatternSource): void {
  const ends = edgesOf([source.part.region]).flatMap((edge) => {
    const { role } = edge.tag;
    return role === 'routed' ? [] : [{ edge, words: WORDS[role] }];
  });
  drawing.draw(ends.map(({ edge }) => pathMark('thin', [edge])));
  for (const { edge, words } of ends) {
    if (letter(drawing, alongEdge(edge, words))) continue;
    const isLong = lengthOf(edge) >= LEAST;
    if (isLong) drawLeader(drawing, pointAt(edge, 0.5), words, { height: 1.8 });
  }
}

/** Beside the edge, on the part's side first, wherever the words are no longer than it. */
function* alongEdge(edge: Edge, words: string): Generator<TextMark> {
  for (const height of [2.5, 1.8]) {
    for (const t of [0.5, 0.3, 0.7]) {
      const direction = directionAt(edge, t);
      const angle = readable(angleOf(direction));
      const at = pointAt(edge, t);
      for (const side of [1, -1]) {
        const isAbove = side * Math.cos(angle - angleOf(direction)) > 0;
        const foot = step(at, direction, 0, side * (isAbove ? 0.9 : 0.9 + height));
        yield textMark(words, foot, { height, angle, align: 'middle', role: 'thin' });
      }
    }
  }
}
