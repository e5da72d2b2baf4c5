import { database } from './database.ts';

/** Small things that the browser keeps by name beside the designs: printers, the workshop. The caller knows of what kind each is. */
export async function readThing<T>(name: string): Promise<T | undefined> {
  return (await (await database()).get('things', name)) as T | undefined;
}

export async function writeThing(name: string, thing: unknown): Promise<void> {
  await (await database()).put('things', thing, name);
}
