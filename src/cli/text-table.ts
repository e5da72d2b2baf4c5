/** A column of a table in plain text. */
export interface Column<Row> {
  readonly head: string;
  readonly cell: (row: Row) => string;
  /** Numbers stand against the right. */
  readonly align?: 'left' | 'right';
  /** The one column that is wrapped when the table is wider than the terminal. */
  readonly wrapped?: boolean;
}

/** Narrower than this a wrapped column is no longer readable. */
const LEAST_WRAPPED = 24;

/** Rows under a head and a rule, columns two blanks apart, at most `width` characters wide where one can be wrapped. */
export function textTable<Row>(columns: readonly Column<Row>[], rows: readonly Row[], width: number): string {
  const cells = rows.map((row) => columns.map((column) => column.cell(row)));
  const natural = columns.map((column, at) =>
    Math.max(column.head.length, ...cells.map((line) => line[at]!.length)),
  );
  const wrapped = columns.findIndex((column) => column.wrapped);
  const excess = natural.reduce((sum, each) => sum + each, 0) + 2 * (columns.length - 1) - width;
  const widths = natural.map((each, at) =>
    at === wrapped && excess > 0 ? Math.max(Math.min(each, LEAST_WRAPPED), each - excess) : each,
  );
  const heads = layLine(
    columns,
    columns.map(({ head }) => head),
    widths,
  );
  const rule = widths.map((each) => '─'.repeat(each)).join('  ');
  return [...heads, rule, ...cells.flatMap((line) => layLine(columns, line, widths))].join('\n');
}

function layLine<Row>(
  columns: readonly Column<Row>[],
  line: readonly string[],
  widths: readonly number[],
): readonly string[] {
  const stacks = line.map((text, at) => (columns[at]!.wrapped ? wrapText(text, widths[at]!) : [text]));
  const height = Math.max(...stacks.map((stack) => stack.length));
  return Array.from({ length: height }, (_, row) =>
    stacks
      .map((stack, at) => {
        const text = stack[row] ?? '';
        return columns[at]!.align === 'right' ? text.padStart(widths[at]!) : text.padEnd(widths[at]!);
      })
      .join('  ')
      .trimEnd(),
  );
}

/** Text broken between words into lines of at most `width` characters; a longer word stands by itself. */
export function wrapText(text: string, width: number): readonly string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(/\s+/)) {
    if (line !== '' && line.length + 1 + word.length > width) {
      lines.push(line);
      line = word;
    } else line = line === '' ? word : `${line} ${word}`;
  }
  return [...lines, line];
}
