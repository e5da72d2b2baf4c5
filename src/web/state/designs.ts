import { signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { engineDo } from '../engine/engine.ts';
import type { StoredDesign } from '../store/database.ts';
import { listDesigns, relistDesign, storeDesign, storedDesign } from '../store/stored-designs.ts';
import { onTabNews, tellTabs } from '../store/tabs.ts';
import { readThing, writeThing } from '../store/things.ts';
import { closeDesign, currentId, openDesign } from './current.ts';

/** Every design that the browser keeps, the one changed last first; deleted ones as well. */
export const designs = signal<readonly StoredDesign[]>([]);

const LAST = 'last design';

export async function refreshDesigns(): Promise<void> {
  designs.value = await listDesigns();
}

/** Takes a design of the list in hand. */
export async function takeInHand(id: string): Promise<boolean> {
  const stored = await storedDesign(id);
  if (stored === undefined || !(await openDesign(stored))) return false;
  await writeThing(LAST, id);
  return true;
}

/** The design that was in hand last, if it is there still. */
export async function lastInHand(): Promise<string | undefined> {
  const id = await readThing<string>(LAST);
  return designs.value.find((each) => each.id === id && each.deleted === undefined)?.id;
}

/** Puts a design into the list and takes it in hand. */
export async function addDesign(design: Design): Promise<void> {
  const { id } = await storeDesign(design);
  await listChanged();
  await takeInHand(id);
}

/** Begins a design of a form that comes with the program. */
export async function beginFrom(form: string, name: string, unit: 'mm' | 'in'): Promise<void> {
  await addDesign(await engineDo('beginDesign', { form, name, unit, date: today() }));
}

/** Deleted designs stay, out of sight, and can be brought back. */
export async function setDeleted(id: string, deleted: boolean): Promise<void> {
  await relistDesign(id, { deleted: deleted ? new Date().toISOString() : undefined });
  if (deleted && currentId.value === id) closeDesign();
  await listChanged();
}

export async function listChanged(): Promise<void> {
  await refreshDesigns();
  tellTabs({ kind: 'list' });
}

onTabNews((news) => {
  if (news.kind === 'list') void refreshDesigns();
});

/** The maker's own calendar day, ISO 8601. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
