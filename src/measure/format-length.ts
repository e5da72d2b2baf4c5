import type { LengthStyle } from './api.ts';
import { MM_PER } from './units.ts';

/**
 * A length in words, from mm: `730.0 mm`, `28 3/4 in` or `2' 4 3/4"`. Fractions are reduced, halves round away from
 * zero. With `suffix` false, mm and in lose their unit (feet and inches keep their marks). Throws on NaN and infinity.
 */
export function formatLength(mm: number, style: LengthStyle, suffix = true): string {
  if (!Number.isFinite(mm)) throw new RangeError(`no such length: ${mm}`);
  switch (style.unit) {
    case 'mm':
      return `${toDecimals(mm, style.decimals)}${suffix ? ' mm' : ''}`;
    case 'in': {
      const steps = stepsOf(mm, style.denominator);
      return `${signOf(mm, steps)}${mixed(steps, style.denominator)}${suffix ? ' in' : ''}`;
    }
    case 'ft-in': {
      const steps = stepsOf(mm, style.denominator);
      const perFoot = 12 * style.denominator;
      const feet = Math.floor(steps / perFoot);
      const inches = `${mixed(steps - feet * perFoot, style.denominator)}"`;
      return `${signOf(mm, steps)}${feet === 0 ? '' : `${feet}' `}${inches}`;
    }
    default:
      return style satisfies never;
  }
}

/** Fixed decimals, halves away from zero, and never a negative zero. */
export function toDecimals(value: number, decimals: number): string {
  // Nudged by a few units in the last place, so that 0.15 (stored a little below) rounds as it reads.
  const text = (value + Math.sign(value) * Math.abs(value) * 4 * Number.EPSILON).toFixed(decimals);
  return /^-0(?:\.0*)?$/.test(text) ? text.slice(1) : text;
}

/** Whole steps of 1/denominator in, without sign. */
function stepsOf(mm: number, denominator: number): number {
  return Math.round((Math.abs(mm) / MM_PER.in) * denominator * (1 + 4 * Number.EPSILON));
}

function signOf(mm: number, steps: number): string {
  return mm < 0 && steps > 0 ? '-' : '';
}

function mixed(steps: number, denominator: number): string {
  const whole = Math.floor(steps / denominator);
  let above = steps - whole * denominator;
  let below = denominator;
  while (above > 0 && above % 2 === 0) {
    above /= 2;
    below /= 2;
  }
  if (above === 0) return `${whole}`;
  return whole === 0 ? `${above}/${below}` : `${whole} ${above}/${below}`;
}
