import { locate, type Region, type Vec } from '../../geometry/index.ts';
import type { Offcut } from './offcuts.ts';

/** The offcut that a place of a board is in; where it is in none the largest; nothing where nothing is left. */
export function offcutAt(offcuts: readonly Offcut[], at: Vec): Region | undefined {
  const here = offcuts.find(({ region }) => locate([region], at) !== 'outside');
  return (here ?? offcuts.toSorted((a, b) => b.area - a.area)[0])?.region;
}
