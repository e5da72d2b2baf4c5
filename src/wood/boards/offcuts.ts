import {
  areaOfRegions,
  type Box,
  offsetRegions,
  type Region,
  subtractRegions,
} from '../../geometry/index.ts';
import type { Board, Laid, LayRules } from './api.ts';
import { boardRegion } from './board-region.ts';
import { largestRectangle } from './largest-rectangle.ts';

/** What is left of a board in one piece. */
export interface Offcut {
  readonly region: Region;
  /** mm². */
  readonly area: number;
  /** The largest rectangle along the board in it that is clear of defects, mm; absent when none is as wide as what counts as useful. */
  readonly rectangle?: Box;
}

/** mm: what is narrower is firewood. Common practice. */
export const LEAST_USEFUL = 40;

/**
 * The offcuts of a board once everything on it is sawn out, the saw's own room taken off, largest useful rectangle first. Slivers in
 * which nothing useful is left and that are smaller than such a square are not named.
 */
export function offcutsOf(
  board: Board,
  laid: readonly Laid[],
  { between, allowed }: Pick<LayRules, 'between' | 'allowed'>,
  least = LEAST_USEFUL,
): readonly Offcut[] {
  const solid = laid.map(({ blank }) => ({ outer: blank.outer, holes: [] }));
  const sawn = between > 0 ? solid.flatMap((blank) => offsetRegions([blank], between)) : solid;
  const left = subtractRegions([boardRegion(board)], sawn);
  const bad = board.defects.filter(({ kind }) => !allowed.includes(kind)).map(({ region }) => region);
  const offcuts = left.map((region) => {
    const sound = bad.length === 0 ? [region] : subtractRegions([region], bad);
    const rectangle = largest(sound.map((one) => largestRectangle(one, least)));
    return { region, area: areaOfRegions([region]), ...(rectangle === undefined ? {} : { rectangle }) };
  });
  return offcuts
    .filter(({ rectangle, area }) => rectangle !== undefined || area >= least * least)
    .sort((a, b) => areaOfBox(b.rectangle) - areaOfBox(a.rectangle) || b.area - a.area);
}

function largest(boxes: readonly (Box | undefined)[]): Box | undefined {
  return boxes.reduce((best, box) => (areaOfBox(box) > areaOfBox(best) ? box : best), undefined);
}

function areaOfBox(box: Box | undefined): number {
  return box === undefined ? 0 : (box.maxX - box.minX) * (box.maxY - box.minY);
}
