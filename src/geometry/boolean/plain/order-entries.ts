import { PLAIN_CLEARANCE } from '../../tolerance.ts';
import type { Workspace } from './workspace.ts';

/** Puts the entries in order along the loops. False when two of one piece lie too near each other to be told apart. */
export function orderEntries(w: Workspace): boolean {
  const { order, rank, entryPiece, entryPlace, entryStart, entryCount, pieceStart, loopCount, places } = w;
  for (let k = 0; k < entryCount; k++) {
    const piece = entryPiece[k]!;
    const place = entryPlace[k]!;
    let m = k - 1;
    for (; m >= 0; m--) {
      const other = order[m]!;
      const before = entryPiece[other]! - piece;
      if (before < 0 || (before === 0 && entryPlace[other]! <= place)) break;
      order[m + 1] = other;
    }
    order[m + 1] = k;
  }
  let loop = 0;
  entryStart[0] = 0;
  for (let m = 0; m < entryCount; m++) {
    const k = order[m]!;
    rank[k] = m;
    while (entryPiece[k]! >= pieceStart[loop + 1]!) entryStart[++loop] = m;
    if (m === 0 || entryPiece[order[m - 1]!] !== entryPiece[k]) continue;
    const a = order[m - 1]! & ~1;
    const b = k & ~1;
    const near = Math.abs(places[a]! - places[b]!) + Math.abs(places[a + 1]! - places[b + 1]!);
    if (near <= 2 * PLAIN_CLEARANCE) return false;
  }
  while (loop < loopCount) entryStart[++loop] = entryCount;
  return true;
}
