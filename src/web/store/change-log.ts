import type { Change } from '../state/history/fold-log.ts';
import { database } from './database.ts';

const linesFrom = (design: string, after: number) =>
  IDBKeyRange.bound([design, after], [design, Number.MAX_SAFE_INTEGER], true);

/** The lines of a design's log after a number. */
export async function readChanges(design: string, after = 0): Promise<readonly Change[]> {
  const db = await database();
  return db.getAll('changes', linesFrom(design, after));
}

/**
 * Puts a line at the end of a design's log, on the disk before it returns. Gives every line after `after`, its own last: other tabs may have written
 * in between. Rejects with a `QuotaExceededError` when the browser has no room left.
 */
export async function appendChange(
  design: string,
  line: Omit<Change, 'seq'>,
  after: number,
): Promise<readonly Change[]> {
  const db = await database();
  const transaction = db.transaction(['changes', 'designs'], 'readwrite', { durability: 'strict' });
  const log = transaction.objectStore('changes');
  const since = await log.getAll(linesFrom(design, after));
  const own: Change = { ...line, seq: (since.at(-1)?.seq ?? after) + 1 };
  await log.add({ ...own, design });
  const list = transaction.objectStore('designs');
  const listed = await list.get(design);
  if (listed !== undefined) await list.put({ ...listed, changed: line.time });
  await transaction.done;
  return [...since, own];
}
