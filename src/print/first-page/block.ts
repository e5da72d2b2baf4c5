import type { Vec } from '../../geometry/index.ts';
import { ACCENT, type PageItem } from '../page/ink.ts';
import { linesWithin, words } from '../page/items.ts';

/** Something that takes a height at a given width, mm; drawn downwards from its upper left corner. */
export interface Block {
  readonly height: number;
  readonly draw: (corner: Vec) => readonly PageItem[];
}

export const TEXT_HEIGHT = 2;
/** Baseline to baseline, mm. */
export const LEADING = 3.7;
const HEADING_HEIGHT = 2.5;
/** From the top of a block to its first baseline below the heading, mm. */
export const BELOW_HEADING = 8.2;
const HEADING_BASELINE = 2.8;

export function heading(text: string, corner: Vec): PageItem {
  return words(
    text,
    { x: corner.x, y: corner.y - HEADING_BASELINE },
    {
      height: HEADING_HEIGHT,
      weight: 'semibold',
      ink: ACCENT,
    },
  );
}

/** A heading and paragraphs; numbered ones have their number hung in the margin. */
export function paragraphs(title: string, texts: readonly string[], width: number, numbered: boolean): Block {
  const indent = numbered ? 5 : 0;
  const set = texts.map((text) => linesWithin(text, width - indent, TEXT_HEIGHT, 'regular'));
  const gap = 1;
  const count = set.reduce((sum, lines) => sum + lines.length, 0);
  return {
    height: BELOW_HEADING + count * LEADING + set.length * gap,
    draw: (corner) => {
      let y = corner.y - BELOW_HEADING;
      const items: PageItem[] = [heading(title, corner)];
      set.forEach((lines, i) => {
        if (numbered)
          items.push(words(`${i + 1}`, { x: corner.x, y }, { height: TEXT_HEIGHT, weight: 'semibold' }));
        for (const line of lines) {
          items.push(words(line, { x: corner.x + indent, y }, { height: TEXT_HEIGHT }));
          y -= LEADING;
        }
        y -= gap;
      });
      return items;
    },
  };
}
