import { finest, type Pattern, precisionWords } from '../../drawing/index.ts';
import { vec } from '../../geometry/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { PatternFacts } from '../api.ts';
import { ACCENT, GRAPHITE, HAIR, PALE, type PageItem } from '../page/ink.ts';
import { linesWithin, polyline, words, wordsWithin } from '../page/items.ts';
import { BELOW_HEADING, type Block, heading, LEADING, TEXT_HEIGHT } from './block.ts';

const ROW = 5.6;

/** Check lengths with room to write what was measured. */
export function checkTable(pattern: Pattern, lengths: LengthStyle, width: number): Block | undefined {
  const { checks } = pattern;
  if (checks.length === 0) return undefined;
  const columns = [0, 8, 0.42 * width, 0.71 * width];
  return {
    height: BELOW_HEADING + ROW * (checks.length + 0.6),
    draw: ({ x, y }) => {
      const head = y - BELOW_HEADING;
      const at = (column: number, baseline: number) => vec(x + columns[column]!, baseline);
      const small = { height: 1.8, ink: PALE } as const;
      const rows = checks.flatMap((check, i): PageItem[] => {
        const baseline = head - ROW * (i + 1);
        const rule = baseline - 1.2;
        const room = (column: number): PageItem =>
          polyline([at(column, rule), vec(x + (columns[column + 1] ?? width) - 3, rule)], HAIR, GRAPHITE);
        return [
          words(check.name, at(0, baseline), { weight: 'semibold', ink: ACCENT, height: 2.5 }),
          words(formatLength(check.nominal, finest(lengths)), at(1, baseline), { height: 2.5 }),
          room(2),
          room(3),
        ];
      });
      return [
        heading('Check lengths', { x, y }),
        words(`must be${precisionWords(lengths)}`, at(1, head), small),
        words('taped', at(2, head), small),
        words('glued', at(3, head), small),
        ...rows,
      ];
    },
  };
}

/** The sizes by which the part can be laid out without the paper. */
export function factTable(facts: PatternFacts, width: number): Block | undefined {
  return table('To lay it out by hand', facts.keyFacts, width);
}

/** How the part is routed and sawn. */
export function toolTable({ toolFacts }: Pattern, width: number): Block | undefined {
  return table(
    'Routing',
    toolFacts.map(({ words: label, figure }) => ({ label, value: figure ?? '' })),
    width,
  );
}

/** Joints that stand on the sheets by number only, because their names found no room there. */
export function jointTable({ jointNotes = [] }: Pattern, width: number): Block | undefined {
  return table(
    'Joints by number',
    jointNotes.map(({ mark, label }) => ({ label, value: mark })),
    width,
  );
}

/** Labels on the left, figures on the right; a label without a figure takes the whole width. */
function table(title: string, facts: PatternFacts['keyFacts'], width: number): Block | undefined {
  const rows = facts.map(({ label, value }) => ({
    label: linesWithin(label, value === '' ? width : width * 0.6, TEXT_HEIGHT, 'regular'),
    value,
  }));
  if (rows.length === 0) return undefined;
  const count = rows.reduce((sum, { label }) => sum + Math.max(1, label.length), 0);
  return {
    height: BELOW_HEADING + count * LEADING,
    draw: (corner) => {
      let y = corner.y - BELOW_HEADING;
      return [
        heading(title, corner),
        ...rows.flatMap(({ label, value }) => {
          const top = y;
          const lines = label.map((line, i) =>
            words(line, vec(corner.x, top - i * LEADING), { height: TEXT_HEIGHT }),
          );
          y -= LEADING * Math.max(1, label.length);
          if (value === '') return lines;
          const figure = wordsWithin(value, vec(corner.x + width, top), width * 0.38, {
            height: TEXT_HEIGHT,
            weight: 'semibold',
            align: 'right',
          });
          return [...lines, figure];
        }),
      ];
    },
  };
}
