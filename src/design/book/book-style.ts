import { formatAngle, formatLength, type LengthStyle } from '../../measure/index.ts';

/** How the shop book writes figures: one unit of length throughout. */
export interface BookStyle {
  readonly lengths: LengthStyle;
}

/** A length with its unit. */
export const long = (mm: number, { lengths }: BookStyle): string => formatLength(mm, lengths);

/** A length finer than the maker's style where joints are marked: to 0.1 mm or 1/64 in. */
export function fine(mm: number, { lengths }: BookStyle): string {
  if (lengths.unit === 'mm') return formatLength(mm, { ...lengths, decimals: Math.max(1, lengths.decimals) });
  return formatLength(mm, { ...lengths, denominator: 64 });
}

export const degrees = (rad: number): string =>
  formatAngle(rad, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');

/** A rough board is cut to whole steps, up: 1 mm, or 1/8 in. */
export function roughUp(mm: number, { lengths }: BookStyle): { readonly mm: number; readonly text: string } {
  const step = lengths.unit === 'mm' ? 1 : 25.4 / 8;
  const up = Math.ceil(mm / step - 1e-6) * step;
  return {
    mm: up,
    text: formatLength(
      up,
      lengths.unit === 'mm' ? { unit: 'mm', decimals: 0 } : { unit: 'in', denominator: 16 },
    ),
  };
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Names of planes and parts as the form writes them, as words. */
export const words = (name: string): string => name.replaceAll('_', ' ');
