import { signal } from '@preact/signals';
import type { Pull, PulledTo } from '../engine/protocol.ts';

/** What is being pulled, until what comes of it is set; and where that has led. */
export const pull = signal<Pull | undefined>(undefined);
export const pulledTo = signal<PulledTo | undefined>(undefined);

/** Lets go without a change; false when nothing was held. */
export function letGo(): boolean {
  if (pull.value === undefined) return false;
  pull.value = undefined;
  pulledTo.value = undefined;
  return true;
}
