import type { LengthStyle } from '../measure/index.ts';
import { type LengthWords, lengthWords } from '../routing/index.ts';
import type { SketchedPart } from '../sketch/index.ts';

/** How findings of one part speak: lengths in the maker's unit, edges and openings by the names that are printed. */
export interface PartWords extends LengthWords {
  /** Edges by their identities, one after the other. */
  readonly edges: (ids: readonly string[]) => string;
  /** An opening by its name in the form. */
  readonly opening: (name: string) => string;
}

export function partWords(part: Pick<SketchedPart, 'openings'>, style?: LengthStyle): PartWords {
  return {
    ...lengthWords(style),
    edges: (ids) => {
      const names = edgeNames(ids, part);
      return names.join(names.some((name) => name.includes(',')) ? '; ' : ', ');
    },
    opening: (name) => {
      const label = part.openings.find((opening) => opening.name === name)?.label;
      return label === undefined ? spaced(name) : `"${label}"`;
    },
  };
}

/** Edges by their names, each once: several edges may be printed by one name. */
export function edgeNames(ids: readonly string[], part: Pick<SketchedPart, 'openings'>): readonly string[] {
  return [...new Set(ids.map((id) => edgeName(id, part)))];
}

/** An edge as makers read it: `Bolt hole, rim` for an opening's, `knee joint` for `knee_joint`. */
function edgeName(id: string, { openings }: Pick<SketchedPart, 'openings'>): string {
  const opening = openings.find(({ name }) => id.startsWith(`${name}.`));
  if (opening === undefined) return spaced(id);
  return `${opening.label}, ${spaced(id.slice(opening.name.length + 1))}`;
}

function spaced(name: string): string {
  return name.replaceAll('_', ' ').replaceAll('.', ', ');
}
