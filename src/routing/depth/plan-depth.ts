import { usualDepthOfPass } from '../../materials/index.ts';
import type { DepthPlan, DepthRemark, Tooling } from '../api.ts';
import { mm } from '../words.ts';
import { planBearing } from './plan-bearing.ts';
import { planBushing } from './plan-bushing.ts';

/**
 * How the full thickness (mm) is reached: in one setting where the cutter is long enough, otherwise in more, each shown
 * to have something to run on. Depths are measured from the template's side. A remark with severity `stop` means that
 * no plan is possible.
 */
export function planDepth(thickness: number, tooling: Tooling): DepthPlan {
  const draft =
    tooling.guide.kind === 'bearing'
      ? planBearing(thickness, tooling, tooling.guide)
      : planBushing(thickness, tooling, tooling.guide);
  const step = usualDepthOfPass(tooling.cutter.diameter);
  const remarks: DepthRemark[] = [
    ...draft.remarks,
    {
      code: 'routing.depth-per-pass',
      severity: 'note',
      words:
        `Depth of a pass is what the makers of cutter and machine allow; half the cutter's diameter up to 6 mm is usual: ` +
        `${mm(thickness)} then takes ${Math.ceil(thickness / step)} passes of ${mm(step)} or less.`,
      measured: thickness,
      limit: step,
    },
  ];
  return { possible: !remarks.some(({ severity }) => severity === 'stop'), passes: draft.passes, remarks };
}
