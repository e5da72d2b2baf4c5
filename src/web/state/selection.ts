import { signal } from '@preact/signals';

/** What the maker points at, by the names that the engine gives: everything shows it where it occurs. */
export interface Selection {
  readonly part?: string;
  readonly edge?: string;
  /** The form's name of a joint. */
  readonly joint?: string;
  /** `keyOfFinding` of the finding whose place is shown. */
  readonly finding?: string;
}

export const selection = signal<Selection>({});

/** What the pointer is over; the drawing says what it is. */
export const hovered = signal<Selection>({});
