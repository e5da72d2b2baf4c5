import type { Result } from '../../../core/index.ts';
import { ok } from '../../../core/index.ts';
import { compute, type Design, layDesign } from '../../../design/index.ts';
import { known } from '../known.ts';

/** ms after which a search ends where it stands, unless the design says otherwise. */
const USUAL = 20_000;

/** The placements of a design after its parts were laid on its boards; places that are sound stay unless all are laid anew. */
export function layBoards(
  { design, anew }: { readonly design: Design; readonly anew: boolean },
  tell: (share: number) => void,
): Result<NonNullable<Design['wood']>['placements']> {
  const computed = compute(design, { memo: known, wanted: { patterns: [], standing: false } });
  if (!computed.ok) return computed;
  const seconds = design.wood?.search?.seconds;
  const bound = seconds === undefined ? USUAL : 1000 * seconds;
  const begun = performance.now();
  const passed = (): number => (performance.now() - begun) / bound;
  let told = 0;
  const laid = layDesign(computed.value, {
    ...(anew ? { anew: true } : {}),
    shouldStop: () => passed() > 1,
    onStep: (done, of) => {
      const share = Math.max(done / of, passed());
      if (share - told < 0.01) return;
      told = share;
      tell(share);
    },
  });
  return laid.ok ? ok(laid.value.design.wood?.placements) : laid;
}
