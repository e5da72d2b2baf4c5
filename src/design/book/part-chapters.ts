import type { BuiltBase, CutListLine } from '../../base/index.ts';
import { GLUE_SPREAD } from '../../materials/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import { type BookStyle, roughUp, sizes, surface, weight } from './book-style.ts';

/** Each piece with its mark, its hand and its weight. */
export function partList({ made, base, standing, woodOf }: BuiltBase, style: BookStyle): BookChapter {
  const massOf = new Map((standing?.measured.parts ?? []).map(({ part, mass }) => [part, mass]));
  const rows = made.flatMap(({ name, label, members, sketch }) =>
    members.map(({ part, mark, hand }) => [
      label,
      mark === '' ? '–' : mark,
      sketch.quantity.right === 0 ? 'alike both ways' : `${hand} hand`,
      woodOf[name] ?? '',
      massOf.has(part) ? weight(massOf.get(part)!, style) : '–',
    ]),
  );
  const total = standing === undefined ? '' : sayTotal(standing, style);
  return {
    title: 'Parts and marks',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: `${base.parts.length} pieces. Positions are named from the sitter’s side: front is where one sits, left is the sitter’s left. Write the mark on the end grain and on the face side of each piece as soon as it is cut, and a triangle across the set.`,
      },
      {
        kind: 'table',
        columns: [
          { head: 'Part', share: 2 },
          { head: 'Mark' },
          { head: 'Hand', share: 1.4 },
          { head: 'Wood', share: 1.4 },
          { head: 'Weight', align: 'right' },
        ],
        rows,
      },
      ...(total === '' ? [] : [{ kind: 'text', text: total } as const]),
    ],
  };
}

function sayTotal(
  { measured, topMass, joinery }: NonNullable<BuiltBase['standing']>,
  style: BookStyle,
): string {
  const loose =
    joinery.loose === 0
      ? ''
      : `, with ${weight(joinery.loose, style)} of loose tenons and dowels (reckoned in ${joinery.looseWood})`;
  return `All together ${weight(measured.mass, style)}${loose}, mortises taken off and tenons counted, at 12 % moisture. Glue is not in it: about ${weight(joinery.glue, style)} stay of it once dry, at ${GLUE_SPREAD.grams.value} g/m² on ${surface(joinery.glued, style)} (common practice). Nor is the top, about ${weight(topMass, style, 1)} in the same wood.`;
}

/** Boards to get out: thickness × width × length, the length along the grain. */
export function cutListChapter({ list }: BuiltBase, style: BookStyle): BookChapter {
  return {
    title: 'Cut list',
    newPage: false,
    blocks: [
      {
        kind: 'text',
        text: 'Thickness × width × length; the length runs along the grain, even where it is the shorter way. Finished is the least box that holds the piece; rough is what to cut from the board. Check against the real thickness of the wood: type it in as measured and print again. A piece is cut to its pattern and its mates, never to this list alone.',
      },
      {
        kind: 'table',
        columns: [
          { head: 'Part', share: 2 },
          { head: 'Pieces', align: 'right' },
          { head: 'Marks', share: 1.6 },
          { head: 'Finished', align: 'right', share: 2 },
          { head: 'Rough', align: 'right', share: 2 },
          { head: 'Rough length in all', align: 'right', share: 1.4 },
        ],
        rows: list.map((line) => lineRow(line, style)),
      },
      ...sums(list, style),
    ],
  };
}

function lineRow(line: CutListLine, style: BookStyle): readonly string[] {
  const { left, right } = line.hands;
  const { thickness, width, length } = line.finished;
  const rough = roughOf(line, style);
  return [
    `${line.label}\n${line.wood}`,
    right === 0 ? `${line.count}` : `${left} + ${right}`,
    line.marks.join(', ') || '–',
    sizes([thickness, width, length], style),
    `${rough.thickness.figure} × ${rough.width.figure} × ${rough.length.text}`,
    roughUp(line.count * rough.length.mm, style).text,
  ];
}

/** Rough sizes as printed: sums are made of these, so that they hold on paper. */
function roughOf({ rough }: CutListLine, style: BookStyle) {
  return {
    thickness: roughUp(rough.thickness, style),
    width: roughUp(rough.width, style),
    length: roughUp(rough.length, style),
  };
}

/** How much of each wood and thickness: sums of the figures printed above. */
function sums(list: readonly CutListLine[], style: BookStyle): readonly BookBlock[] {
  const totals = new Map<string, { wood: string; thickness: string; length: number; volume: number }>();
  for (const line of list) {
    const { thickness, width, length } = roughOf(line, style);
    const key = `${line.wood} ${thickness.text}`;
    const sum = totals.get(key) ?? { wood: line.wood, thickness: thickness.text, length: 0, volume: 0 };
    sum.length += line.count * length.mm;
    sum.volume += line.count * thickness.mm * width.mm * length.mm;
    totals.set(key, sum);
  }
  return [
    {
      kind: 'table',
      columns: [
        { head: 'Wood', share: 2 },
        { head: 'Rough thickness', align: 'right' },
        { head: 'Length in all', align: 'right' },
        { head: 'Volume', align: 'right' },
      ],
      rows: [...totals.values()].map(({ wood, thickness, length, volume }) => [
        wood,
        thickness,
        roughUp(length, style).text,
        style.lengths.unit === 'mm'
          ? `${(volume * 1e-9).toFixed(4)} m³`
          : `${(volume / 25.4 ** 3 / 144).toFixed(2)} board feet`,
      ]),
    },
    {
      kind: 'text',
      text: 'Lengths and volumes are sums of the rough figures above, without waste between pieces: common practice adds a quarter to a third, more where the figure is chosen.',
    },
  ];
}

/** The cut list for a spreadsheet (RFC 4180): plain figures, in mm or in decimal inches as the head says. */
export function cutListCsv({ list }: BuiltBase, style: BookStyle): string {
  const unit = style.lengths.unit === 'mm' ? 'mm' : 'in';
  const figure = (mm: number): string => (unit === 'mm' ? mm.toFixed(1) : (mm / 25.4).toFixed(4));
  const head = [
    'part',
    'pieces',
    'left',
    'right',
    'marks',
    'wood',
    ...['finished', 'rough'].flatMap((kind) =>
      ['thickness', 'width', 'length'].map((size) => `${kind} ${size} (${unit})`),
    ),
  ];
  const rows = list.map((line) => {
    const rough = roughOf(line, style);
    return [
      line.label,
      `${line.count}`,
      `${line.hands.left}`,
      `${line.hands.right}`,
      line.marks.join(' '),
      line.wood,
      ...[line.finished.thickness, line.finished.width, line.finished.length].map(figure),
      ...[rough.thickness, rough.width, rough.length].map(({ mm }) => figure(mm)),
    ];
  });
  return [head, ...rows].map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
}

const quoted = (cell: string): string => (/[",\r\n]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell);
