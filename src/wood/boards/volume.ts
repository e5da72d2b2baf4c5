import { MM_PER } from '../../measure/index.ts';
import type { Board } from './api.ts';

/** mm³ of a board foot: one inch thick, one foot square. */
const BOARD_FOOT = MM_PER.in ** 3 * 144;

/** Board feet in a volume of mm³. Hardwood is sold by its thickness as sawn, so take that of the rough board (common practice). */
export function boardFeet(volume: number): number {
  return volume / BOARD_FOOT;
}

/** Cubic metres in a volume of mm³. */
export function cubicMetres(volume: number): number {
  return volume / 1e9;
}

/** mm³. */
export function volumeOf({
  length,
  width,
  thickness,
}: Pick<Board, 'length' | 'width' | 'thickness'>): number {
  return length * width * thickness;
}
