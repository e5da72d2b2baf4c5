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
export const LEADING = 3.4;
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

const FINE = { height: 1.8, leading: 3.1, gap: 0.8, gutter: 8 } as const;

/** A heading over two columns of fine paragraphs, as even as whole paragraphs make them. */
export function fineColumns(title: string, texts: readonly string[], width: number): Block {
  const column = (width - FINE.gutter) / 2;
  const set = texts.map((text) => {
    const lines = linesWithin(text, column, FINE.height, 'regular');
    return { lines, height: lines.length * FINE.leading + FINE.gap };
  });
  const total = set.reduce((sum, { height }) => sum + height, 0);
  let above = 0;
  const places = set.map(({ lines, height }) => {
    const place = { lines, above };
    above += height;
    return place;
  });
  const split = places.find((place) => place.above >= total / 2)?.above ?? total;
  return {
    height: BELOW_HEADING + Math.max(split, total - split),
    draw: (corner) => [
      heading(title, corner),
      ...places.flatMap((place) => {
        const isLeft = place.above < split;
        const x = corner.x + (isLeft ? 0 : column + FINE.gutter);
        const y = corner.y - BELOW_HEADING - place.above + (isLeft ? 0 : split);
        return place.lines.map((line, i) =>
          words(line, { x, y: y - i * FINE.leading }, { height: FINE.height }),
        );
      }),
    ],
  };
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
