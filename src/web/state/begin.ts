import { signal } from '@preact/signals';
import { lastInHand, refreshDesigns, takeInHand } from './designs.ts';
import { takeInAddress } from './links.ts';
import { show } from './screen.ts';
import { keepThumbnails } from './thumbnails.ts';

/** Is everything read that the browser keeps? */
export const begun = signal(false);
/** Does the browser keep anything at all? */
export const keepsNothing = signal(false);

/** Takes up what was in hand last; who is new is shown the forms. */
export async function begin(): Promise<void> {
  try {
    await refreshDesigns();
    if (!(await takeInAddress())) {
      const last = await lastInHand();
      if (last === undefined || !(await takeInHand(last))) show('designs');
    }
    keepThumbnails();
  } catch {
    keepsNothing.value = true;
    show('designs');
  }
  begun.value = true;
}
