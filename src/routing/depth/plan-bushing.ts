import { BUSHING, PASS_OVERLAP, THROUGH } from '../../materials/index.ts';
import type { DepthRemark, Guide, Pass, Tooling } from '../api.ts';
import { templateSideOf } from '../template-side.ts';
import type { LengthWords } from '../words.ts';
import { type DepthDraft, fringeRemarks } from './draft.ts';

type Bushing = Extract<Guide, { kind: 'bushing' }>;

/** Nobody goes down in more settings than this; a cutter that would need them is the wrong one. */
const MOST_SETTINGS = 8;

/** The bushing stays on the template at every depth; a cutter shorter than the work follows its own cut down. */
export function planBushing(
  thickness: number,
  tooling: Tooling,
  bushing: Bushing,
  say: LengthWords,
): DepthDraft {
  const { cutter, templateThickness } = tooling;
  const side = templateSideOf(tooling);
  const remarks = barrelRemarks(bushing, templateThickness, say);
  const long = cutter.cuttingLength;
  const passes: Pass[] = [
    {
      from: 0,
      to: Math.min(thickness, long),
      guideOn: 'template',
      turned: false,
      words: `Template ${side} the work, bushing on the template.`,
    },
  ];
  if (long >= thickness) return { passes, remarks: [...remarks, ...fringeRemarks(long, thickness, say)] };
  const rest = shankRemarks(thickness, tooling, say);
  if (rest.some(({ severity }) => severity === 'stop')) return { passes: [], remarks: [...remarks, ...rest] };
  let reached = long;
  while (reached < thickness) {
    const from = Math.min(reached - PASS_OVERLAP, thickness + THROUGH - long);
    reached = from + long;
    passes.push({
      from,
      to: Math.min(thickness, reached),
      guideOn: 'template',
      turned: false,
      words: `Template left on, cutter lowered to ${say.length(Math.min(thickness, reached))} below it.`,
    });
  }
  return { passes, remarks: [...remarks, ...rest] };
}

/** A barrel longer than the template stands on the work and lifts the machine off the template. */
function barrelRemarks(
  { barrelLength }: Bushing,
  templateThickness: number,
  say: LengthWords,
): DepthRemark[] {
  const limit = templateThickness - BUSHING.barrelShortBy;
  if (barrelLength <= limit) return [];
  return [
    {
      code: 'routing.barrel-too-long',
      severity: barrelLength >= templateThickness ? 'stop' : 'caution',
      words: `The bushing's barrel of ${say.length(barrelLength)} is not shorter than the template of ${say.length(templateThickness)}.`,
      measured: barrelLength,
      limit,
      cure:
        `Use a template of at least ${say.length(barrelLength + BUSHING.barrelShortBy)}` +
        (limit > 0 ? `, or shorten the barrel to ${say.length(limit)}.` : '.'),
    },
  ];
}

/** Below its own length the cutter's shank follows it into the cut. */
function shankRemarks(
  thickness: number,
  { cutter, templateThickness }: Tooling,
  say: LengthWords,
): DepthRemark[] {
  const out = templateThickness + thickness + THROUGH;
  const shared = { measured: cutter.cuttingLength, limit: thickness + THROUGH };
  const whole = `Use a cutter that cuts at least ${say.length(thickness + THROUGH)}`;
  const isShort = cutter.cuttingLength < PASS_OVERLAP + thickness / MOST_SETTINGS;
  if (isShort || (cutter.shank ?? 0) > cutter.diameter) {
    return [
      {
        code: 'routing.cutter-too-short',
        severity: 'stop',
        words:
          `The cutter cuts ${say.length(cutter.cuttingLength)} of ${say.length(thickness)}, ` +
          (isShort ? 'far too little.' : 'and its shank is too thick to follow it into the cut.'),
        ...shared,
        cure: `${whole}.`,
      },
    ];
  }
  const isKnown = cutter.shank !== undefined;
  return [
    {
      code: isKnown ? 'routing.more-passes' : 'routing.shank-unknown',
      severity: isKnown ? 'note' : 'caution',
      words:
        `The cutter cuts ${say.length(cutter.cuttingLength)} of ${say.length(thickness)}: its shank follows it into the cut` +
        (isKnown ? '' : `, which it can only if it is no thicker than ${say.length(cutter.diameter)}`) +
        `. It must stand out ${say.length(out)} from the machine's base.`,
      ...shared,
      cure: `${whole}, or see that the shank is no thicker than the cutter and long enough.`,
    },
  ];
}
