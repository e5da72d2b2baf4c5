import type { Box, Edge } from '../../geometry/index.ts';
import type { Content } from './content.ts';
import { extentsOf } from './extents.ts';
import { type TurnedContent, turnerOf } from './pieces.ts';
import { straightTurns } from './straight-turns.ts';

/** Turns that are searched: every half degree. A half turn needs the same sheets again. */
const TURN_STEP = Math.PI / 360;
const EVEN = Array.from({ length: 360 }, (_, i) => i * TURN_STEP);
// A quarter turn must be the very number that others name.
EVEN[180] = Math.PI / 2;
/** Edges whose ends lie so far apart, mm, are enough for most lower bounds: the many short ones are lettering, ticks and hatching. */
const LONG = 40;

/** What the search asks of the content of a pattern. */
export interface TurnSource {
  /** Turns to search, rad, rising. */
  readonly turns: readonly number[];
  /** Those among them, by index, that leave the pattern upright, and those that lay a straight side along the paper. */
  readonly upright: readonly number[];
  readonly straight: readonly number[];
  /** No content lies farther than this from the centre of turns, mm. */
  readonly reach: number;
  /** At each of the turns, no farther than the content reaches. */
  readonly extents: readonly Box[];
  /** The content at a turn, rad. */
  readonly at: (turn: number) => TurnedContent;
  /** Some of the content, so chosen that it alone often shows how many sheets are needed: a quicker lower bound. */
  readonly someAt: (turn: number) => TurnedContent;
}

export function turnSourceOf(content: Content): TurnSource {
  const straight = straightTurns(content);
  const turns = [...new Set([...EVEN, ...straight])].sort((a, b) => a - b);
  const some = { ...content, edges: content.edges.filter(isLong) };
  return {
    turns,
    upright: [0, turns.indexOf(Math.PI / 2)],
    straight: straight.map((turn) => turns.indexOf(turn)),
    reach: content.reach,
    extents: turns.map(extentsOf(content)),
    at: remembered(turnerOf(content)),
    someAt: remembered(turnerOf(some)),
  };
}

function isLong({ from, to }: Edge): boolean {
  return (to.x - from.x) ** 2 + (to.y - from.y) ** 2 >= LONG * LONG;
}

export function remembered<T>(compute: (turn: number) => T): (turn: number) => T {
  const known = new Map<number, T>();
  return (turn) => {
    const found = known.get(turn) ?? compute(turn);
    known.set(turn, found);
    return found;
  };
}
