import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import type { Figure } from '../../materials/index.ts';

/** A measured value (mm, or a plain share) beside what the trade asks for. */
export interface Measured {
  /** Stable, dotted: `knees.height`. */
  readonly name: string;
  readonly value: number;
  readonly least?: Figure;
  readonly most?: Figure;
  readonly holds: boolean;
}

/** Sets a value beside its limits; a limit that is not given always holds. One missed by rounding holds as well. */
export function measure(
  name: string,
  value: number,
  limits: { readonly least?: Figure; readonly most?: Figure },
): Measured {
  const { least, most } = limits;
  const above = value - (least?.value ?? -Infinity);
  const below = (most?.value ?? Infinity) - value;
  const holds = Math.min(above, below) >= -POSITION_TOLERANCE;
  return { name, value, ...limits, holds };
}
