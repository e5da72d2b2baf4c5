import { effect, signal } from '@preact/signals';
import { readThing, writeThing } from '../../store/things.ts';
import { type Drawn, drawn, past } from './drawn.ts';
import { layPhotograph, markCorners, photograph, SHEETS, sheet } from './photograph.ts';

const DRAWN = 'own shape';
const PHOTOGRAPH = 'own shape photograph';

interface KeptDrawn {
  readonly drawn: Drawn;
  readonly past: readonly Drawn[];
  readonly sheet: { readonly name: string; readonly way: string };
  readonly corners: readonly { readonly x: number; readonly y: number }[];
}

/** Whether the browser keeps what is drawn; not where it has no room, or keeps nothing at all. */
export const isKept = signal(true);

let begun: Promise<void> | undefined;

/** Takes up what was drawn when the page was last here, and keeps every step from then on. */
export function keepDrawn(): Promise<void> {
  begun ??= takeUp().finally(keepOn);
  return begun;
}

async function takeUp(): Promise<void> {
  const [kept, file] = await Promise.all([readThing<KeptDrawn>(DRAWN), readThing<Blob>(PHOTOGRAPH)]);
  if (kept === undefined) return;
  drawn.value = kept.drawn;
  past.value = kept.past;
  sheet.value =
    SHEETS.find(({ name, way }) => name === kept.sheet.name && way === kept.sheet.way) ?? sheet.value;
  if (file === undefined) return;
  await layPhotograph(file);
  markCorners(kept.corners);
}

function keepOn(): void {
  effect(() => {
    const { name, way } = sheet.value;
    keep(DRAWN, {
      drawn: drawn.value,
      past: past.value,
      sheet: { name, way },
      corners: photograph.value?.corners ?? [],
    } satisfies KeptDrawn);
  });
  let file = photograph.peek()?.file;
  effect(() => {
    const now = photograph.value?.file;
    if (now === file) return;
    file = now;
    keep(PHOTOGRAPH, now);
  });
}

function keep(name: string, thing: unknown): void {
  writeThing(name, thing).then(
    () => {
      isKept.value = true;
    },
    () => {
      isKept.value = false;
    },
  );
}
