import { signal } from '@preact/signals';
import { fetchScreen } from '../screens/screen-of.tsx';
import { lastInHand, refreshDesigns, takeInHand } from './designs.ts';
import { holdsDesign, takeInAddress } from './links.ts';
import { screen, show } from './screen.ts';
import { keepThumbnails } from './thumbnails.ts';

/** Is everything read that the browser keeps? */
export const begun = signal(false);
/** Does the browser keep anything at all? */
export const keepsNothing = signal(false);

/** Takes up what was in hand last; who is new is shown the forms. */
export async function begin(): Promise<void> {
  try {
    if (holdsDesign(location.hash)) fetchScreen('shape');
    await refreshDesigns();
    if (!(await takeInAddress())) {
      const last = await lastInHand();
      fetchScreen(last === undefined ? 'designs' : screen.value);
      if (last === undefined || !(await takeInHand(last))) show('designs');
    }
    keepThumbnails();
  } catch {
    keepsNothing.value = true;
    show('designs');
  }
  begun.value = true;
}
