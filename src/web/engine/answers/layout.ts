import { type Computed, type DesignLayout, layoutOfDesign } from '../../../design/index.ts';
import { madeOf } from './answering.ts';

/** What lies where on the boards of the design in hand; nothing while its boards or places cannot be read. */
export function layoutInHand(computed: Computed): DesignLayout | undefined {
  if (computed.base === undefined) return undefined;
  const laid = madeOf(computed, 'layout', () => layoutOfDesign(computed));
  return laid.ok ? laid.value : undefined;
}
