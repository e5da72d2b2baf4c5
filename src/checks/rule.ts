import type { Finding } from '../core/index.ts';
import type { Routing } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';
import type { PartWords } from './part-words.ts';

/** What a rule has to say of one part; none when all is well. */
export type Rule = (part: SketchedPart, routing: Routing, say: PartWords) => Finding[];

/** mm: cabinet outlines are held to 1/32 in (common practice); what is off by less is sanded away. */
export const OUTLINE_TOLERANCE = 0.8;

/** mm: a sheet of paper. A pencil line is wider, and nobody sees or measures less on wood. */
export const TRIFLE = 0.1;
