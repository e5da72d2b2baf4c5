import type { SketchedPart } from '../../sketch/index.ts';
import type { PatternOptions } from '../api.ts';

/** Letters that a name keeps on paper; what is longer would be wider than any part. */
const MOST_IN_LABEL = 48;
const MOST_IN_DESIGN = 120;
const MOST_IN_REVISION = 24;

/** A name in one line, its spaces single, what cannot be printed left out, and shortened where it is too long. */
function plain(text: string, most: number): string {
  const letters = [
    ...text
      .slice(0, 4 * most)
      .replace(/[\s\p{Cc}\p{Cs}]+/gu, ' ')
      .trim(),
  ];
  return letters.length <= most ? letters.join('') : `${letters.slice(0, most - 1).join('')}\u2026`;
}

/** A name as it is lettered. */
export function plainLabel(text: string): string {
  return plain(text, MOST_IN_LABEL);
}

/** The part with every name that is lettered made fit for paper. */
export function plainPart(part: SketchedPart): SketchedPart {
  const relabel = <T extends { readonly label: string }>(named: T): T => ({
    ...named,
    label: plainLabel(named.label),
  });
  return {
    ...relabel(part),
    openings: part.openings.map(relabel),
    joints: part.joints.map(relabel),
    dimensions: part.dimensions.map(relabel),
  };
}

export function plainOptions(options: PatternOptions): PatternOptions {
  return {
    ...options,
    design: plain(options.design, MOST_IN_DESIGN),
    revision: plain(options.revision, MOST_IN_REVISION),
    date: plain(options.date, MOST_IN_REVISION),
  };
}
