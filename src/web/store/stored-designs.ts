import type { Design } from '../../design/index.ts';
import { database, type KeptFile, type StoredDesign, type Thumbnail } from './database.ts';
import { photographsOf } from './photographs.ts';

/** Every design, those deleted as well, the one changed last first. */
export async function listDesigns(): Promise<readonly StoredDesign[]> {
  const all = await (await database()).getAll('designs');
  return all.toSorted((a, b) => b.changed.localeCompare(a.changed));
}

export async function storedDesign(id: string): Promise<StoredDesign | undefined> {
  return (await database()).get('designs', id);
}

/** Puts a new design into the list and gives its place there. */
export async function storeDesign(design: Design, thumbnail?: Thumbnail): Promise<StoredDesign> {
  const time = new Date().toISOString();
  const stored: StoredDesign = {
    id: crypto.randomUUID(),
    name: design.name,
    form: design.form.name,
    made: time,
    changed: time,
    base: design,
    ...(thumbnail === undefined ? {} : { thumbnail }),
  };
  await (await database()).put('designs', stored);
  return stored;
}

/** What the list shows of a design; `deleted: undefined` brings it back. */
interface Listed {
  readonly name?: string;
  readonly changed?: string;
  readonly thumbnail?: Thumbnail;
  readonly deleted?: string | undefined;
}

/** Changes what the list shows of a design. */
export async function relistDesign(id: string, listed: Listed): Promise<void> {
  const db = await database();
  const transaction = db.transaction('designs', 'readwrite');
  const before = await transaction.store.get(id);
  if (before !== undefined) {
    const { deleted, ...others } = { ...before, ...listed };
    await transaction.store.put(deleted === undefined ? others : { ...others, deleted });
  }
  await transaction.done;
}

/** Takes a design away with all that is kept of it: its log and its photographs. All of it goes or nothing. */
export async function forgetDesign(id: string): Promise<void> {
  const db = await database();
  const transaction = db.transaction(['designs', 'changes', 'things'], 'readwrite');
  const changes = transaction.objectStore('changes');
  const lines = await changes.index('design').getAllKeys(id);
  await Promise.all([
    transaction.objectStore('designs').delete(id),
    ...lines.map((line) => changes.delete(line)),
    transaction.objectStore('things').delete(photographsOf(id)),
    transaction.done,
  ]);
}

/** Keeps a file that cannot be used, as it came. */
export async function keepFile(file: Omit<KeptFile, 'id' | 'time'>): Promise<void> {
  const kept = { ...file, id: crypto.randomUUID(), time: new Date().toISOString() };
  await (await database()).put('kept', kept);
}

export async function keptFiles(): Promise<readonly KeptFile[]> {
  const all = await (await database()).getAll('kept');
  return all.toSorted((a, b) => b.time.localeCompare(a.time));
}

export async function forgetFile(id: string): Promise<void> {
  await (await database()).delete('kept', id);
}
