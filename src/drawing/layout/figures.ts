import { formatAngle, formatLength, type LengthStyle, MM_PER } from '../../measure/index.ts';
import { setFractions } from '../lettering/fractions.ts';

/** A length as it is lettered: no unit and no idle zeros in mm, an inch mark in inches, fractions set as fractions. */
export function writeLength(mm: number, style: LengthStyle): string {
  const text = formatLength(mm, style, false);
  switch (style.unit) {
    case 'mm':
      return text.replace(/(\.\d*?)0+$/, '$1').replace(/\.$/, '');
    case 'in':
      return setFractions(`${text}"`);
    case 'ft-in':
      return setFractions(text);
    default:
      return style satisfies never;
  }
}

/** A length to be read off a rule: to 0.1 mm; in inches to the fraction that all the rest is written to. */
export function writeFine(mm: number, style: LengthStyle): string {
  return writeLength(mm, style.unit === 'mm' ? { unit: 'mm', decimals: Math.max(1, style.decimals) } : style);
}

/** A fraction of an inch farther than this, mm, from a tool's size is not its size. */
const SAME_SIZE = 0.005;

/**
 * The size of a tool or an offset made by tools, never rounded to the fraction of the design: to 0.01 mm; in inches an
 * exact fraction where there is one to 1/64, else to 0.001 with the millimetres, `0.236″ (6 mm)`.
 */
export function writeExact(mm: number, style: LengthStyle): string {
  const inMm = writeLength(mm, { unit: 'mm', decimals: 2 });
  if (style.unit === 'mm') return inMm;
  const step = MM_PER.in / 64;
  if (Math.abs(Math.round(mm / step) * step - mm) <= SAME_SIZE) {
    return writeLength(mm, { ...style, denominator: 64 });
  }
  return setFractions(`${(mm / MM_PER.in).toFixed(3)}" (${inMm} mm)`);
}

export function writeAngle(rad: number): string {
  return formatAngle(rad, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°');
}
