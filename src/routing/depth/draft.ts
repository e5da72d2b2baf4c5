import { THROUGH } from '../../materials/index.ts';
import type { DepthRemark, Pass } from '../api.ts';
import { mm } from '../words.ts';

/** A plan before what holds for every plan is added. */
export interface DepthDraft {
  readonly passes: readonly Pass[];
  readonly remarks: readonly DepthRemark[];
}

/** A remark where the cutter ends at, or less than a little past, the far face; none where it reaches past it. */
export function fringeRemarks(reach: number, thickness: number): DepthRemark[] {
  if (reach >= thickness + THROUGH) return [];
  return [
    {
      code: 'routing.cutter-barely-long',
      severity: 'caution',
      words: `The cutter reaches ${mm(reach)} into work ${mm(thickness)} thick and may leave a fringe at the far face.`,
      measured: reach,
      limit: thickness + THROUGH,
      cure: `Use a cutter that cuts at least ${mm(thickness + THROUGH)}, or trim the fringe by hand.`,
    },
  ];
}
