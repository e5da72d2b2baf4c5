import { signal } from '@preact/signals';
import { lastInHand, refreshDesigns, takeInHand } from './designs.ts';
import { show } from './screen.ts';

/** Is everything read that the browser keeps? */
export const begun = signal(false);

/** Takes up what was in hand last; who is new is shown the forms. */
export async function begin(): Promise<void> {
  await refreshDesigns();
  const last = await lastInHand();
  if (last === undefined || !(await takeInHand(last))) show('designs');
  begun.value = true;
}
