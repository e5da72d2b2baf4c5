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
  let units = 0;
  for (const { character, as } of setCharacters(text)) {
    if (as === 'numerator') units += table.numerators[weight][Number(character)]!;
    else if (as === 'denominator') units += table.denominators[weight][Number(character)]!;
    else units += widths.get(character)?.[weight] ?? table.missing[weight];
  }
  return (units * height) / table.capHeight;
}
