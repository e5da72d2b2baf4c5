import { battenComb, type ScreenLine, sceneForScreen } from '../../../drawing/index.ts';
import { boundsOfRegions } from '../../../geometry/index.ts';
import { type Answering, madeOf } from './answering.ts';

/** Curvature combs of a part's batten curves, in mm of wood; none where it has no such curve. */
export function comb(
  { computed }: Answering,
  { part: name }: { readonly part: string },
): readonly ScreenLine[] | undefined {
  const found = computed?.parts.find(({ part }) => part.name === name);
  if (found === undefined) return undefined;
  const { region } = found.part;
  return madeOf(
    region,
    'comb',
    () => sceneForScreen({ marks: battenComb(region), box: boundsOfRegions([region]) }).lines,
  );
}
