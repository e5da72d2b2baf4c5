import { effect, signal } from '@preact/signals';
import type { LaidPhotograph } from '../engine/answers/figures.ts';
import { currentId } from '../state/current.ts';
import { readPhotograph, writePhotograph } from '../store/photographs.ts';
import { photoDo } from './photo-do.ts';
import type { BoardPicture, PhotoFile } from './photo-protocol.ts';

/** Photographs of the design in hand by the name of their file: `missing` where this browser does not have it. */
export const photographs = signal<ReadonlyMap<string, PhotoFile | 'missing'>>(new Map());
/** The same, true on their boards. */
export const boardPictures = signal<ReadonlyMap<string, BoardPicture>>(new Map());
/** Is a photograph being decoded or made true? */
export const layingPhotographs = signal(0);

/** What was asked last of each file: an answer that comes after a newer ask is let go. */
const wanted = new Map<string, string>();
let owner: string | undefined;

// Another design has other photographs.
effect(() => {
  if (currentId.value === owner) return;
  owner = currentId.value;
  forgetAll();
});

function forgetAll(): void {
  for (const picture of boardPictures.peek().values()) closeAll(picture);
  wanted.clear();
  photographs.value = new Map();
  boardPictures.value = new Map();
}

function closeAll({ levels }: BoardPicture): void {
  for (const level of levels) level.close();
}

/** Keeps a photograph for the design in hand and takes it up at once. Rejects where it is no picture or there is no room for it. */
export async function takePhotograph(file: string, blob: Blob): Promise<{ width: number; height: number }> {
  const id = currentId.peek();
  const photo = { key: crypto.randomUUID(), blob };
  const size = await photoDo({ kind: 'measure', photo });
  if (id === undefined) throw new Error('no design in hand');
  await writePhotograph(id, file, blob);
  wanted.delete(file);
  photographs.value = new Map(photographs.peek()).set(file, photo);
  return size;
}

/** The file of a photograph of the design in hand; reads it from the browser's store when it is first asked for. */
export async function photoFile(file: string): Promise<PhotoFile | undefined> {
  const known = photographs.peek().get(file);
  if (known !== undefined && known !== 'missing') return known;
  const id = currentId.peek();
  if (id === undefined) return undefined;
  const blob = await readPhotograph(id, file).catch(() => undefined);
  if (currentId.peek() !== id) return undefined;
  const now = photographs.peek().get(file);
  if (now !== undefined && now !== 'missing') return now;
  const photo = blob === undefined ? undefined : { key: crypto.randomUUID(), blob };
  photographs.value = new Map(photographs.peek()).set(file, photo ?? 'missing');
  return photo;
}

/** Pixels of the first, quick picture of a board. */
const QUICK = 250_000;

/** Has photographs made true that are not yet, or lie otherwise now: quickly first, then as fine as they are. */
export function layPhotographs(all: readonly LaidPhotograph[]): void {
  for (const { file, laid, size } of all) {
    if (laid === undefined) continue;
    const state = photographs.peek().get(file);
    const key = JSON.stringify([
      state === undefined || state === 'missing' ? '' : state.key,
      laid.toBoard,
      size,
    ]);
    if (wanted.get(file) === key) continue;
    void lay(file, laid, size);
  }
}

async function lay(
  file: string,
  laid: NonNullable<LaidPhotograph['laid']>,
  size: LaidPhotograph['size'],
): Promise<void> {
  const asked = JSON.stringify(['', laid.toBoard, size]);
  wanted.set(file, asked);
  const id = currentId.peek();
  const photo = await photoFile(file);
  if (photo === undefined || currentId.peek() !== id || wanted.get(file) !== asked) return;
  const key = JSON.stringify([photo.key, laid.toBoard, size]);
  wanted.set(file, key);
  layingPhotographs.value += 1;
  try {
    for (const most of [QUICK, undefined]) {
      const picture = await photoDo({
        kind: 'lay',
        photo,
        laid,
        size,
        ...(most === undefined ? {} : { most }),
      });
      if (wanted.get(file) !== key || currentId.peek() !== id) {
        if (picture !== undefined) closeAll(picture);
        return;
      }
      show(file, picture);
    }
  } catch {
    photographs.value = new Map(photographs.peek()).set(file, 'missing');
  } finally {
    layingPhotographs.value -= 1;
  }
}

function show(file: string, picture: BoardPicture | undefined): void {
  const pictures = new Map(boardPictures.peek());
  const before = pictures.get(file);
  if (picture === undefined) pictures.delete(file);
  else pictures.set(file, picture);
  boardPictures.value = pictures;
  // What is drawn at this moment may still be drawn from it.
  if (before !== undefined) setTimeout(() => closeAll(before), 1000);
}
