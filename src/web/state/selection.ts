import { signal } from '@preact/signals';
import type { Finding } from '../../core/index.ts';

/** What the maker points at, by the names that the engine gives: everything shows it where it occurs. */
export interface Selection {
  readonly part?: string;
  readonly edge?: string;
  /** `keyOfFinding` of the finding whose place is shown. */
  readonly finding?: string;
}

export const selection = signal<Selection>({});

/** What the pointer is over; the drawing says what it is. */
export const hovered = signal<Selection>({});

/** Tells a finding from the others of its design, also after the design has changed a little. */
export function keyOfFinding({ code, part, hand, edges }: Finding): string {
  return [code, part ?? '', hand ?? '', ...edges].join(' ');
}
