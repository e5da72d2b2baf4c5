import { signal } from '@preact/signals';
import type { PictureOptions } from '../../engine/answers/picture.ts';

/** What the shape screen shows: a side of the base, or one part alone. */
export const shownPicture = signal<PictureOptions['of'] | undefined>(undefined);

/** The parameter whose field is to be shown and focused. */
export const soughtParameter = signal<string | undefined>(undefined);

export const keyOfPicture = (of: PictureOptions['of']): string =>
  'side' in of ? of.side : `part ${of.part}`;

export const isOfPart = (of: PictureOptions['of'] | undefined): boolean => of !== undefined && 'part' in of;
