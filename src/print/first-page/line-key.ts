import { LINE_STYLES, type LineRole, type Pattern } from '../../drawing/index.ts';
import { vec } from '../../geometry/index.ts';
import { ACCENT, GRAPHITE, type PageItem } from '../page/ink.ts';
import { linesWithin, polyline, words } from '../page/items.ts';
import { BELOW_HEADING, type Block, heading, LEADING, TEXT_HEIGHT } from './block.ts';
import { signOf } from './signs.ts';

/** Kinds of line that say what they are by themselves. */
const PLAIN: ReadonlySet<LineRole> = new Set(['dimension', 'extension', 'mark', 'frame', 'thin']);
/** Length of a sample, mm: at least one whole run of every dash pattern. */
const SAMPLE = 15;
/** Between the two columns, mm. */
const GUTTER = 8;

/** A sample of every kind of line and sign in the pattern, in the order of their table, and what it means. */
export function lineKey(pattern: Pattern, width: number): Block {
  const used = new Set<LineRole>();
  for (const mark of pattern.scene.marks) {
    if (mark.kind === 'path' && !PLAIN.has(mark.role)) used.add(mark.role);
  }
  const roles = (Object.keys(LINE_STYLES) as LineRole[]).filter((role) => used.has(role));
  const column = (width - GUTTER) / 2;
  const rows = roles.map((role) => ({
    role,
    lines: linesWithin(LINE_STYLES[role].words, column - SAMPLE - 3, TEXT_HEIGHT, 'regular'),
  }));
  const heightOf = (part: typeof rows): number =>
    LEADING * part.reduce((sum, { lines }) => sum + lines.length, 0);
  const half = Math.ceil(rows.length / 2);
  const columns = [rows.slice(0, half), rows.slice(half)];
  return {
    height: BELOW_HEADING + Math.max(...columns.map(heightOf)),
    draw: (corner) => [
      heading('Lines and signs', corner),
      ...columns.flatMap((part, i) => {
        const x = corner.x + i * (column + GUTTER);
        let y = corner.y - BELOW_HEADING;
        return part.flatMap(({ role, lines }) => {
          const top = y;
          y -= LEADING * lines.length;
          return [
            ...sampleOf(role, x, top + TEXT_HEIGHT / 2),
            ...lines.map((line, k) =>
              words(line, vec(x + SAMPLE + 3, top - k * LEADING), { height: TEXT_HEIGHT }),
            ),
          ];
        });
      }),
    ],
  };
}

function sampleOf(role: LineRole, x: number, y: number): readonly PageItem[] {
  const sign = signOf(role, { x, y, width: SAMPLE });
  if (sign !== undefined) return sign;
  const style = LINE_STYLES[role];
  const ink = style.ink === 'accent' ? ACCENT : GRAPHITE;
  const sample = polyline([vec(x, y), vec(x + SAMPLE, y)], style.width, ink);
  return [sample.kind === 'stroke' ? { ...sample, dash: style.dash } : sample];
}
