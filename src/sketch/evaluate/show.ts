import { POSITION_TOLERANCE, type Vec } from '../../geometry/index.ts';
import { formatAngle, formatLength, type LengthStyle } from '../../measure/index.ts';

/** A length in a message: to the nearest step of the style, without idle zeros. */
export function show(mm: number, style: LengthStyle): string {
  return trimmed(mm, style);
}

/** The most that is possible, rounded down, so that what is shown can be typed. */
export function showMost(mm: number, style: LengthStyle): string {
  const step = stepOf(style);
  return trimmed(Math.floor((mm + POSITION_TOLERANCE) / step) * step, style);
}

/** The least that is possible, rounded up. */
export function showLeast(mm: number, style: LengthStyle): string {
  const step = stepOf(style);
  return trimmed(Math.ceil((mm - POSITION_TOLERANCE) / step) * step, style);
}

export function showAngle(rad: number): string {
  return formatAngle(rad, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');
}

/** `(12 mm, 40.5 mm)`. */
export function showPoint(p: Vec, style: LengthStyle): string {
  return `(${trimmed(p.x, style)}, ${trimmed(p.y, style)})`;
}

function stepOf(style: LengthStyle): number {
  return style.unit === 'mm' ? 10 ** -style.decimals : 25.4 / style.denominator;
}

function trimmed(mm: number, style: LengthStyle): string {
  const text = formatLength(mm, style);
  return style.unit === 'mm' ? text.replace(/(\.\d*?)0+ /, '$1 ').replace('. ', ' ') : text;
}
