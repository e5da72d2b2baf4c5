import { type Design, designSchema } from './design-schema.ts';
import { type Workshop, workshopSchema } from './workshop-schema.ts';

/**
 * The text of a design file: names in the order of the schema, two blanks a level, a line break at the end. The same
 * design always gives the same text, and reading it gives the design back. A design that breaks its own schema throws.
 */
export function writeDesign(design: Design): string {
  return `${JSON.stringify(designSchema.parse(design), null, 2)}\n`;
}

/** The text of a workshop file, by the same rules. */
export function writeWorkshop(workshop: Workshop): string {
  return `${JSON.stringify(workshopSchema.parse(workshop), null, 2)}\n`;
}
