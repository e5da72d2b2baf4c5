import { database } from './database.ts';
import { readThing, writeThing } from './things.ts';

const keyOf = (design: string, file: string): string => `${prefixOf(design)}${file}`;
const prefixOf = (design: string): string => `photograph ${design} `;

/** A photograph of a board of a design, as it came; the design itself only names it. */
export function readPhotograph(design: string, file: string): Promise<Blob | undefined> {
  return readThing<Blob>(keyOf(design, file));
}

/** Rejects with a `QuotaExceededError` when the browser has no room left. */
export function writePhotograph(design: string, file: string, photograph: Blob): Promise<void> {
  return writeThing(keyOf(design, file), photograph);
}

/** The photographs of one design for another that begins where it is. */
export async function copyPhotographs(from: string, to: string): Promise<void> {
  const db = await database();
  const keys = await db.getAllKeys('things', photographsOf(from));
  for (const key of keys)
    await db.put('things', await db.get('things', key), prefixOf(to) + key.slice(prefixOf(from).length));
}

/** Where the photographs of a design stand among the things that are kept. */
export function photographsOf(design: string): IDBKeyRange {
  const prefix = prefixOf(design);
  return IDBKeyRange.bound(prefix, `${prefix}\uffff`);
}
