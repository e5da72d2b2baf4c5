import { usualDepthOfPass } from '../../materials/index.ts';
import type { DepthPlan, DepthRemark, Tooling } from '../api.ts';
import { type LengthWords, lengthWords } from '../words.ts';
import { planBearing } from './plan-bearing.ts';
import { planBushing } from './plan-bushing.ts';

/**
 * How the full thickness (mm) is reached: in one setting where the cutter is long enough, otherwise in more, each shown
 * to have something to run on. Depths are measured from the template's side. A remark with severity `stop` means that
 * no plan is possible. Its words are in millimetres unless others are given.
 */
export function planDepth(thickness: number, tooling: Tooling, say: LengthWords = lengthWords()): DepthPlan {
  const draft =
    tooling.guide.kind === 'bearing'
      ? planBearing(thickness, tooling, tooling.guide, say)
      : planBushing(thickness, tooling, tooling.guide, say);
  const step = usualDepthOfPass(tooling.cutter.diameter);
  const remarks: DepthRemark[] = [
    ...draft.remarks,
    {
      code: 'routing.depth-per-pass',
      severity: 'note',
      words:
        `Depth of a pass is what the makers of cutter and machine allow; half the cutter's diameter up to ${say.about(6)} is usual: ` +
        `${say.length(thickness)} then takes ${Math.ceil(thickness / step)} passes of ${say.length(step)} or less.`,
      measured: thickness,
      limit: step,
    },
  ];
  return { possible: !remarks.some(({ severity }) => severity === 'stop'), passes: draft.passes, remarks };
}
