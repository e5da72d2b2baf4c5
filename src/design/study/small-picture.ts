import { CAMERAS, type Mark, pictorialOf, type Scene } from '../../drawing/index.ts';
import {
  boundsOfEdges,
  boundsOfRegions,
  joinBoxes,
  moveBy,
  type Region,
  transformRegion,
  turnBy,
} from '../../geometry/index.ts';
import type { Computed } from '../computed.ts';

/** From where a small picture sees a base: standing in the room, or square to it. */
export type SmallSide = 'room' | 'front' | 'left' | 'plan';

/** Room between parts laid side by side, as a share of the widest. */
const BETWEEN = 0.15;

const LINE = { kind: 'path', role: 'visible' } as const;

/** The base seen from a side, without figures; or the outlines of the parts as they stand, side by side. mm; all of one side to one scale. */
export function smallPicture({ base, parts }: Pick<Computed, 'base' | 'parts'>, side: SmallSide): Scene {
  const marks =
    base === undefined
      ? sideBySide(parts.map(({ part }) => transformRegion(part.region, turnBy(Math.PI / 2 - part.up))))
      : pictorialOf(base.base.parts, side === 'room' ? undefined : CAMERAS[side]).view.lines.map(
          ({ edges }): Mark => ({ ...LINE, edges, closed: false }),
        );
  const boxes = marks.flatMap((mark) => (mark.kind === 'path' ? [boundsOfEdges(mark.edges)] : []));
  return { marks, box: boxes.reduce(joinBoxes) };
}

function sideBySide(regions: readonly Region[]): readonly Mark[] {
  const widest = Math.max(...regions.map((region) => widthOf(region)));
  let left = 0;
  return regions.flatMap((region) => {
    const { minX } = boundsOfRegions([region]);
    const moved = transformRegion(region, moveBy(left - minX, 0));
    left += widthOf(region) + BETWEEN * widest;
    return [moved.outer, ...moved.holes].map(({ edges }): Mark => ({ ...LINE, edges, closed: true }));
  });
}

function widthOf(region: Region): number {
  const { minX, maxX } = boundsOfRegions([region]);
  return maxX - minX;
}
