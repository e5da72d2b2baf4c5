import type { PatternView } from '../api.ts';
import { writeLength } from '../layout/figures.ts';
import type { PatternSource } from './source.ts';

/** What a view is called on paper. */
export const VIEW_WORDS: Readonly<Record<PatternView, string>> = {
  part: 'the part',
  template: 'the template',
  'as-routed': 'as the cutter leaves it',
  all: 'part, template and as routed',
};

/** Which hand the pattern is, where the part has hands. */
export function handOf({ part, options }: PatternSource): 'left hand' | 'right hand' | undefined {
  if (part.quantity.right === 0) return undefined;
  return options.mirrored ? 'right hand' : 'left hand';
}

/** How many are made from this pattern as it lies, and how many of the other hand. */
export function quantityOf({ part, options }: PatternSource): {
  readonly here: number;
  readonly other: number;
} {
  const { left, right } = part.quantity;
  if (right === 0) return { here: left, other: 0 };
  return options.mirrored ? { here: right, other: left } : { here: left, other: right };
}

/** The name that stands in the part: `Splayed leg, left hand`. */
export function nameLine(source: PatternSource): string {
  const hand = handOf(source);
  return hand === undefined ? source.part.label : `${source.part.label}, ${hand}`;
}

/** What must not be lost with it: what this paper is, how many, which face shows, how thick. */
export function factsOf(source: PatternSource, many: string): readonly string[] {
  const { part, options } = source;
  return [
    options.view === 'template' ? 'Template' : 'Pattern',
    many,
    ...(part.onlySawn === true ? [] : ['show face this side']),
    `${writeLength(part.thickness, options.lengths)} thick`,
    ...leafFact(source),
  ];
}

/** In the part itself only which leaf belongs to which piece: `leaf A2 on FL, A4 on BR`; the notes say the rest. */
function leafFact({ options: { leaves = [] } }: PatternSource): readonly string[] {
  const shown = leaves.filter(({ face }) => face === 'face');
  if (shown.length === 0) return [];
  return [`leaf ${shown.map(({ leaf, piece }) => `${leaf} on ${piece}`).join(', ')}`];
}

/** One line for each leaf: `FL, face side: leaf A2, its upper face shows`. */
export function leafLines({ options: { leaves = [] } }: PatternSource): readonly string[] {
  return leaves.map(
    ({ piece, face, leaf, shows }) =>
      `${piece}, ${face === 'face' ? 'face side' : 'back'}: leaf ${leaf}, its ${shows} face shows`,
  );
}

/** How many are made of this hand, and how many of the other from which pattern: from the most words to the fewest. */
export function manyWords(source: PatternSource): readonly string[] {
  const { here, other } = quantityOf(source);
  if (other === 0) return [`make ${here}`];
  const { mirrored } = source.options;
  const hand = mirrored ? 'left' : 'right';
  const from = mirrored ? 'the pattern not mirrored' : 'the mirrored pattern';
  return [
    `make ${here}, ${hand} hand: ${other} from ${from}`,
    `make ${here} (${hand} hand: ${other}${mirrored ? '' : ', mirrored'})`,
    `make ${here} (and ${other} ${hand})`,
  ];
}

/** The warning on a mirrored pattern, by name; nothing on any other. */
export function mirroredWords({ options }: PatternSource): string | undefined {
  if (!options.mirrored) return undefined;
  return `${options.view === 'template' ? 'TEMPLATE' : 'PATTERN'} \u2013 MIRRORED`;
}
