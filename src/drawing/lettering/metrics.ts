import table from '../../../shared/fonts/advance-widths.json';
import type { TextMark } from '../api.ts';
import { setCharacters } from './fractions.ts';

type Weight = TextMark['weight'];

const widths: ReadonlyMap<string, Readonly<Record<Weight, number>>> = new Map(
  table.runs.flatMap((run) =>
    run.regular.map((regular, at) => [
      String.fromCodePoint(run.from + at),
      { regular, semibold: run.semibold[at]! },
    ]),
  ),
);

/** Size of the em, mm, at which capitals stand so high: what a PDF calls the font size. */
export function fontSizeOf(height: number): number {
  return (height * 1000) / table.capHeight;
}

/**
 * Width of a text in mm at a height of capitals in mm, without kerning: what is set is never more than a hair wider,
 * mostly narrower. Letters that the font lacks count as its empty box.
 */
export function widthOfText(text: string, height: number, weight: Weight): number {
  return (unitsOfText(text, weight) * height) / table.capHeight;
}

/** Texts are asked for over and over while places for them are tried: the last few thousand are kept. */
const MOST_KEPT = 4000;
const kept: Readonly<Record<Weight, Map<string, number>>> = { regular: new Map(), semibold: new Map() };

function unitsOfText(text: string, weight: Weight): number {
  const own = kept[weight];
  const known = own.get(text);
  if (known !== undefined) return known;
  if (own.size >= MOST_KEPT) own.clear();
  const units = countUnits(text, weight);
  own.set(text, units);
  return units;
}

function countUnits(text: string, weight: Weight): number {
  let units = 0;
  for (const { character, as } of setCharacters(text)) {
    if (as === 'numerator') units += table.numerators[weight][Number(character)]!;
    else if (as === 'denominator') units += table.denominators[weight][Number(character)]!;
    else units += widths.get(character)?.[weight] ?? table.missing[weight];
  }
  return units;
}
