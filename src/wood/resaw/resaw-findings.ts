import type { Finding } from '../../core/index.ts';
import { RESAW_RULES } from '../../materials/index.ts';
import type { LengthWords } from '../../routing/index.ts';
import type { ResawPlan } from './api.ts';
import { backingNeeded, boardNeeded, mostDrift, roughNeeded } from './needed.ts';
import { resawStack } from './resaw-stack.ts';

/** What is wrong with a resaw plan, and what is unusual in it. */
export function resawFindings(plan: ResawPlan, say: LengthWords): readonly Finding[] {
  return [...shortfall(plan, say), ...planedThrough(plan, say), ...allowances(plan, say)];
}

function shortfall(plan: ResawPlan, say: LengthWords): readonly Finding[] {
  const { reaches, leastReaches } = resawStack(plan);
  const { finished, name, drift } = plan;
  if (leastReaches >= finished - TRIFLE) return [];
  const isShort = reaches < finished - TRIFLE;
  const came = isShort ? reaches : leastReaches;
  const why = isShort ? '' : `, should the saw drift by ${say.length(drift)}`;
  const steady = isShort ? '' : ` The saw must keep within ${say.length(mostDrift(plan))} of its line.`;
  return [
    {
      code: isShort ? 'wood.board-too-thin' : 'wood.saw-drifts',
      severity: isShort ? 'stop' : 'caution',
      edges: [],
      message: `Resaw plan ${name}: its pieces come to ${say.length(came)}${why}, ${say.length(finished - came)} less than their finished ${say.length(finished)}.${steady}`,
      measured: { value: came, unit: 'mm' },
      limit: { value: finished, unit: 'mm' },
      cure: `Take a rough board of at least ${say.length(roughNeeded(plan))}${sold(plan)}, or a backing of at least ${say.length(backingNeeded(plan))}.`,
    },
  ];
}

function planedThrough(plan: ResawPlan, say: LengthWords): readonly Finding[] {
  const { leastThinnest } = resawStack(plan);
  const left = leastThinnest - plan.lastPlaning.show;
  if (left > 0) return [];
  return [
    {
      code: 'wood.leaf-planed-away',
      severity: 'stop',
      edges: [],
      message: `Resaw plan ${plan.name}: nothing is left of the thinnest leaf once all is planed.`,
      measured: { value: left, unit: 'mm' },
      limit: { value: 0, unit: 'mm' },
      cure: `Take fewer leaves, or a board thicker by more than ${say.length(-left * plan.leaves)}.`,
    },
  ];
}

function allowances(plan: ResawPlan, say: LengthWords): readonly Finding[] {
  const { leastKerf, mostKerf, leastPlaning, leastDrying } = RESAW_RULES;
  if (plan.leaves === 1) return [];
  const few = (
    code: string,
    value: number,
    least: number,
    words: string,
    cure: string,
  ): readonly Finding[] =>
    value >= least - TRIFLE
      ? []
      : [
          {
            code,
            severity: 'caution',
            edges: [],
            message: `Resaw plan ${plan.name}: ${words} ${say.length(value)}.`,
            measured: { value, unit: 'mm' },
            limit: { value: least, unit: 'mm' },
            cure,
          },
        ];
  const kerf: readonly Finding[] =
    plan.kerf >= leastKerf.value - TRIFLE && plan.kerf <= mostKerf.value + TRIFLE
      ? []
      : [
          {
            code: 'wood.kerf-unusual',
            severity: 'note',
            edges: [],
            message: `Resaw plan ${plan.name}: a kerf of ${say.length(plan.kerf)} is unusual. Measure one in scrap.`,
            measured: { value: plan.kerf, unit: 'mm' },
            limit: { value: plan.kerf < leastKerf.value ? leastKerf.value : mostKerf.value, unit: 'mm' },
          },
        ];
  return [
    ...kerf,
    ...few(
      'wood.planing-thin',
      plan.planing.sawn,
      leastPlaning.value,
      'a sawn face seldom comes clean with',
      `Allow ${say.about(leastPlaning.value)} to ${say.about(2 * leastPlaning.value)} on each sawn face, more where the cut wanders (common practice).`,
    ),
    ...few(
      'wood.drying-thin',
      plan.drying,
      leastDrying.value,
      'leaves cup within days of sawing; to make each flat again it allows',
      `Allow ${say.about(leastDrying.value)} to ${say.about(2 * leastDrying.value)} a leaf, more where it is wider than ${say.about(RESAW_RULES.wide.value)} (common practice).`,
    ),
  ];
}

/** The next board in the trade, in words. */
function sold(plan: ResawPlan): string {
  const board = boardNeeded(plan);
  return board === undefined ? '' : ` (sold as ${board.quarters}/4)`;
}

/** mm: rounding. */
const TRIFLE = 1e-6;
