import {
  add,
  angleOf,
  directionAt,
  type Edge,
  leftOf,
  lengthOf,
  pointAt,
  polar,
  scale,
} from '../../geometry/index.ts';
import type { EdgeOffset } from '../../routing/index.ts';
import type { PatternOptions, TextMark } from '../api.ts';
import { type Drawing, letter, textMark } from '../layout/drawing.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { writeExact } from '../layout/figures.ts';
import { readable } from '../layout/strokes.ts';
import { widthOfText } from '../lettering/metrics.ts';
import type { PatternSource } from './source.ts';

/**
 * Along each routed edge of the template, how far it stands from the part's edge; across an opening, by how much it is
 * wider than the part's. Edges too short for words are left to the list of tooling, which says the same of all of them.
 */
export function drawTemplateLabels(drawing: Drawing, source: PatternSource): void {
  const edges = edgesOf(source.routing.template);
  for (const offset of source.routing.offsets) {
    const own = edges
      .filter((edge) => edge.tag.id === offset.edge)
      .sort((a, b) => lengthOf(b) - lengthOf(a))
      .slice(0, 4);
    const words = offsetWords(offset, source.options.lengths);
    const carries = (edge: Edge, height: number): boolean =>
      lengthOf(edge) >= 0.8 * widthOfText(words, height, 'regular');
    letter(
      drawing,
      [2.5, 1.8].flatMap((height) =>
        own.filter((edge) => carries(edge, height)).flatMap((edge) => alongEdge(edge, words, height)),
      ),
    );
  }
}

/** Where the template stands, in words: `template 3 inside`, `template 6 wider across, 3 at each side`. */
export function offsetWords(
  { offset, across }: Pick<EdgeOffset, 'offset' | 'across'>,
  style: PatternOptions['lengths'],
): string {
  const by = writeExact(Math.abs(offset), style);
  if (offset === 0) return 'template on the line';
  if (across !== undefined) {
    const wide = writeExact(Math.abs(across), style);
    return `template ${wide} ${offset > 0 ? 'wider' : 'narrower'} across, ${by} at each side`;
  }
  return `template ${by} ${offset > 0 ? 'inside' : 'outside'} the part`;
}

/** The words along an edge, in the material first, then in the waste. */
function alongEdge(edge: Edge, words: string, height: number): readonly TextMark[] {
  return [0.5, 0.3, 0.7, 0.15, 0.85].flatMap((t) =>
    [1, -1].map((side) => {
      const direction = directionAt(edge, t);
      const angle = readable(angleOf(direction));
      const out = scale(leftOf(direction), side);
      const up = leftOf(polar(angle));
      const isAbove = up.x * out.x + up.y * out.y > 0;
      const gap = height * (isAbove ? 0.65 : 1.5);
      return textMark(words, add(pointAt(edge, t), scale(out, gap)), {
        height,
        angle,
        align: 'middle',
        role: 'template',
      });
    }),
  );
}
