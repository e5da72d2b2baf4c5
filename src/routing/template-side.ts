import type { Tooling } from './api.ts';

/**
 * Where the template lies while the machine is used. A bearing at the shank and a bushing run on the side of the machine's
 * body, a bearing at the tip on the far side; a hand-held machine stands above the work, a table's below it.
 */
export function templateSideOf({ machine, guide }: Pick<Tooling, 'machine' | 'guide'>): 'above' | 'below' {
  const isFar = guide.kind === 'bearing' && guide.at === 'tip';
  return (machine === 'hand-held') !== isFar ? 'above' : 'below';
}
