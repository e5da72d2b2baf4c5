import { caulCautions } from '../base/index.ts';
import { cautions } from '../checks/index.ts';
import { openingSizes } from '../drawing/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../measure/index.ts';
import type { PartFacts, PatternFacts, PatternPrint, PrintMeta } from '../print/index.ts';
import type { KeyDimension, SketchedPart } from '../sketch/index.ts';
import type { Computed, ComputedPattern } from './computed.ts';
import { designLink } from './link/design-link.ts';

/** A laid-out pattern with what its sheets say of the part. */
export function printOf(
  { base, parts, lengths, findings }: Computed,
  { request, pattern, plan }: ComputedPattern,
): PatternPrint {
  const { part, hands } = parts.find((each) => each.part.name === request.part)!;
  const own = hands.find(({ mirrored }) => mirrored === request.mirrored)!.name;
  const facts: PatternFacts = {
    ...partFactsOf(part, request.mirrored),
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
    ...(base?.cauls.some(({ name }) => name === part.name) ? { cautions: caulCautions(lengths) } : {}),
  };
  return { pattern, plan, facts };
}

/** Which part a pattern of it is for, of which hand, and how many. */
export function partFactsOf(
  { label, quantity: { left, right } }: SketchedPart,
  mirrored: boolean,
): PartFacts {
  if (right === 0) return { part: label, quantity: left };
  const [here, there] = mirrored ? [right, left] : [left, right];
  const other = { hand: mirrored ? 'left hand' : 'right hand', quantity: there };
  return {
    part: label,
    hand: mirrored ? 'right hand' : 'left hand',
    quantity: here,
    ...(there > 0 ? { other } : {}),
  };
}

/** What the sheets say of the design, and the cautions for its tooling. */
export function metaOf({ design, grids, lengths, parts }: Computed): PrintMeta {
  const tooling = parts[0]?.routing.tooling;
  return {
    design: design.name,
    revision: design.revision.index,
    date: design.revision.date,
    lengths,
    cautions: tooling ? cautions(tooling, lengths) : [],
    // With the grids that this very print is laid on.
    link: designLink({ ...design, grids }, design.site),
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
