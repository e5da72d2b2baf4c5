import type { Design, GridChange } from '../../../design/index.ts';
import type { SheetsInHand } from '../../engine/answers/sheets.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { change, preview } from '../../state/current.ts';

/** What the pattern is moved by before it is let go: of one move at a time. */
let busy = false;

/** Shows the pattern moved on its sheets without making it so; news that comes while the engine is busy is passed over. */
export async function showMoved(design: Design, { plan }: SheetsInHand, by: GridChange): Promise<void> {
  if (busy) return;
  busy = true;
  try {
    const to = await engineDo('layPattern', { design, plan, change: by });
    if (busy) preview.value = [{ path: ['grids', plan.pattern], to }];
  } finally {
    busy = false;
  }
}

/** Moves the pattern on its sheets, or leaves it to the search without `by`. */
export async function layMoved(
  design: Design,
  { plan }: SheetsInHand,
  by: GridChange | undefined,
  said: string,
): Promise<void> {
  busy = false;
  const to = await engineDo('layPattern', { design, plan, ...(by === undefined ? {} : { change: by }) });
  change(said, [{ path: ['grids', plan.pattern], ...(to === undefined ? {} : { to }) }]);
}
