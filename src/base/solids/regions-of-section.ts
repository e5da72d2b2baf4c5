import type { CrossSection } from 'manifold-3d';
import { type EdgeTag, POSITION_TOLERANCE, polygonOutline, type Region } from '../../geometry/index.ts';
import { withScratch } from './scratch.ts';

/** A flat section as regions, every edge with one tag. Corners nearer to each other than POSITION_TOLERANCE become one. */
export function regionsOfSection(section: CrossSection, tag: EdgeTag): readonly Region[] {
  return withScratch((keep) =>
    keep(section.simplify(POSITION_TOLERANCE))
      .decompose()
      .map((piece) => {
        // Each piece comes with its outer loop and its holes, told apart by how they run.
        const loops = keep(piece)
          .toPolygons()
          .map((loop) => loop.map(([x, y]) => ({ x, y })));
        const outer = loops.find((loop) => twiceArea(loop) > 0)!;
        const holes = loops.filter((loop) => loop !== outer);
        return {
          outer: polygonOutline(outer, tag),
          holes: holes.map((hole) => polygonOutline(hole, tag)),
        };
      }),
  );
}

function twiceArea(loop: readonly { readonly x: number; readonly y: number }[]): number {
  return loop.reduce((sum, p, at) => {
    const q = loop[(at + 1) % loop.length]!;
    return sum + p.x * q.y - p.y * q.x;
  }, 0);
}
