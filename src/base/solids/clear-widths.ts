import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { Box3, Solid, SolidKernel } from './api.ts';
import { woodWithin } from './wood-within.ts';

/** A stretch free of wood, mm. */
export interface ClearWidth {
  readonly from: number;
  readonly to: number;
  readonly width: number;
  /** The parts that bound it; none where the box ends. */
  readonly before?: string;
  readonly after?: string;
}

/**
 * The stretches along x or y in which a box of the world is free of wood through and through: what goes in there between legs. They are
 * told in order, those at the ends of the box as well.
 */
export function clearWidths(
  kernel: SolidKernel,
  solids: readonly Solid[],
  box: Box3,
  along: 'x' | 'y',
): readonly ClearWidth[] {
  const pieces = woodWithin(kernel, solids, box)
    .map(({ part, bounds }) => ({ part, from: bounds.min[along], to: bounds.max[along] }))
    .toSorted((p, q) => p.from - q.from);
  const found: ClearWidth[] = [];
  let [from, before] = [box.min[along], undefined as string | undefined];
  const close = (to: number, after: string | undefined): void => {
    if (to - from < POSITION_TOLERANCE) return;
    const ends = { ...(before !== undefined && { before }), ...(after !== undefined && { after }) };
    found.push({ from, to, width: to - from, ...ends });
  };
  for (const piece of pieces) {
    close(piece.from, piece.part);
    if (piece.to > from) [from, before] = [piece.to, piece.part];
  }
  close(box.max[along], undefined);
  return found;
}
