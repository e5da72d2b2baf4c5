import { z } from 'zod';
import table from '../../shared/tables/moisture.json';
import { figure } from './figure.ts';

const quadratic = z.tuple([z.number(), z.number(), z.number()]);
const moistureTable = z.object({
  equilibrium: z.object({
    source: z.string(),
    W: quadratic,
    K: quadratic,
    K1: quadratic,
    K2: quadratic,
  }),
  linearRange: z.object({ least: z.number(), most: z.number() }),
  fibreSaturation: figure,
  slotPlay: figure,
});

const { equilibrium, linearRange, fibreSaturation, slotPlay } = moistureTable.parse(table);

/** Moisture contents (%) between which coefficients of dimensional change hold. */
export const LINEAR_MOISTURE: { readonly least: number; readonly most: number } = linearRange;

/** Moisture content (%) above which wood does not move. */
export const FIBRE_SATURATION = fibreSaturation.value;

/** Room (mm) left in a slot beyond the travel of its screw. */
export const SLOT_PLAY = slotPlay;

export const EQUILIBRIUM_SOURCE = equilibrium.source;

/**
 * Moisture content (%) that wood of any species comes to in air of this temperature (°C) and relative humidity (a share, 0 to 1).
 * Source: Wood Handbook FPL-GTR-190, Eq. 4-5. Throws a RangeError for a humidity that is no share.
 */
export function equilibriumMoisture(celsius: number, humidity: number): number {
  if (!(humidity >= 0 && humidity <= 1)) throw new RangeError(`${humidity} is no relative humidity`);
  const [W, K, K1, K2] = [equilibrium.W, equilibrium.K, equilibrium.K1, equilibrium.K2].map(
    ([a, b, c]) => a + b * celsius + c * celsius * celsius,
  ) as [number, number, number, number];
  const kh = K * humidity;
  const both = K1 * K2 * kh * kh;
  return (1800 / W) * (kh / (1 - kh) + (K1 * kh + 2 * both) / (1 + K1 * kh + both));
}
