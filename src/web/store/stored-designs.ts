import type { Design } from '../../design/index.ts';
import { database, type KeptFile, type StoredDesign, type Thumbnail } from './database.ts';

/** Every design, those deleted as well, the one changed last first. */
export async function listDesigns(): Promise<readonly StoredDesign[]> {
  const all = await (await database()).getAll('designs');
  return all.toSorted((a, b) => b.changed.localeCompare(a.changed));
}

export async function storedDesign(id: string): Promise<StoredDesign | undefined> {
  return (await database()).get('designs', id);
}

/** Puts a new design into the list and gives its identity there. */
export async function storeDesign(design: Design): Promise<StoredDesign> {
  const time = new Date().toISOString();
  const stored: StoredDesign = {
    id: crypto.randomUUID(),
    name: design.name,
    form: design.form.name,
    made: time,
    changed: time,
    base: design,
  };
  await (await database()).put('designs', stored);
  return stored;
}

type Listed = Partial<Pick<StoredDesign, 'name'>> & {
  readonly thumbnail?: Thumbnail;
  readonly deleted?: string | undefined;
};

/** Changes what the list shows of a design. */
export async function relistDesign(id: string, listed: Listed): Promise<void> {
  const db = await database();
  const transaction = db.transaction('designs', 'readwrite');
  const before = await transaction.store.get(id);
  if (before !== undefined) await transaction.store.put(withListed(before, listed));
  await transaction.done;
}

function withListed(before: StoredDesign, listed: Listed): StoredDesign {
  const { deleted: _, ...others } = { ...before, ...listed };
  const deleted = 'deleted' in listed ? listed.deleted : before.deleted;
  return deleted === undefined ? others : { ...others, deleted };
}

/** Takes a design out of the browser with its whole log. */
export async function forgetDesign(id: string): Promise<void> {
  const db = await database();
  const transaction = db.transaction(['designs', 'changes'], 'readwrite');
  await transaction.objectStore('designs').delete(id);
  await transaction.objectStore('changes').delete(IDBKeyRange.bound([id, 0], [id, Number.MAX_SAFE_INTEGER]));
  await transaction.done;
}

/** Keeps a file that cannot be used, as it came. */
export async function keepFile(file: Omit<KeptFile, 'id' | 'time'>): Promise<KeptFile> {
  const kept = { ...file, id: crypto.randomUUID(), time: new Date().toISOString() };
  await (await database()).put('kept', kept);
  return kept;
}

export async function keptFiles(): Promise<readonly KeptFile[]> {
  return (await database()).getAll('kept');
}
