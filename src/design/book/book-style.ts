import { formatAngle, formatLength, type LengthStyle } from '../../measure/index.ts';

/** How the shop book writes figures: one unit of length throughout. */
export interface BookStyle {
  readonly lengths: LengthStyle;
}

/** A length with its unit. */
export const long = (mm: number, { lengths }: BookStyle): string => formatLength(mm, lengths);

/** Sizes of one thing, with a × between them; mm and in are named once, at the end, so that lines do not break before them. */
export function sizes(figures: readonly number[], { lengths }: BookStyle): string {
  const last = figures.length - 1;
  return figures
    .map((mm, at) => formatLength(mm, lengths, at === last || lengths.unit === 'ft-in'))
    .join(' × ');
}

/** A length finer than the maker's style where joints are marked: to 0.1 mm or 1/64 in. */
export const fine = (mm: number, style: BookStyle): string => long(mm, finer(style));

/** The style in which joints are marked. */
export function finer({ lengths }: BookStyle): BookStyle {
  if (lengths.unit === 'mm') return { lengths: { ...lengths, decimals: Math.max(1, lengths.decimals) } };
  return { lengths: { ...lengths, denominator: 64 } };
}

/**
 * Sizes that a tool or bought stock has: as the shop marks joints, or in millimetres where it is metric and no fraction of an inch says it
 * (a tenon of 10 mm is not one of 25/64 in).
 */
export function bought(figures: readonly number[], style: BookStyle): string {
  const isMetric = figures.some((mm) => Math.abs(mm - Math.round(mm / SIXTY_FOURTH) * SIXTY_FOURTH) > FITS);
  return style.lengths.unit !== 'mm' && isMetric
    ? sizes(figures, { lengths: { unit: 'mm', decimals: 1 } })
    : sizes(figures, finer(style));
}

/** mm */
const SIXTY_FOURTH = 25.4 / 64;
/** mm: half a thousandth of an inch. */
const FITS = 0.0127;

/** A gap or an error, which fractions are too coarse for: to 0.1 mm or a thousandth of an inch. */
export const hair = (mm: number, { lengths }: BookStyle): string =>
  lengths.unit === 'mm' ? formatLength(mm, { unit: 'mm', decimals: 1 }) : `${(mm / 25.4).toFixed(3)} in`;

/** An area, from mm², in the square of the unit that a maker thinks of: cm² or in². */
export const surface = (area: number, { lengths }: BookStyle): string =>
  lengths.unit === 'mm' ? `${Math.round(area / 100)} cm²` : `${(area / 25.4 ** 2).toFixed(1)} in²`;

/** kg in an avoirdupois pound, exact (international yard and pound agreement, 1959). */
const KG_PER_LB = 0.45359237;

/** Ounces in a pound. */
const OZ_PER_LB = 16;
/** Less than this, kg, is said in grams and ounces. */
const LIGHT = 0.1;

/** A weight in the unit of the book; in inches pounds, the kilograms beside them; what is light in grams and ounces. */
export function weight(kilograms: number, { lengths }: BookStyle, decimals = 2): string {
  const isLight = kilograms < LIGHT;
  const metric = isLight ? `${Math.round(kilograms * 1000)} g` : `${kilograms.toFixed(decimals)} kg`;
  if (lengths.unit === 'mm') return metric;
  const pounds = kilograms / KG_PER_LB;
  return `${isLight ? `${(pounds * OZ_PER_LB).toFixed(1)} oz` : `${pounds.toFixed(decimals)} lb`} (${metric})`;
}

/** How far a clamp must open: up to whole centimetres or half inches, as clamps are bought. */
export function clampOpening(mm: number, { lengths }: BookStyle): string {
  const step = lengths.unit === 'mm' ? 10 : 25.4 / 2;
  const up = Math.ceil(mm / step - 1e-6) * step;
  return formatLength(
    up,
    lengths.unit === 'mm' ? { unit: 'mm', decimals: 0 } : { unit: 'in', denominator: 16 },
  );
}

export const degrees = (rad: number): string =>
  formatAngle(rad, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');

/** A rough board is cut to whole steps, up: 1 mm, or 1/8 in. */
export function roughUp(
  mm: number,
  { lengths }: BookStyle,
): { readonly mm: number; readonly text: string; readonly figure: string } {
  const step = lengths.unit === 'mm' ? 1 : 25.4 / 8;
  const up = Math.ceil(mm / step - 1e-6) * step;
  const whole: LengthStyle =
    lengths.unit === 'mm' ? { unit: 'mm', decimals: 0 } : { unit: 'in', denominator: 16 };
  return { mm: up, text: formatLength(up, whole), figure: formatLength(up, whole, false) };
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Names of planes and parts as the form writes them, as words. */
export const words = (name: string): string => name.replaceAll('_', ' ');
