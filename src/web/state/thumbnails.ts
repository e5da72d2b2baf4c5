import { effect } from '@preact/signals';
import { answerOf, progress, want } from '../engine/engine.ts';
import type { Thumbnail } from '../store/database.ts';
import { relistDesign } from '../store/stored-designs.ts';
import { currentId, design } from './current.ts';
import { listChanged } from './designs.ts';

let shown = '';

/** Keeps the list's picture and name of the design in hand up to date, whenever the maker is still for a moment. */
export function keepThumbnails(): void {
  want('thumbnail', undefined);
  effect(() => {
    const id = currentId.value;
    const name = design.value?.name;
    const thumbnail = answerOf('thumbnail').value as Thumbnail | undefined;
    if (id === undefined || name === undefined || progress.value !== 'whole') return;
    const now = JSON.stringify([id, name, thumbnail]);
    if (now === shown) return;
    shown = now;
    void relistDesign(id, {
      name,
      changed: new Date().toISOString(),
      ...(thumbnail === undefined ? {} : { thumbnail }),
    })
      .then(listChanged)
      // The design itself is kept elsewhere; without room the list is a little old.
      .catch(() => undefined);
  });
}
