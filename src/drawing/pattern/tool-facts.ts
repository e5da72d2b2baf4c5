import type { ToolFact } from '../api.ts';
import { writeExact } from '../layout/figures.ts';
import { plainLabel } from './plain-words.ts';
import type { PatternSource } from './source.ts';
import { offsetWords } from './template-labels.ts';
import { leafLines } from './words.ts';

/** How the part is routed and sawn, for the notes and for the first page of the sheets; nothing of a part that is only sawn. */
export function toolFacts(source: PatternSource): readonly ToolFact[] {
  if (source.part.onlySawn === true) return [];
  const { tooling, offsets, blade, endAllowance, template } = source.routing;
  const { lengths } = source.options;
  const write = (mm: number): string => writeExact(mm, lengths);
  const { guide, cutter } = tooling;
  const machine = tooling.machine === 'table' ? 'Router table' : 'Hand-held router';
  const guideWords =
    guide.kind === 'bearing'
      ? `bearing${named(guide.name)} ${write(guide.diameter)} at the ${guide.at}`
      : `bushing${named(guide.name)} ${write(guide.outsideDiameter)} outside, barrel ${write(guide.barrelLength)}`;
  const outer = offsets.find((offset) => offset.across === undefined);
  const opening = offsets.find((offset) => offset.across !== undefined);
  const facts: readonly (ToolFact | undefined)[] = [
    template.length === 0 ? { words: 'No template is possible with this guide.', grave: true } : undefined,
    { words: `${machine}, cutter${named(cutter.name)} ${write(cutter.diameter)}, ${guideWords}.` },
    outer && { words: `Edges: ${offsetWords(outer, lengths)}.` },
    opening && { words: `Openings: ${offsetWords(opening, lengths)}.` },
    { words: 'template runs on past sawn ends', figure: write(tooling.runOn) },
    { words: 'saw outside the line by', figure: write(tooling.sawAllowance) },
    endAllowance === 0 ? undefined : { words: 'left on at the ends', figure: write(endAllowance) },
    blade && { words: 'band-saw blade up to', figure: write(blade.blade.width) },
    ...leafLines(source).map((words) => ({ words })),
  ];
  return facts.filter((fact) => fact !== undefined);
}

/** The tool's own name, to stand before its size. */
function named(name: string | undefined): string {
  const words = plainLabel(name ?? '');
  return words === '' ? '' : ` \u201c${words}\u201d`;
}
