import { formatAngle, formatLength, type LengthStyle, MM_PER } from '../../measure/index.ts';
import type { ArrisName, End, Lay, Reading, Side } from './api.ts';
import { RUN, STRIKE } from './facts.ts';
import type { Move } from './lay.ts';

/** How angles are written: decimal degrees, or degrees and minutes, to the half minute if asked. */
export type CutAngleStyle =
  | { readonly unit: 'deg'; readonly decimals: number }
  | { readonly unit: 'deg-min'; readonly half?: boolean };

/** How the figures of a cut are written. Never two units of length on one sheet: inches give rise over 12 in, mm over 300 mm. */
export interface CutStyle {
  readonly length: LengthStyle;
  readonly angle: CutAngleStyle;
}

export const USUAL_STYLE: CutStyle = {
  length: { unit: 'mm', decimals: 1 },
  angle: { unit: 'deg', decimals: 2 },
};

export const SIDE: Readonly<Record<Side, string>> = {
  face: 'face side',
  back: 'back',
  left: 'left edge',
  right: 'right edge',
};
export const END: Readonly<Record<End, string>> = { far: 'far end', near: 'near end' };
export const CORNER: Readonly<Record<ArrisName, 'left' | 'right'>> = {
  'face-left': 'left',
  'face-right': 'right',
  'back-left': 'left',
  'back-right': 'right',
};
export const ARRIS: Readonly<Record<ArrisName, string>> = {
  'face-left': 'face side left',
  'face-right': 'face side right',
  'back-left': 'back left',
  'back-right': 'back right',
};
export const MOVE: Readonly<Record<Move, string>> = {
  slide: 'slide the work along the fence, as it lies',
  'end-for-end': 'turn the work end for end, the same side down',
  over: 'turn the work over end for end, the same side against the fence',
  roll: 'roll the work over about its length, the same end leading',
};

export const TEXT = {
  lie: ({ down, fence }: Lay): string => `${SIDE[down]} down, ${SIDE[fence]} against the fence`,
  lyingOnBack: 'Lying flat',
  standing: 'Standing on edge',
  endTo: (end: string, hand: string): string => `${end} to the ${hand}`,
  stopAt: (end: string): string => `stop against the ${end}`,
  noSwing: 'saw square across',
  swing: (angle: string, to: string, gauge: string): string =>
    `swing the saw ${angle} to the ${to} (a gauge that reads 90° when square shows ${gauge})`,
  noTilt: 'blade upright',
  tilt: (angle: string, to: string, table: string): string =>
    `tilt the blade ${angle} to the ${to} (${table} from the table)`,
  rise: (rise: string, run: string): string => `rises ${rise} over ${run}`,
  square: (end: string): string => `${end}: square.`,
  angles: (end: string, mitre: string, bevel: string): string => `${end}: mitre ${mitre}, bevel ${bevel}.`,
  line: (where: string, set: string, along: string, drop: string, struck: string, board: string): string =>
    `On the ${where} the line stands at ${set} to the length; ${along} it runs ${drop} towards the near end. Set the bevel from ${struck} struck over a board ${board} wide.`,
  squareLine: (where: string): string => `On the ${where} the line is square.`,
  alongFace: (rising: boolean): string =>
    rising ? 'from the right edge to the left' : 'from the left edge to the right',
  alongEdge: (rising: boolean): string =>
    rising ? 'from the face side to the back' : 'from the back to the face side',
  lengths: (list: string): string => `Lengths of the corners from the reference: ${list}.`,
  longPoint: (where: string, corner: string, by: string): string =>
    `Long point on the ${where}: ${corner} corner, by ${by}.`,
  evenPoints: (where: string): string => `Both corners of the ${where} are even.`,
  proof: (face: string, back: string): string =>
    `To prove the sawn end: ${face} to the face side, ${back} to the back, measured through the wood.`,
  rip: (edge: string, fence: string, down: string): string =>
    `${edge}: a cut along the length, ripped and not mitred. ${down} down, ${fence} against the rip fence, so that the blade leans away from the fence.`,
  ripUpright: (edge: string, fence: string): string =>
    `${edge}: a cut along the length, ripped and not mitred. ${fence} against the rip fence, blade upright.`,
  ripTilt: (angle: string, table: string, rise: string): string =>
    `Tilt the blade ${angle} from upright (${table} from the table): ${rise}.`,
  ripWidth: (face: string, back: string): string =>
    `Width left at the reference: ${face} on the face side, ${back} on the back.`,
  taper: (angle: string, narrows: string, rise: string): string =>
    `It runs out of parallel by ${angle} and narrows towards the ${narrows}: make the taper jig to ${angle}, ${rise}.`,
  swingCell: (angle: string, to: string, gauge: string, rise: string): string =>
    `${angle} to the ${to}\n${gauge} on a gauge whose square is 90°\n${rise}`,
  tiltCell: (angle: string, to: string, table: string, rise: string): string =>
    `${angle} to the ${to}\n${table} from the table\n${rise}`,
  wayHeads: {
    flat: 'Lying flat',
    edge: 'Standing on edge',
    'square-fence': 'At a square auxiliary fence',
    'wedge-at-fence': 'With a wedge at the fence',
    'wedge-under': 'With a wedge under the work',
  },
  rows: { lies: 'Lies', end: 'End and stop', swing: 'Swing', tilt: 'Tilt' },
  holdDown:
    'Screw or clamp the wedge or the auxiliary fence to the saw and hold the work down on it with a clamp, never by hand alone: work on a slope slides into the blade. Try the whole stroke with the saw unplugged, and cut a test piece first.',
  wedge: 'wedge',
  auxiliary: 'auxiliary fence',
  clamp: 'clamped here',
  square0: 'square',
  upright: 'upright',
  flat: (side: string): string => `The cut lies along the ${side}: plane or resaw it; no saw is set for it.`,
  squareFence:
    'Beyond the swing of this saw. Fix an auxiliary fence square to the saw’s own, hold the work along it with the end that is cut towards the fence, and set the complement',
  wedgeAtFence: (angle: string, thick: string, rise: string): string =>
    `Beyond the swing of this saw. Put a wedge of ${angle} (${rise}) between fence and work, thick to the ${thick}, and clamp both`,
  wedgeUnder: (angle: string, thick: string, rise: string): string =>
    `Beyond the tilt of this saw. Put a wedge of ${angle} (${rise}) under the work, thick to the ${thick}, and clamp both; see that the blade still reaches through`,
  byHand:
    'Beyond this saw in every way of holding the work. Mark the lines on all four sides and saw by hand, or at a saw with more range.',
  turn: (move: string): string => `Leave the saw as it is set; ${move}`,
  stopMoves: 'The waste falls on the other side of the blade: the stop goes over too.',
  mirror: (what: string): string =>
    `Leave the work lying as it did and set the same ${what} to the other side; do not turn the work as well`,
  swingAndTilt: { swing: 'swing', tilt: 'tilt', both: 'swing and tilt' },
  layAnew: 'The saw does not go over so far: lay the work anew and set it so',
  reset: 'No turn of the work gives this cut; set the saw anew',
  sawyer: 'sawyer stands here',
  fence: 'fence',
  slip: (slip: string, of: string, gap: string, length: string, foot: string): string =>
    `${slip} off in the ${of} opens the joint by ${gap} and moves the other end, ${length} away, by ${foot}.`,
} as const;

