import { cautions } from '../checks/index.ts';
import { openingSizes } from '../drawing/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../measure/index.ts';
import type { PatternFacts, PatternPrint, PrintMeta } from '../print/index.ts';
import type { KeyDimension } from '../sketch/index.ts';
import type { Computed, ComputedPattern } from './computed.ts';

/** A laid-out pattern with what its sheets say of the part. */
export function printOf(
  { parts, lengths, findings }: Computed,
  { request, pattern, plan }: ComputedPattern,
): PatternPrint {
  const { part, hands } = parts.find((each) => each.part.name === request.part)!;
  const own = hands.find(({ mirrored }) => mirrored === request.mirrored)!.name;
  const handed = part.quantity.right > 0;
  const isRight = request.mirrored && handed;
  const others = isRight ? part.quantity.left : part.quantity.right;
  const facts: PatternFacts = {
    part: part.label,
    ...(handed ? { hand: isRight ? 'right hand' : 'left hand' } : {}),
    quantity: isRight ? part.quantity.right : part.quantity.left,
    ...(others > 0 && handed
      ? { other: { hand: isRight ? 'left hand' : 'right hand', quantity: others } }
      : {}),
    findings: findings.flatMap(({ part: about, hand, severity, message, cure }) =>
      severity === 'note' || (about !== undefined && about !== part.name) || (hand ?? own) !== own
        ? []
        : [{ severity, words: cure === undefined ? message : `${message} ${cure}` }],
    ),
    keyFacts: [
      ...part.dimensions.map((dimension) => ({
        label: dimension.label,
        value: figureOf(dimension, lengths),
      })),
      ...openingSizes(part).map(({ label, size }) => ({ label, value: formatLength(size, lengths) })),
      { label: 'Thickness', value: formatLength(part.thickness, lengths) },
    ],
  };
  return { pattern, plan, facts };
}

/** What the sheets say of the design, and the cautions for its tooling. */
export function metaOf({ design, lengths, parts }: Computed): PrintMeta {
  const tooling = parts[0]?.routing.tooling;
  return {
    design: design.name,
    revision: design.revision.index,
    date: design.revision.date,
    lengths,
    cautions: tooling ? cautions(tooling, lengths) : [],
  };
}

function figureOf({ kind, value }: KeyDimension, lengths: LengthStyle): string {
  switch (kind) {
    case 'length':
      return formatLength(value, lengths);
    case 'radius':
      return `R ${formatLength(value, lengths)}`;
    case 'angle':
      return formatAngle(value, { unit: 'deg', decimals: 2 });
    default:
      return kind satisfies never;
  }
}
