import { keptFor } from '../../core/index.ts';
import { mirrorPart, type SketchedPart } from '../../sketch/index.ts';

/** The other hand of a drawn part: always the very same object, by which copies are known to be mirror images. */
export const otherHand: (drawn: SketchedPart) => SketchedPart = keptFor(mirrorPart);
