import type { AngleStyle } from './api.ts';
import { toDecimals } from './format-length.ts';
import { RAD_PER_DEGREE } from './units.ts';

/** An angle in words, from radians: `8.5°`, or `8° 30′`. Halves round away from zero. Throws on NaN and infinity. */
export function formatAngle(rad: number, style: AngleStyle): string {
  if (!Number.isFinite(rad)) throw new RangeError(`no such angle: ${rad}`);
  const degrees = rad / RAD_PER_DEGREE;
  switch (style.unit) {
    case 'deg':
      return `${toDecimals(degrees, style.decimals)}°`;
    case 'deg-min': {
      const minutes = Math.round(Math.abs(degrees) * 60 * (1 + 4 * Number.EPSILON));
      const sign = degrees < 0 && minutes > 0 ? '-' : '';
      return `${sign}${Math.floor(minutes / 60)}° ${minutes % 60}′`;
    }
    default:
      return style satisfies never;
  }
}
