import type { Edge } from '../api.ts';

/** A loop and where it belongs. */
export interface PlacedLoop {
  readonly edges: readonly Edge[];
  readonly region: number;
  readonly loop: number;
}
