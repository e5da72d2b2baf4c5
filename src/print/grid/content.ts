import { keptFor } from '../../core/index.ts';
import { type Mark, type Pattern, type TextMark, widthOfText } from '../../drawing/index.ts';
import {
  add,
  boundsOfEdge,
  boundsOfEdges,
  type Edge,
  leftOf,
  line,
  polar,
  scale,
  type Vec,
} from '../../geometry/index.ts';

/** Room round a text as shares of the height of capitals: generous, so that no letter is cut. */
const BESIDE = 0.1;
const BELOW_BASELINE = 0.35;
const ABOVE_BASELINE = 1.1;
/** Cosine to the page's x below which lettering counts as running up or down. */
const UPRIGHT = 0.02;
const TEXT_TAG = { id: 'text', role: 'left' } as const;

/** What is laid on sheets of a pattern: linework, and the boxes round texts. */
export interface Content {
  readonly edges: readonly Edge[];
  readonly textBoxes: readonly (readonly Edge[])[];
  readonly texts: readonly TextMark[];
  /** About the middle of it all; patterns are turned about this. */
  readonly centre: Vec;
  /** No content lies farther than this from the centre, mm. */
  readonly reach: number;
}

/** What must be printed of a pattern. A pattern is planned several times over. */
export const contentOf: (pattern: Pattern) => Content = keptFor(({ scene }) =>
  contentOfMarks(scene.marks.filter(({ optional }) => optional === undefined)),
);

/** The same with what may be left out. */
export const wholeContentOf = ({ scene }: Pattern): Content => contentOfMarks(scene.marks);

function contentOfMarks(marks: readonly Mark[]): Content {
  const texts = marks.filter(isText);
  const textBoxes = texts.map(boxRoundText);
  const edges = [...marks.flatMap((mark) => (mark.kind === 'path' ? mark.edges : [])), ...textBoxes.flat()];
  if (edges.length === 0) return { edges, textBoxes, texts, centre: { x: 0, y: 0 }, reach: 0 };
  const box = boundsOfEdges(edges);
  const centre = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
  let reach = 0;
  for (const edge of edges) {
    const { minX, minY, maxX, maxY } = boundsOfEdge(edge);
    const x = Math.max(centre.x - minX, maxX - centre.x);
    const y = Math.max(centre.y - minY, maxY - centre.y);
    reach = Math.max(reach, x * x + y * y);
  }
  return { edges, textBoxes, texts, centre, reach: Math.sqrt(reach) };
}

function isText(mark: Mark): mark is TextMark {
  return mark.kind === 'text';
}

/** Four lines round a text, a little too large rather than too small. */
export function boxRoundText(mark: TextMark): Edge[] {
  const along = polar(mark.angle);
  const up = leftOf(along);
  const width = widthOfText(mark.text, mark.height, mark.weight);
  const room = BESIDE * mark.height;
  const start = mark.align === 'left' ? 0 : mark.align === 'middle' ? -width / 2 : -width;
  const corner = (s: number, t: number): Vec =>
    add(mark.at, add(scale(along, start + s), scale(up, t * mark.height)));
  const corners = [
    corner(-room, -BELOW_BASELINE),
    corner(width + room, -BELOW_BASELINE),
    corner(width + room, ABOVE_BASELINE),
    corner(-room, ABOVE_BASELINE),
  ];
  return corners.map((from, i) => line(from, corners[(i + 1) % 4]!, TEXT_TAG));
}

/** Does more of the lettering stand upright after a half turn more than at this turn, rad? */
export function readsBetterTurned({ texts }: Content, turn: number): boolean {
  let balance = 0;
  for (const { text, height, angle } of texts) {
    const x = Math.cos(angle + turn);
    // Lettering that runs up or down the sheet is to be read from the right.
    const upright = Math.abs(x) > UPRIGHT ? x : Math.sin(angle + turn);
    // Names are larger than notes, and matter more.
    balance += Math.sign(upright) * text.length * height * height;
  }
  return balance < 0;
}
