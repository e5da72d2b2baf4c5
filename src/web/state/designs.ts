import { signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { engineDo } from '../engine/engine-do.ts';
import { readChanges } from '../store/change-log.ts';
import type { StoredDesign } from '../store/database.ts';
import { copyPhotographs } from '../store/photographs.ts';
import {
  forgetDesign,
  listDesigns,
  relistDesign,
  storeDesign,
  storedDesign,
} from '../store/stored-designs.ts';
import { onTabNews, tellTabs } from '../store/tabs.ts';
import { readThing, writeThing } from '../store/things.ts';
import { words } from '../words/en.ts';
import { change, closeDesign, currentId, holdUnkept, openDesign } from './current.ts';
import { foldLog, startLog } from './history/fold-log.ts';

/** Every design that the browser keeps, the one changed last first; deleted ones as well. */
export const designs = signal<readonly StoredDesign[]>([]);

/** A design that could not be taken in hand, and why. */
export const notOpened = signal<string | undefined>(undefined);

const LAST = 'last design';

export async function refreshDesigns(): Promise<void> {
  designs.value = await listDesigns();
}

/** Takes a design of the list in hand; false, with the reason in `notOpened`, where it stays where it is. */
export async function takeInHand(id: string): Promise<boolean> {
  notOpened.value = undefined;
  const stored = await storedDesign(id);
  if (stored === undefined) return false;
  const read = await engineDo('checkStored', await asItIs(stored));
  if (!read) {
    notOpened.value = words.designs.notRead(stored.name);
    return false;
  }
  if (!(await openDesign(stored))) {
    notOpened.value = words.designs.busy;
    return false;
  }
  await writeThing(LAST, id).catch(() => undefined);
  return true;
}

/** The design in hand last, if it is there still. */
export async function lastInHand(): Promise<string | undefined> {
  const id = await readThing<string>(LAST);
  return designs.value.find((each) => each.id === id && each.deleted === undefined)?.id;
}

/** A design of the list as its log leaves it. */
export async function asItIs(stored: StoredDesign): Promise<Design> {
  return foldLog(startLog(stored.base), await readChanges(stored.id)).design;
}

/** Puts a design into the list and takes it in hand. */
export async function addDesign(design: Design): Promise<void> {
  const stored = await storeDesign(design).catch(() => undefined);
  if (stored === undefined) {
    holdUnkept(design);
    return;
  }
  await listChanged();
  await takeInHand(stored.id);
}

/** Begins a design of a form that comes with the program. */
export async function beginFrom(form: string, name: string, unit: 'mm' | 'in'): Promise<void> {
  await addDesign(await engineDo('beginDesign', { form, name, unit, date: today() }));
}

/** Another design that begins where this one is; it has a history of its own. */
export async function copyDesign(stored: StoredDesign): Promise<void> {
  const now = await asItIs(stored);
  const copy = await storeDesign({ ...now, name: words.designs.copyOf(now.name) }, stored.thumbnail);
  await copyPhotographs(stored.id, copy.id);
  await listChanged();
}

/** The name is part of the design: a change like any other. */
export async function renameDesign(id: string, name: string): Promise<void> {
  if (currentId.value !== id && !(await takeInHand(id))) return;
  change(words.designs.renamed(name), [{ path: ['name'], to: name }]);
  await relistDesign(id, { name });
  await listChanged();
}

/** Deleted designs stay, out of sight, and can be brought back. */
export async function setDeleted(id: string, deleted: boolean): Promise<void> {
  await relistDesign(id, { deleted: deleted ? new Date().toISOString() : undefined });
  if (deleted && currentId.value === id) closeDesign();
  await listChanged();
}

/** Lets a deleted design go for good, which gives its room back to the browser. */
export async function letGoForGood(id: string): Promise<void> {
  await forgetDesign(id);
  tellTabs({ kind: 'gone', design: id });
  await listChanged();
}

export async function listChanged(): Promise<void> {
  await refreshDesigns();
  tellTabs({ kind: 'list' });
}

onTabNews((news) => {
  if (news.kind === 'list') void refreshDesigns();
  // Nothing more can be kept of it.
  if (news.kind === 'gone' && news.design === currentId.value) closeDesign();
});

/** The maker's own calendar day, ISO 8601. */
export function today(now = new Date()): string {
  const two = (n: number) => String(n).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
