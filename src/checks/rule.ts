import type { Finding } from '../core/index.ts';
import type { Routing } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';

/** What a rule has to say of one part; none when all is well. */
export type Rule = (part: SketchedPart, routing: Routing) => Finding[];

/** mm: cabinet outlines are held to 1/32 in (common practice); what is off by less is sanded away. */
export const OUTLINE_TOLERANCE = 0.8;
