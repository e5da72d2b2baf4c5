import type { Result } from '../../../core/index.ts';
import { ok } from '../../../core/index.ts';
import { compute, type Design, layDesign, type Memo } from '../../../design/index.ts';

const memo: Memo = new Map();

/** ms after which a search ends where it stands, unless the design says otherwise. */
const USUAL = 20_000;

/** The placements of a design after its parts were laid on its boards; places that are sound stay unless all are laid anew. */
export function layBoards({
  design,
  anew,
}: {
  readonly design: Design;
  readonly anew: boolean;
}): Result<NonNullable<Design['wood']>['placements']> {
  const computed = compute(design, { memo, wanted: { patterns: [], standing: false } });
  if (!computed.ok) return computed;
  const seconds = design.wood?.search?.seconds;
  const end = performance.now() + (seconds === undefined ? USUAL : 1000 * seconds);
  const laid = layDesign(computed.value, {
    ...(anew ? { anew: true } : {}),
    shouldStop: () => performance.now() > end,
  });
  return laid.ok ? ok(laid.value.design.wood?.placements) : laid;
}
