import { type LineDrawing, type Picture, partPictures, sketchedPartPicture } from '../../drawing/index.ts';
import type { BaseView, Computed } from '../computed.ts';

/** What is looked at: the base from a side that was wanted, or one part square to its face, by its name. */
export type PictureOf = { readonly side: BaseView } | { readonly part: string };

/** A picture with its dimensions; nothing where the form has no base, or no such part. */
export function pictureOf(computed: Computed, of: PictureOf): (LineDrawing & Partial<Picture>) | undefined {
  if ('side' in of) return viewOf(computed, of.side);
  const { base, sketch } = computed;
  const made = base?.made.find(({ name }) => name === of.part);
  const placed = base?.base.parts.find(({ id }) => id === made?.members[0]?.part);
  if (made !== undefined && placed !== undefined) return partPictures(made, placed)[0];
  const drawn = sketch.parts.find(({ name }) => name === of.part);
  return drawn && { ...sketchedPartPicture(drawn), name: drawn.label };
}

/** A side of the base, where it was asked for. */
export function viewOf({ views }: Pick<Computed, 'views'>, side: BaseView): Picture | undefined {
  return views.find(({ view }) => view === side)?.picture;
}
