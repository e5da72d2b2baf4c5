import { formatLength, type LengthStyle, MM_PER } from '../measure/index.ts';

/** How findings say lengths and areas. */
export interface LengthWords {
  /** A length, from mm. */
  readonly length: (mm: number) => string;
  /** A rule of thumb, from mm, to the nearest figure that one would say. */
  readonly about: (mm: number) => string;
  /** An area, from mm². */
  readonly area: (mm2: number) => string;
}

/**
 * Words in the maker's unit. Millimetres have at most two decimals, none that are zero; from three
 * inches on no more than the design prints. Inches are fractions, down to 1/64;
 * where none fits, as with a metric tool or the depth of wood left, the millimetres stand beside the nearest one.
 */
export function lengthWords(style: LengthStyle = { unit: 'mm', decimals: 2 }): LengthWords {
  if (style.unit === 'mm') {
    const length = (mm: number): string =>
      `${trim(mm, Math.abs(mm) >= LONG ? Math.min(2, style.decimals) : 2)} mm`;
    return { length, about: length, area: (mm2) => `${trim(mm2, 2)} mm²` };
  }
  return {
    length: (mm) => inches(mm, style),
    about: (mm) => {
      const step = MM_PER.in / (mm < EIGHTHS ? 16 : 8);
      return formatLength(Math.round(mm / step) * step, { unit: 'in', denominator: 16 });
    },
    area: (mm2) => `${trim(mm2 / MM_PER.in ** 2, 4)} in²`,
  };
}

function inches(mm: number, style: Exclude<LengthStyle, { unit: 'mm' }>): string {
  if (Math.abs(mm) >= LONG) return formatLength(mm, style);
  const step = MM_PER.in / 64;
  const near = Math.round(mm / step) * step;
  const fraction =
    near === 0 && mm !== 0 ? 'under 1/64 in' : formatLength(near, { unit: 'in', denominator: 64 });
  return Math.abs(mm - near) < FITS ? fraction : `${fraction} (${trim(mm, 2)} mm)`;
}

/** mm: from here on the design's own decimals or fraction are exact enough. */
const LONG = 3 * MM_PER.in;
/** mm: half a thousandth of an inch. */
const FITS = 0.0005 * MM_PER.in;
/** mm: from here on rules of thumb are in eighths, below in sixteenths of an inch. */
const EIGHTHS = 3;

function trim(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  return (text.includes('.') ? text.replace(/\.?0+$/, '') : text).replace(/^-0$/, '0');
}
