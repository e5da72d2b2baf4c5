import { THROUGH } from '../../materials/index.ts';
import type { DepthRemark, Pass } from '../api.ts';
import type { LengthWords } from '../words.ts';

/** A plan before what holds for every plan is added. */
export interface DepthDraft {
  readonly passes: readonly Pass[];
  readonly remarks: readonly DepthRemark[];
}

/** A remark where the cutter ends at, or less than a little past, the far face; none where it reaches past it. */
export function fringeRemarks(reach: number, thickness: number, say: LengthWords): DepthRemark[] {
  if (reach >= thickness + THROUGH) return [];
  return [
    {
      code: 'routing.cutter-barely-long',
      severity: 'caution',
      words: `The cutter reaches ${say.length(reach)} into work ${say.length(thickness)} thick and may leave a fringe at the far face.`,
      measured: reach,
      limit: thickness + THROUGH,
      cure: `Use a cutter that cuts at least ${say.length(thickness + THROUGH)}, or trim the fringe by hand.`,
    },
  ];
}
