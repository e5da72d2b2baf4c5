import type { Finding } from '../../core/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { Measured } from '../statics/index.ts';

/** What each measure is called in a sentence that its figure ends. */
const WHAT: Readonly<Record<string, string>> = {
  'overhang.left': 'The top reaches over the base at the left end by',
  'overhang.right': 'The top reaches over the base at the right end by',
  'overhang.front': 'The top reaches over the base at the front by',
  'overhang.back': 'The top reaches over the base at the back by',
  'overhang.along': 'Along the table, the overhang is of the span of what carries it',
  'overhang.across': 'Across the table, the overhang is of the span of what carries it',
  'feet.along': 'Along the table, the feet spread over so much of the top:',
  'feet.across': 'Across the table, the feet spread over so much of the top:',
  'knees.height': 'Room over the knees:',
  'knees.width': 'Width between the legs, where one sits:',
  'knees.depthAtKnee': 'Depth at the knees:',
  'knees.depthAtFoot': 'Depth at the feet:',
  'knees.thighs': 'Room for the thighs over a usual chair:',
};

/** What to do about it, by how much. */
const CURES: readonly (readonly [RegExp, (by: string, isLow: boolean) => string])[] = [
  [
    /^overhang\.(left|right|front|back)$/,
    (by, low) => `Set the base ${by} further ${low ? 'in' : 'out'} there.`,
  ],
  [
    /^overhang\.(along|across)$/,
    (by) => `Spread what carries the top, or shorten the top: ${by} of the span.`,
  ],
  [/^feet\./, (by) => `Spread the feet by ${by} of the top.`],
  [
    /^knees\.(height|thighs)$/,
    (by) => `Make the wood over the knees ${by} shallower, or the table higher by as much.`,
  ],
  [/^knees\.width$/, (by) => `Set the legs ${by} further apart.`],
  [/^knees\.depth/, (by) => `Set the wood ${by} further back.`],
];

const isShare = (name: string): boolean => /^(overhang\.(along|across)|feet\.)/.test(name);

/** What there is to say of a measure that is not as usual. */
export function outOfLimits(
  { name, value, least, most, holds }: Measured,
  lengths: LengthStyle,
): readonly Finding[] {
  if (holds) return [];
  const share = isShare(name);
  const say = (figure: number): string => {
    if (!Number.isFinite(figure)) return 'endlessly much';
    return share ? `${Math.round(figure * 100)} %` : formatLength(figure, lengths);
  };
  const isLow = least !== undefined && value < least.value;
  const limit = isLow ? least : most;
  if (limit === undefined) return [];
  const by = Math.abs(value - limit.value);
  // Rounded up, so that the cure cures.
  const enough = share ? `${Math.ceil(by * 100)} %` : formatLength(by, lengths);
  const cure = Number.isFinite(by) ? CURES.find(([of]) => of.test(name))?.[1](enough, isLow) : undefined;
  // Overhangs along the ends of a table are a matter of looks; knees and spread are not.
  const severity = name.startsWith('overhang') ? 'note' : 'caution';
  const unit = share ? 'none' : 'mm';
  return [
    {
      code: `base.${name}`,
      severity,
      edges: [],
      message: `${WHAT[name] ?? name} ${say(value)}; usual is ${isLow ? 'at least' : 'at most'} ${say(limit.value)} (${limit.source}).`,
      measured: { value, unit },
      limit: { value: limit.value, unit },
      ...(cure === undefined ? {} : { cure }),
    },
  ];
}
