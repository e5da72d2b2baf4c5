import type { Board, LayRules, Lying, ToLay } from '../boards/api.ts';

export interface LayTask {
  readonly boards: readonly Board[];
  readonly toLay: readonly ToLay[];
  /** Laid by hand: they stay where they are. */
  readonly pinned: readonly Lying[];
  readonly rules: LayRules;
}

export interface SearchOptions {
  /** The same seed gives the same layout. */
  readonly seed: number;
  /** Places sought, of one thing on one board, before the search ends; USUAL_STEPS where nothing is said. */
  readonly steps?: number;
  /** Asked between steps: true ends the search with the best layout so far. The only way in which a clock may come in. */
  readonly shouldStop?: () => boolean;
  /** Told of every layout tried: steps done, of how many, and the best so far. */
  readonly onStep?: (done: number, of: number, best: LayCost) => void;
}

/** What one layout is preferred to another by, the first that differs deciding. */
export interface LayCost {
  /** Area of what found no room, mm². */
  readonly unlaid: number;
  /** What the boards that are cut into cost, or, where one of them has no price, their volume in mm³. */
  readonly boards: number;
  /** Board up to where the last blank on it ends, over all boards cut into, mm². */
  readonly used: number;
}

export interface Layout {
  readonly lying: readonly Lying[];
  /** What found no room. */
  readonly unlaid: readonly string[];
  readonly cost: LayCost;
  /** What no layout can be better than, from the areas alone; `used` with the least of boards as it is here. */
  readonly least: LayCost;
  readonly steps: number;
  /** `best`: no other can be better. `steps`: all the steps were done. `stopped`: by the caller, so another run may end elsewhere. */
  readonly ended: 'best' | 'steps' | 'stopped';
}
