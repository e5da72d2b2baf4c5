import { type Mark, pictorialOf, sceneForScreen } from '../../../drawing/index.ts';
import { boundsOfEdges, joinBoxes } from '../../../geometry/index.ts';
import type { Thumbnail } from '../../store/database.ts';
import { type Answering, madeOf } from './answering.ts';

/** A small picture for the list of designs: the base as one sees it in the room, or the outlines of its parts. */
export function thumbnail({ computed }: Answering, _: undefined): Thumbnail | undefined {
  if (computed === undefined) return undefined;
  const { base, parts } = computed;
  return madeOf(base ?? parts, 'thumbnail', () => {
    if (base !== undefined) {
      return picture(
        pictorialOf(base.base.parts).view.lines.map(({ edges }) => ({ ...LINE, edges, closed: false })),
      );
    }
    const outlines = parts
      .slice(0, 1)
      .flatMap(({ part: { region } }) =>
        [region.outer, ...region.holes].map(({ edges }): Mark => ({ ...LINE, edges, closed: true })),
      );
    return picture(outlines);
  });
}

const LINE = { kind: 'path', role: 'visible' } as const;
/** Share of its size left round the picture. */
const AIR = 0.06;

function picture(marks: readonly Mark[]): Thumbnail {
  const bounds = marks
    .flatMap((mark) => (mark.kind === 'path' ? [boundsOfEdges(mark.edges)] : []))
    .reduce(joinBoxes);
  const { lines, box } = sceneForScreen({ marks, box: bounds });
  const air = AIR * Math.max(box.width, box.height);
  return {
    box: `${box.x - air} ${box.y - air} ${box.width + 2 * air} ${box.height + 2 * air}`,
    data: lines.map(({ data }) => data).join(''),
  };
}
