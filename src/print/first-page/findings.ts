import { type Vec, vec } from '../../geometry/index.ts';
import type { PatternFacts } from '../api.ts';
import { ACCENT, GRAPHITE, type PageItem } from '../page/ink.ts';
import { linesWithin, words } from '../page/items.ts';
import { BELOW_HEADING, type Block, heading, LEADING, TEXT_HEIGHT } from './block.ts';

type Said = NonNullable<PatternFacts['findings']>[number];

const TITLE = 'What the checks say';
const GAP = 0.9;
/** Room for the word that says how grave it is, mm. */
const INDENT = 15;

/**
 * What the checks say of the part, stops first and in the accent ink: blocks no higher than `first`, the others no higher
 * than `further` (mm). A finding is never broken over two.
 */
export function findingBlocks(
  { findings = [] }: PatternFacts,
  width: number,
  { first, further }: { readonly first: number; readonly further: number },
): readonly Block[] {
  const told = [...findings].sort((a, b) => rankOf(a) - rankOf(b));
  const blocks: Block[] = [];
  let rows: Row[] = [];
  let height = BELOW_HEADING;
  for (const finding of told) {
    const row = rowOf(finding, width);
    const most = blocks.length === 0 ? first : further;
    if (rows.length > 0 && height + row.height > most) {
      blocks.push(blockOf(rows, blocks.length > 0));
      rows = [];
      height = BELOW_HEADING;
    }
    rows.push(row);
    height += row.height;
  }
  if (rows.length > 0) blocks.push(blockOf(rows, blocks.length > 0));
  return blocks;
}

function rankOf({ severity }: Said): number {
  return severity === 'stop' ? 0 : 1;
}

interface Row {
  readonly height: number;
  readonly draw: (corner: Vec) => readonly PageItem[];
}

function rowOf({ severity, words: text }: Said, width: number): Row {
  const isStop = severity === 'stop';
  const ink = isStop ? ACCENT : GRAPHITE;
  const weight = isStop ? 'semibold' : 'regular';
  const lines = linesWithin(text, width - INDENT, TEXT_HEIGHT, weight);
  return {
    height: lines.length * LEADING + GAP,
    draw: ({ x, y }) => [
      words(isStop ? 'STOP' : 'caution', vec(x, y), { height: TEXT_HEIGHT, weight: 'semibold', ink }),
      ...lines.map((line, i) =>
        words(line, vec(x + INDENT, y - i * LEADING), { height: TEXT_HEIGHT, weight, ink }),
      ),
    ],
  };
}

function blockOf(rows: readonly Row[], isContinued: boolean): Block {
  return {
    height: rows.reduce((sum, row) => sum + row.height, BELOW_HEADING),
    draw: (corner) => {
      let y = corner.y - BELOW_HEADING;
      const items: PageItem[] = [heading(isContinued ? `${TITLE}, continued` : TITLE, corner)];
      for (const row of rows) {
        items.push(...row.draw(vec(corner.x, y)));
        y -= row.height;
      }
      return items;
    },
  };
}
