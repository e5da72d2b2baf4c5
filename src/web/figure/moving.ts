import { computed, signal } from '@preact/signals';
import { type Lying, type LyingMove, movedOnBoard, moveLying } from '../../wood/index.ts';
import type { LaidThing } from '../engine/answers/figures.ts';
import type { Moved } from './paint-figures.ts';

/** What is being moved on its board, and where to; until what comes of it is answered. */
interface Moving {
  readonly thing: LaidThing;
  readonly to: Lying;
  /** Let go: it stays there until the engine has heard of it. */
  readonly ended: boolean;
}

export const moving = signal<Moving | undefined>(undefined);

/** What it takes the board's places to, for all that shows the figure. */
export const moved = computed<Moved | undefined>(() => {
  const now = moving.value;
  if (now === undefined) return undefined;
  const { toLay, lying } = now.thing;
  return { lying: lying.id, by: movedOnBoard(toLay, lying, now.to) };
});

/** Shows a thing moved from where it lies by the engine's last word. */
export function moveThing(thing: LaidThing, from: Lying, move: LyingMove): Lying {
  const to = moveLying(thing.toLay, from, move);
  moving.value = { thing, to, ended: false };
  return to;
}
