import { signal } from '@preact/signals';
import type { Problem } from '../../core/index.ts';
import type { Design } from '../../design/index.ts';
import { engineDo } from '../engine/engine-do.ts';
import { keepFile } from '../store/stored-designs.ts';
import { addDesign } from './designs.ts';

/** A file that was not taken in, and why; it is kept as it came. */
export const refused = signal<{ readonly name: string; readonly problems: readonly Problem[] } | undefined>(
  undefined,
);

/** Takes a design file into the list, or keeps it as it came and says what is wrong with it. True when it is in hand. */
export async function takeInFile(file: File): Promise<boolean> {
  refused.value = undefined;
  const read = await engineDo('readFile', { text: await file.text(), name: file.name });
  if (read.ok) {
    await addDesign(read.value);
    return true;
  }
  refused.value = { name: file.name, problems: read.problems };
  const why = read.problems.map(({ message }) => message).join(' ');
  await keepFile({ name: file.name, file: new Blob([await file.arrayBuffer()]), why });
  return false;
}

/** Gives the design to the maker as the file that the command line reads. */
export async function saveDesign(design: Design): Promise<void> {
  const text = await engineDo('writeFile', design);
  saveFile(new Blob([text], { type: 'application/json' }), `${fileNameOf(design.name)}.json`);
}

/** Offers a file for saving, as if a link to it were followed. */
export function saveFile(file: Blob, name: string): void {
  const link = document.createElement('a');
  link.href = URL.createObjectURL(file);
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), 10_000);
}

/** Letters and digits of any script, with dashes between words: fit for any file system. */
function fileNameOf(name: string): string {
  const safe = name
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-|-$/g, '');
  return safe === '' ? 'design' : safe;
}
