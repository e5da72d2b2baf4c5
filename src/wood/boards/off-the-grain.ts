import type { Board, Lying, ToLay } from './api.ts';

/** The angle between the grain of what lies on a board and the board's own, rad in [0, π/2]: head to tail is none. */
export function offTheGrain(
  board: Pick<Board, 'kind' | 'grain'>,
  { grain }: Pick<ToLay, 'grain'>,
  { turned }: Pick<Lying, 'turned'>,
): number {
  if (board.kind === 'sheet' || grain === undefined) return 0;
  const apart = Math.abs(turned - board.grain) % Math.PI;
  return Math.min(apart, Math.PI - apart);
}
