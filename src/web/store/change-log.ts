import type { Change } from '../state/history/fold-log.ts';
import { database } from './database.ts';

/** The lines of a design's log, in the order in which they came to the disk: the same for every tab. */
export async function readChanges(design: string): Promise<readonly Change[]> {
  const db = await database();
  return db.getAllFromIndex('changes', 'design', design);
}

/**
 * Puts a line at the end of a design's log; on the disk when it returns. One request and no more, so that nothing of the page is needed
 * for it to be finished once it is made. Rejects with a `QuotaExceededError` when the browser has no room left.
 */
export async function appendChange(design: string, line: Change): Promise<void> {
  const db = await database();
  const transaction = db.transaction('changes', 'readwrite', { durability: 'strict' });
  const added = transaction.store.add({ ...line, design });
  // The browser is told at once that no more will come.
  transaction.commit();
  await Promise.all([added, transaction.done]);
}
