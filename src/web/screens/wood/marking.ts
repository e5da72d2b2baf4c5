import { signal } from '@preact/signals';

/** The photograph whose known points are being marked: of which board, and which of its photographs. */
export const marking = signal<{ readonly boardAt: number; readonly at: number } | undefined>(undefined);
