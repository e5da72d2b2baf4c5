import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import { BEARING, PASS_OVERLAP, THROUGH } from '../../materials/index.ts';
import type { DepthRemark, Guide, Pass, Tooling } from '../api.ts';
import { templateSideOf } from '../template-side.ts';
import type { LengthWords } from '../words.ts';
import { type DepthDraft, fringeRemarks } from './draft.ts';

type Bearing = Extract<Guide, { kind: 'bearing' }>;

/** One setting where the cutter covers the work, otherwise a second with the bearing on the face cut by the first. */
export function planBearing(
  thickness: number,
  tooling: Tooling,
  bearing: Bearing,
  say: LengthWords,
): DepthDraft {
  const { cutter, templateThickness } = tooling;
  const remarks = contactRemarks(templateThickness, say);
  const side = templateSideOf(tooling);
  const first: Pass = {
    from: 0,
    to: Math.min(thickness, cutter.cuttingLength),
    guideOn: 'template',
    turned: false,
    words: `Template ${side} the work, bearing at the ${bearing.at} on the template.`,
  };
  if (cutter.cuttingLength >= thickness) {
    const more = [
      ...fringeRemarks(cutter.cuttingLength, thickness, say),
      ...overhangRemarks(thickness, tooling, bearing, say),
    ];
    return { passes: [first], remarks: [...remarks, ...more] };
  }
  const why = refusals(thickness, tooling, bearing, say);
  if (why.some(({ severity }) => severity === 'stop')) return { passes: [], remarks: [...remarks, ...why] };
  // The bearing sits whole on the cut face where it can; the two settings overlap, and the second reaches through.
  const from = Math.min(
    cutter.cuttingLength - PASS_OVERLAP,
    Math.max(BEARING.height, thickness + THROUGH - cutter.cuttingLength),
  );
  const second: Pass = {
    from,
    to: thickness,
    guideOn: 'cut face',
    turned: false,
    words:
      `Take the template off, move the cutter ${say.length(from)} ${bearing.at === 'shank' ? 'deeper' : 'back'} and let the ` +
      `bearing run on the face just cut. (Or turn the work over and follow that face with the bearing at the other end ` +
      `of a cutter.)`,
  };
  const words =
    `${say.length(thickness)} is more than the ${say.length(cutter.cuttingLength)} that the cutter cuts: two settings, the second on ` +
    `the face cut by the first.`;
  const note: DepthRemark = {
    code: 'routing.two-passes',
    severity: 'note',
    words,
    measured: thickness,
    limit: cutter.cuttingLength,
  };
  return { passes: [first, second], remarks: [...remarks, ...why, note] };
}

/** Is there enough template under the bearing? */
function contactRemarks(templateThickness: number, say: LengthWords): DepthRemark[] {
  if (templateThickness >= BEARING.height) return [];
  const isOff = templateThickness < BEARING.leastContact;
  return [
    {
      code: 'routing.template-too-thin',
      severity: isOff ? 'stop' : 'caution',
      words: `A template of ${say.length(templateThickness)} gives the bearing too little to run on.`,
      measured: templateThickness,
      limit: isOff ? BEARING.leastContact : BEARING.height,
      cure: `Use a template at least ${say.length(BEARING.height)} thick, better ${say.about(12)}.`,
    },
  ];
}

/** How far the cutter must stand out past the far face so that the bearing still has the template beside it. */
function overhangRemarks(
  thickness: number,
  tooling: Tooling,
  bearing: Bearing,
  say: LengthWords,
): DepthRemark[] {
  const { cutter, templateThickness } = tooling;
  if (bearing.at === 'tip') return [];
  // A cutter larger than its bearing must not rise beside the template: it would cut it.
  const mayRise =
    bearing.diameter >= cutter.diameter ? Math.max(0, templateThickness - BEARING.leastContact) : 0;
  const out = cutter.cuttingLength - mayRise - thickness;
  if (out <= THROUGH) return [];
  return [
    {
      code: 'routing.cutter-stands-out',
      severity: 'note',
      words: `With the bearing on the template the cutter stands out ${say.length(out)} past the far face of the work.`,
      measured: out,
      limit: THROUGH,
      cure: `Let the edge hang over the bench, or lay the work on waste at least ${say.length(out + THROUGH)} thick.`,
    },
  ];
}

/** Why a cutter shorter than the work cannot do it in two settings, or what must be seen to first. */
function refusals(thickness: number, tooling: Tooling, bearing: Bearing, say: LengthWords): DepthRemark[] {
  const { cutter } = tooling;
  const stop = (words: string, measured: number, limit: number, cure: string): DepthRemark => ({
    code: 'routing.cutter-too-short',
    severity: 'stop',
    words,
    measured,
    limit,
    cure,
  });
  const whole = say.length(thickness + THROUGH);
  const half = (thickness + THROUGH + PASS_OVERLAP) / 2;
  if (cutter.cuttingLength < half) {
    return [
      stop(
        `The cutter cuts ${say.length(cutter.cuttingLength)}; ${say.length(thickness)} of work cannot be reached in two settings.`,
        cutter.cuttingLength,
        half,
        `A cutter of at least ${say.length(half)} does it in two settings, one of ${whole} in one.`,
      ),
    ];
  }
  if (Math.abs(bearing.diameter - cutter.diameter) > 2 * POSITION_TOLERANCE) {
    return [
      stop(
        `The cutter cuts ${say.length(cutter.cuttingLength)} of ${say.length(thickness)}, and a second setting on the cut face would ` +
          `stand off by ${say.length(Math.abs(bearing.diameter - cutter.diameter) / 2)}: the bearing is not as large as the cutter.`,
        cutter.cuttingLength,
        thickness + THROUGH,
        `Use a cutter of at least ${whole}, or one with a bearing of ${say.length(cutter.diameter)}.`,
      ),
    ];
  }
  if (cutter.cuttingLength - PASS_OVERLAP < BEARING.leastContact) {
    return [
      stop(
        `The first setting leaves a face of ${say.length(cutter.cuttingLength)}: too little for the bearing to run on.`,
        cutter.cuttingLength,
        BEARING.leastContact + PASS_OVERLAP,
        `Use a cutter of at least ${whole}.`,
      ),
    ];
  }
  return bearing.at === 'tip' ? shankRemarks(tooling, stop, whole, say) : [];
}

/** With the bearing at the tip the first setting carries the shank past wood that is not cut yet. */
function shankRemarks(
  { cutter, sawAllowance }: Tooling,
  stop: (words: string, measured: number, limit: number, cure: string) => DepthRemark,
  whole: string,
  say: LengthWords,
): DepthRemark[] {
  const most = cutter.diameter - 2 * sawAllowance;
  if (cutter.shank === undefined) {
    return [
      {
        code: 'routing.shank-unknown',
        severity: 'caution',
        words:
          `In the first setting the shank passes wood that stands ${say.length(sawAllowance)} outside the line; it is clear only ` +
          `if it is thinner than ${say.length(most)}, and its size is not given.`,
        measured: cutter.diameter,
        limit: most,
        cure: `Measure the shank, or use a cutter of at least ${whole}.`,
      },
    ];
  }
  if (cutter.shank < most) return [];
  return [
    stop(
      `In the first setting the ${say.length(cutter.shank)} shank would rub on wood that stands ${say.length(sawAllowance)} outside the line.`,
      cutter.shank,
      most,
      `Use a cutter of at least ${whole}, or one with its bearing at the shank.`,
    ),
  ];
}
