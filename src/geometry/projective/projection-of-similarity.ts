import type { Similarity } from '../transform.ts';
import type { Projection } from './api.ts';
import { levelled } from './matrix.ts';

/** A similarity as a projection that keeps parallels. */
export function projectionOfSimilarity({ turn, shift, scale, mirrored }: Similarity): Projection {
  const c = Math.cos(turn) * scale;
  const s = Math.sin(turn) * scale;
  const m = mirrored ? -1 : 1;
  return levelled([m * c, -s, shift.x, m * s, c, shift.y, 0, 0, 1]);
}
