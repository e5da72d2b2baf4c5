import { signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { engineDo } from '../engine/engine-do.ts';
import { addDesign } from './designs.ts';
import { show } from './screen.ts';

/** Why a link was not opened. */
export const linkRefused = signal<string | undefined>(undefined);

export const holdsDesign = (hash: string): boolean => /#(?:design|part)=/.test(hash);

/** A link to where this page is, that holds the design whole. */
export function linkTo(design: Design): Promise<string> {
  return engineDo('linkOf', { design, site: location.href.replace(/#.*$/s, '') });
}

/** Takes the design of a link into the list and in hand. True when that was done. */
export async function takeInLink(text: string): Promise<boolean> {
  linkRefused.value = undefined;
  const read = await engineDo('designInLink', text);
  if (read.ok) {
    await addDesign(read.value);
    return true;
  }
  linkRefused.value = read.problems[0]?.message;
  return false;
}

/** Opens the design in the page's own address, where there is one, and leaves a plain address behind. True where there was one. */
export async function takeInAddress(): Promise<boolean> {
  const { hash } = location;
  if (!holdsDesign(hash)) return false;
  show((await takeInLink(hash)) ? 'shape' : 'designs');
  return true;
}

// A link that is opened while the page is open.
addEventListener('hashchange', () => void takeInAddress());
