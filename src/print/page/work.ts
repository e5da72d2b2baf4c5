import type { LineRole, Pattern } from '../../drawing/index.ts';
import {
  type Box,
  boundsOfEdges,
  clipEdges,
  type Edge,
  locate,
  type Similarity,
  transformEdge,
} from '../../geometry/index.ts';
import { touches } from './occupied.ts';

/** What will be cut out, on the page: lettering that belongs to the paper is better beside it. */
export interface Work {
  /** How many edges of outlines pass through a box. */
  readonly linesThrough: (box: Box) => number;
  /** Does the middle of a box lie on the work? For boxes that no outline passes through, all of it. */
  readonly holds: (box: Box) => boolean;
  /** Only what comes into a box. */
  readonly near: (box: Box) => Work;
}

const OUTLINES: ReadonlySet<LineRole> = new Set(['part', 'template', 'as-routed']);

export function workOf(pattern: Pattern, by: Similarity): Work {
  const loops = pattern.scene.marks.flatMap((mark) =>
    mark.kind === 'path' && mark.closed && mark.fill === undefined && OUTLINES.has(mark.role)
      ? [{ role: mark.role, edges: mark.edges.map((edge) => transformEdge(edge, by)) }]
      : [],
  );
  return workOfLoops(loops.map((loop) => ({ ...loop, bounds: boundsOfEdges(loop.edges) })));
}

interface Loop {
  readonly role: LineRole;
  readonly edges: readonly Edge[];
  readonly bounds: Box;
}

function workOfLoops(loops: readonly Loop[]): Work {
  return {
    linesThrough: (box) =>
      loops.reduce(
        (sum, { edges, bounds }) =>
          touches(bounds, box) ? sum + edges.filter((edge) => clipEdges([edge], box).length > 0).length : sum,
        0,
      ),
    holds: (box) => {
      const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
      return [...OUTLINES].some((role) => {
        const [first, ...others] = loops.filter((loop) => loop.role === role);
        // Loops of one outline and of its holes turn opposite ways, so that they can be counted together.
        return first !== undefined && locate([{ outer: first, holes: others }], middle) === 'inside';
      });
    },
    near: (box) => workOfLoops(loops.filter(({ bounds }) => touches(bounds, box))),
  };
}
