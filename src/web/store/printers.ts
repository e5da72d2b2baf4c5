import { signal } from '@preact/signals';
import type { Design } from '../../design/index.ts';
import { readThing, writeThing } from './things.ts';

/** A printer and paper that were measured, with what corrects them. */
export interface KeptPrinter {
  readonly name: string;
  /** The paper's size as a design names it: another size is another way through the printer. */
  readonly size: Design['paper']['size'];
  readonly calibration: NonNullable<Design['paper']['calibration']>;
}

const KEY = 'printers';

/** Every printer that was measured, in the order of their names. */
export const printers = signal<readonly KeptPrinter[]>([]);

export async function readPrinters(): Promise<void> {
  printers.value = (await readThing<readonly KeptPrinter[]>(KEY)) ?? [];
}

/** Keeps a printer's correction, in place of the one that it had for the same paper. */
export async function keepPrinter(printer: KeptPrinter): Promise<void> {
  await readPrinters();
  const others = printers.value.filter((each) => !isSame(each, printer));
  printers.value = [...others, printer].toSorted((a, b) => a.name.localeCompare(b.name));
  await writeThing(KEY, printers.value);
}

function isSame(a: KeptPrinter, b: KeptPrinter): boolean {
  return a.name === b.name && JSON.stringify(a.size) === JSON.stringify(b.size);
}
