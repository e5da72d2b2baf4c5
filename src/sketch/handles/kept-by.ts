import type { ParameterValue } from '../api.ts';
import type { Grip, Look, Pulled } from './api.ts';

/** So near (share of a range) to its end a parameter stands there. */
const AT_END = 1e-6;

/** What a handle stands against: the ends of ranges, and checks that hold by no more than their own steps. */
export function keptBy(
  { movers }: Grip,
  values: Readonly<Record<string, ParameterValue>>,
  { tight }: Look,
): Pulled['kept'] {
  const parameters = movers.filter(({ name, least, most }) => {
    const share = ((values[name] as number) - least) / (most - least);
    return share < AT_END || share > 1 - AT_END;
  });
  return { parameters: parameters.map(({ name }) => name), checks: tight };
}
