import type { Finding } from '../../core/index.ts';
import { INSERT_RULES } from '../../materials/index.ts';
import type { LengthWords } from '../../routing/index.ts';
import type { InsertPlan } from './api.ts';

/** mm: rounding. */
const TRIFLE = 1e-6;

/** What is wrong with inserts in a top: too little left above them, too near to its edge. */
export function insertFindings(plan: InsertPlan, say: LengthWords): readonly Finding[] {
  const { insert, depth, left, leastEdge } = plan;
  const { deeper, leftAbove, edgeInOuterDiameters } = INSERT_RULES;
  const findings: Finding[] = [];
  if (plan.rows.length === 0) return findings;
  if (left < leftAbove.value - TRIFLE) {
    const most = depth + left - leftAbove.value - deeper.value;
    findings.push({
      code: 'wood.top-thin-over-insert',
      severity: left <= TRIFLE ? 'stop' : 'caution',
      edges: [],
      message:
        left <= TRIFLE
          ? `Holes of ${say.length(depth)} for ${insert.thread} inserts come out at the upper face of the top.`
          : `Holes of ${say.length(depth)} for ${insert.thread} inserts leave ${say.length(left)} of the top above them.`,
      measured: { value: left, unit: 'mm' },
      limit: { value: leftAbove.value, unit: 'mm' },
      cure:
        most > 0
          ? `Take inserts of at most ${say.length(most)}, or a thicker top, and set a depth stop.`
          : 'Fix so thin a top with short wood screws through the slots instead, or take a thicker one.',
    });
  }
  const wanted = edgeInOuterDiameters.value * insert.outer;
  if (leastEdge < wanted - TRIFLE)
    findings.push({
      code: 'wood.insert-near-edge',
      severity: 'caution',
      edges: [],
      message: `An insert stands only ${say.length(leastEdge)} from the edge of the top, which may break out there.`,
      measured: { value: leastEdge, unit: 'mm' },
      limit: { value: wanted, unit: 'mm' },
      cure: 'Leave that fixing out, or let the top stand out farther over the base.',
    });
  return findings;
}
