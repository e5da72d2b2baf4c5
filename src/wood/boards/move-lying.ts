import { boundsOfRegions, transformRegion, type Vec } from '../../geometry/index.ts';
import type { Lying, ToLay } from './api.ts';
import { turnedOver } from './lay-at.ts';

/** How something that lies on a board is moved by hand. */
export interface LyingMove {
  /** mm. */
  readonly by?: Vec;
  /** Anticlockwise about the middle of its box, rad. */
  readonly turn?: number;
  /** Turned over where it lies. */
  readonly over?: boolean;
  /** Onto another board. */
  readonly board?: string;
}

/** Where something lies after it was moved by hand; its middle stays while it is turned. Turns are kept within one whole turn. */
export function moveLying(toLay: Pick<ToLay, 'region' | 'grain'>, lying: Lying, move: LyingMove): Lying {
  const { by = { x: 0, y: 0 }, turn = 0, over = false, board = lying.board } = move;
  const turned = withinOneTurn(lying.turned + turn);
  const mirrored = over ? !lying.mirrored : lying.mirrored;
  const [before, after] = [sizeAs(toLay, lying), sizeAs(toLay, { turned, mirrored })];
  const at = {
    x: lying.at.x + by.x + (before.x - after.x) / 2,
    y: lying.at.y + by.y + (before.y - after.y) / 2,
  };
  return { ...lying, board, at, turned, mirrored };
}

function sizeAs(toLay: Pick<ToLay, 'region' | 'grain'>, lying: Pick<Lying, 'turned' | 'mirrored'>): Vec {
  const { minX, maxX, minY, maxY } = boundsOfRegions([
    transformRegion(toLay.region, turnedOver(toLay, lying)),
  ]);
  return { x: maxX - minX, y: maxY - minY };
}

function withinOneTurn(angle: number): number {
  const whole = 2 * Math.PI;
  const within = ((angle % whole) + whole) % whole;
  // A whole turn but for rounding is none.
  return whole - within < 1e-9 ? 0 : within;
}
