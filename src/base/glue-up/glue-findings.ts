import type { Finding } from '../../core/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../../measure/index.ts';
import type { Joint } from '../joints/api.ts';
import type { GlueStep } from './api.ts';

/** Joints of a step that do not run in the way in which it closes, said once for each kind of joint. */
export function glueFindings(
  steps: readonly GlueStep[],
  joints: readonly Joint[],
  lengths: LengthStyle,
): readonly Finding[] {
  const askew = steps
    .flatMap(({ groups }) => groups)
    .flatMap(({ clamps }) => clamps)
    .flatMap((clamp) => clamp.askew);
  const seen = new Set<string>();
  return askew.flatMap(({ joint, angle, sideways }): readonly Finding[] => {
    const { name, label } = joints.find(({ id }) => id === joint)!;
    if (seen.has(name)) return [];
    seen.add(name);
    const turned = formatAngle(angle, { unit: 'deg', decimals: 1 });
    return [
      {
        code: 'glue.askew',
        severity: 'note',
        edges: [],
        message: `${label}: tenons or dowels run ${turned} off the way in which the parts close, ${formatLength(sideways, lengths)} sideways over their depth.`,
        measured: { value: sideways, unit: 'mm' },
        limit: { value: 0, unit: 'mm' },
        cure: `Ease the mortises by ${formatLength(sideways, lengths)} on that side, or close this joint by itself first.`,
      },
    ];
  });
}
