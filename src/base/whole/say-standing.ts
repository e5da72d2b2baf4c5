import type { Finding, Severity } from '../../core/index.ts';
import { STANDING_LOADS } from '../../materials/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { StandingBase } from '../api.ts';
import { outOfLimits } from './say-limits.ts';
import type { StandingUp } from './standing.ts';

type Facts = Omit<StandingUp, 'findings'>;

/** A gap at a foot below this, mm, is packed by a felt pad. */
const ROCKS = 0.5;
/** Nobody sees what a stretch shorter than this does, mm. */
const SHORTEST_SPAN = 150;

/** What there is to say of how a base stands, each with its figure, its limit and where that comes from. */
export function findingsOfStanding(
  facts: Facts,
  base: StandingBase,
  lengths: LengthStyle,
): readonly Finding[] {
  return [
    ...collisions(facts, base, lengths),
    ...tippingFindings(facts, lengths),
    ...rockingFindings(facts, base, lengths),
    ...[...facts.overhang, ...facts.knees].flatMap((measured) => outOfLimits(measured, lengths)),
    ...eachOnce(facts.beams.flatMap((beam) => beamFindings(beam, lengths))),
  ];
}

/** Copies of a beam sag alike. */
function eachOnce(findings: readonly Finding[]): readonly Finding[] {
  return findings.filter(({ message }, at) => findings.findIndex((each) => each.message === message) === at);
}

function finding(code: string, severity: Severity, message: string, more: Partial<Finding> = {}): Finding {
  return { code, severity, edges: [], message, ...more };
}

function collisions(
  { collisions: found }: Facts,
  base: StandingBase,
  lengths: LengthStyle,
): readonly Finding[] {
  const nameOf = (id: string): string => {
    const part = base.parts.find((each) => each.id === id)!;
    return part.mark === '' ? part.label : `${part.label} ${part.mark}`;
  };
  return found.map(({ a, b, depth }) =>
    finding(
      'base.collision',
      'stop',
      `${nameOf(a)} and ${nameOf(b)} want to be in the same place: one goes ${formatLength(depth, lengths)} into the other.`,
      {
        measured: { value: depth, unit: 'mm' },
        limit: { value: 0, unit: 'mm' },
        cure: `Move one of them by ${formatLength(depth, lengths)}, cut one by the face of the other, or halve them into each other.`,
      },
    ),
  );
}

function tippingFindings({ tipping }: Facts, lengths: LengthStyle): readonly Finding[] {
  if (tipping === undefined) {
    return [
      finding('base.no-feet', 'stop', 'Nothing of the base reaches the floor.', {
        cure: 'Let the floor cut the legs.',
      }),
    ];
  }
  const outside = tipping.lines.toSorted((a, b) => a.inside - b.inside)[0];
  if (!tipping.stands) {
    return [
      finding(
        'base.falls',
        'stop',
        'It falls over with nothing on it: the centre of mass lies beyond the feet.',
        {
          measured: { value: outside?.inside ?? 0, unit: 'mm' },
          limit: { value: 0, unit: 'mm' },
          cure: `Spread the feet by at least ${formatLength(Math.abs(outside?.inside ?? 0) + 20, lengths)}.`,
        },
      ),
    ];
  }
  const { worst } = tipping;
  if (worst?.load === undefined) return [];
  const { kilograms } = worst.load;
  const limit = STANDING_LOADS.tips.value;
  if (kilograms >= limit) return [];
  return [
    finding(
      'base.tips',
      'caution',
      `${Math.floor(kilograms)} kg on the edge of the top tips it (${formatLength(tipping.fromEdge, lengths)} in from the edge, as in the method of ISO 7172); people lean with ${limit} kg (common practice). ${tipping.assumption}`,
      {
        measured: { value: kilograms, unit: 'none' },
        limit: { value: limit, unit: 'none' },
        cure: `Spread the feet so that they stand ${formatLength(worst.outside * (1 - kilograms / limit), lengths)} further out there.`,
      },
    ),
  ];
}

function rockingFindings({ rocking }: Facts, base: StandingBase, lengths: LengthStyle): readonly Finding[] {
  if (rocking === undefined || !(rocking.rock > ROCKS) || !Number.isFinite(rocking.rock)) return [];
  const [worst] = rocking.off.toSorted((a, b) => Math.abs(b.long) - Math.abs(a.long));
  const part = base.parts.find(({ id }) => id === worst?.name);
  const who = part === undefined ? '' : ` Trim or pack ${part.label} ${part.mark} by as much.`;
  return [
    finding('base.rocks', 'caution', `It rocks: ${formatLength(rocking.rock, lengths)} is under a foot.`, {
      measured: { value: rocking.rock, unit: 'mm' },
      limit: { value: ROCKS, unit: 'mm' },
      cure: `Let the floor cut all legs, or trim the feet on a flat floor.${who}`,
    }),
  ];
}

function beamFindings(
  { part, label, sag }: Facts['beams'][number],
  lengths: LengthStyle,
): readonly Finding[] {
  const [worst] = sag.spans
    .filter(({ from, to }) => to - from > SHORTEST_SPAN)
    .toSorted((a, b) => b.laterShare - a.laterShare);
  const weak = sag.strong
    ? []
    : [
        finding(
          'base.beam-weak',
          'caution',
          `${label} is bent to ${sag.stress.toFixed(1)} N/mm²; ${sag.allowed.toFixed(1)} is a quarter of what its wood breaks at. ${sag.assumption}`,
          {
            part,
            measured: { value: sag.stress, unit: 'none' },
            limit: { value: sag.allowed, unit: 'none' },
            cure: `Make it ${Math.ceil(100 * (Math.sqrt(sag.stress / sag.allowed) - 1))} % deeper.`,
          },
        ),
      ];
  if (worst === undefined || !worst.overDesign) return weak;
  const limit = sag.limits.design;
  const span = worst.to - worst.from;
  return [
    ...weak,
    finding(
      'base.sag',
      worst.shows ? 'caution' : 'note',
      `${label} sags by ${formatLength(Math.abs(worst.first), lengths)} over ${formatLength(span, lengths)}, and after years by ${formatLength(Math.abs(worst.later), lengths)}; ${formatLength(limit.value * span, lengths)} is usual to allow (${limit.source}).`,
      {
        part,
        measured: { value: Math.abs(worst.first), unit: 'mm' },
        limit: { value: limit.value * span, unit: 'mm' },
        cure: `Make it ${Math.ceil(100 * (Math.cbrt(worst.firstShare / limit.value) - 1))} % deeper.`,
      },
    ),
  ];
}
