import type { LineRole } from './api.ts';

/** The two inks of every drawing. Nothing is told by colour alone: a grey print must lose nothing. */
export const INKS = {
  graphite: '#2b2d30',
  /** For what needs the eye. */
  accent: '#a33a24',
} as const;

/** Strength of a wash against its ink: light enough for lettering to stand on. */
export const TINT_STRENGTH = 0.09;

/** How the lines of one role are drawn. Lengths in mm. */
export interface LineStyle {
  readonly width: number;
  /** Dash and gap lengths in turn, for round caps; empty for a continuous line. */
  readonly dash: readonly number[];
  readonly ink: keyof typeof INKS;
  /** Number of the line type in ISO 128-2. */
  readonly lineType: string;
  /** What the line means, as the key printed beside a pattern says it. */
  readonly words: string;
}

/**
 * Dash elements in line widths d, after ISO 128-2: dash 12 d, long dash 24 d, gap 3 d, wide gap 18 d, dot at most
 * 0.5 d (from memory of the standard's annex).
 */
const DASH = { dash: 12, longDash: 24, gap: 3, wideGap: 18, dot: 0.5 } as const;

/** mm; a dot is drawn by its round caps alone, but some readers refuse a dash of no length. */
const LEAST_DASH = 0.01;

const PATTERNS = {
  continuous: [],
  dashed: ['dash', 'gap'],
  spaced: ['dash', 'wideGap'],
  chain: ['longDash', 'gap', 'dot', 'gap'],
  doubleChain: ['longDash', 'gap', 'dot', 'gap', 'dot', 'gap'],
} as const satisfies Record<string, readonly (keyof typeof DASH)[]>;

function style(
  lineType: string,
  pattern: keyof typeof PATTERNS,
  width: number,
  ink: LineStyle['ink'],
  words: string,
): LineStyle {
  // A round cap adds a line width to what is drawn and takes it from the gap; of a dot only the caps are left.
  const dash = PATTERNS[pattern].map((element, i) =>
    Math.max(LEAST_DASH, i % 2 === 0 ? (DASH[element] - 1) * width : (DASH[element] + 1) * width),
  );
  return { width, dash, ink, lineType, words };
}

/**
 * How every role is drawn, for SVG and PDF alike. Widths are those of ISO 128-2 between 0.18 and 0.35 mm: thin enough
 * that nobody asks which side of the line is meant.
 */
export const LINE_STYLES: Readonly<Record<LineRole, LineStyle>> = {
  part: style('01.2', 'continuous', 0.35, 'graphite', 'edge of the part'),
  template: style('05.1', 'doubleChain', 0.25, 'accent', 'edge of the template'),
  'as-routed': style('02.1', 'dashed', 0.25, 'graphite', 'edge as the cutter leaves it'),
  residue: style('01.1', 'continuous', 0.18, 'accent', 'wood the cutter leaves or takes against the drawing'),
  'saw-line': style('03.1', 'spaced', 0.25, 'graphite', 'saw the blank to this line'),
  'keep-side': style(
    '01.1',
    'continuous',
    0.18,
    'graphite',
    'short ticks stand in the waste: keep the other side',
  ),
  against: style('01.1', 'continuous', 0.18, 'accent', 'teeth: against the grain, turn the work over'),
  grain: style('01.1', 'continuous', 0.25, 'graphite', 'direction of the grain'),
  feed: style('01.1', 'continuous', 0.25, 'graphite', 'direction of feed'),
  joint: style('04.2', 'chain', 0.25, 'graphite', 'centre line of a joint'),
  centre: style('04.1', 'chain', 0.18, 'graphite', 'centre line that stretched paper is set right from'),
  station: style(
    '01.1',
    'continuous',
    0.18,
    'graphite',
    'tick square to the centre line; figures are distances from it',
  ),
  check: style('01.1', 'continuous', 0.25, 'accent', 'end of a check length'),
  reference: style('01.2', 'continuous', 0.35, 'graphite', 'face side and face edge'),
  fixing: style('01.1', 'continuous', 0.18, 'graphite', 'tape the template there; screw it there'),
  dimension: style('01.1', 'continuous', 0.18, 'graphite', 'dimension'),
  extension: style('01.1', 'continuous', 0.18, 'graphite', 'extension of a dimension'),
  mark: style('01.1', 'continuous', 0.25, 'graphite', 'mark'),
  frame: style('01.2', 'continuous', 0.35, 'graphite', 'frame'),
  thin: style('01.1', 'continuous', 0.18, 'graphite', 'thin line'),
  // Views: the group 0.35 / 0.18 of ISO 128-2, which A4 and A3 take.
  visible: style('01.2', 'continuous', 0.35, 'graphite', 'visible edge'),
  hidden: style('02.1', 'dashed', 0.18, 'graphite', 'hidden edge'),
  axis: style('04.1', 'chain', 0.18, 'graphite', 'centre line'),
  phantom: style(
    '05.1',
    'doubleChain',
    0.18,
    'graphite',
    'outline of the top, which is not part of the base',
  ),
  hatch: style('01.1', 'continuous', 0.18, 'graphite', 'wood cut through'),
  'cutting-plane': style('04.2', 'chain', 0.35, 'graphite', 'where it is cut through'),
  border: style('01.2', 'continuous', 0.7, 'graphite', 'frame of the sheet'),
};

/** Heights of capitals in mm, ISO 3098, smallest first. */
export const LETTER_HEIGHTS = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20] as const;