export function sayAngle(rad: number, { angle }: CutStyle): string {
  if (angle.unit === 'deg') return trimmed(formatAngle(rad, angle));
  if (angle.half !== true) return formatAngle(rad, angle);
  const halves = Math.round((Math.abs(rad) * 180 * 120) / Math.PI);
  const sign = rad < 0 && halves > 0 ? '-' : '';
  const minutes = Math.floor((halves % 120) / 2);
  return `${sign}${Math.floor(halves / 120)}° ${minutes}${halves % 2 === 1 ? '½' : ''}′`;
}

export function sayLength(mm: number, { length }: CutStyle): string {
  return formatLength(mm, length);
}

/** A gap, which fractions are too coarse for: to a thousandth of an inch. */
export function sayHair(mm: number, style: CutStyle): string {
  return style.length.unit === 'mm' ? sayLength(mm, style) : `${(mm / MM_PER.in).toFixed(3)} in`;
}

/** The reading's rise over the run of the maker's unit. */
export function sayRise({ riseOver300, riseOver12in }: Reading, style: CutStyle): string {
  const metric = style.length.unit === 'mm';
  return TEXT.rise(
    sayLength(metric ? riseOver300 : riseOver12in, style),
    sayRound(metric ? RUN.metric : RUN.inch, style),
  );
}

/** Width of the board on whose edge an angle is struck, in the maker's unit. */
export function sayBoard(style: CutStyle): string {
  return sayRound(style.length.unit === 'mm' ? STRIKE.metric : STRIKE.inch, style);
}

/** A length that is a round figure in its unit. */
export function sayRound(mm: number, { length }: Pick<CutStyle, 'length'>): string {
  return formatLength(
    mm,
    length.unit === 'mm' ? { unit: 'mm', decimals: 0 } : { unit: 'in', denominator: 16 },
  );
}

/** A sentence begins with a capital. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function trimmed(degrees: string): string {
  return degrees.includes('.') ? degrees.replace(/\.?0+°$/, '°') : degrees;
}
