import { type LineDrawing, type Picture, partPictures, sketchedPartPicture } from '../../drawing/index.ts';
import type { BaseView, Computed } from '../computed.ts';
import type { Looked } from '../look-at-design.ts';

/** What is looked at: the base from a side that was wanted, or one part square to its face, by its name. */
export type PictureOf = { readonly side: BaseView } | { readonly part: string };

/** A made part with its dimensions; nothing where there is no such part. */
export function partPictureOf(
  { base, sketch }: Computed,
  part: string,
): (LineDrawing & Partial<Picture>) | undefined {
  const made = base?.made.find(({ name }) => name === part);
  const placed = base?.base.parts.find(({ id }) => id === made?.members[0]?.part);
  if (made !== undefined && placed !== undefined) return partPictures(made, placed)[0];
  const drawn = sketch.parts.find(({ name }) => name === part);
  return drawn && { ...sketchedPartPicture(drawn), name: drawn.label };
}

/** A side of the base, where it was asked for. */
export function viewOf({ views }: Looked, side: BaseView): Picture | undefined {
  return views.find(({ view }) => view === side)?.picture;
}
