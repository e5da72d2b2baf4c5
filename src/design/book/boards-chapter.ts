import { boardDrawing } from '../../drawing/index.ts';
import type { BookBlock, BookChapter } from '../../print/index.ts';
import type { BoardAccount } from '../../wood/index.ts';
import type { Computed } from '../computed.ts';
import { type DesignLayout, layoutOfDesign } from '../lay/lay-design.ts';
import { layFaultWords } from '../lay/lay-fault-words.ts';
import { unlaidGroups } from '../lay/unlaid-groups.ts';
import { type BookStyle, long, sizes } from './book-style.ts';

/** The boards that are cut into, each to scale with what lies on it, what they give and cost, and what is left of them. */
export function boardsChapter(computed: Computed, style: BookStyle): BookChapter {
  const title = 'Boards and sheets';
  const laid = (computed.design.wood?.boards ?? []).length === 0 ? undefined : layoutOfDesign(computed);
  if (laid === undefined || !laid.ok) return { title, newPage: false, blocks: [] };
  const layout = laid.value;
  const { boards } = layout.account;
  const solid = boards.filter(({ board }) => board.kind === 'board');
  const sheets = boards.filter(({ board }) => board.kind === 'sheet');
  return {
    title,
    newPage: false,
    blocks: [
      { kind: 'text', text: sumWords(layout) },
      ...(boards.length === 0 ? [] : [accountTable(boards, style)]),
      ...offcutsTable(boards, style),
      ...toSay(layout),
      ...drawings('Boards', solid, layout, style),
      ...drawings('Sheets for templates', sheets, layout, style),
    ],
  };
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

function sumWords({ account }: DesignLayout): string {
  if (account.boards.length === 0) return 'Nothing is laid on the boards yet.';
  const prices = account.prices.map(({ currency, amount }) => `${amount.toFixed(2)} ${currency}`.trim());
  const unpriced = account.unpriced > 0 && prices.length > 0 ? `, ${account.unpriced} without a price` : '';
  const cost = prices.length === 0 ? '' : ` They cost ${prices.join(' and ')}${unpriced}.`;
  const untouched = account.untouched.length === 0 ? '' : ` Not touched: ${account.untouched.join(', ')}.`;
  return `What is cut into is counted whole: ${account.boardFeet.toFixed(2)} board feet, ${account.cubicMetres.toFixed(4)} m³, of which ${percent(account.yield)} becomes parts, by area.${cost}${untouched} Look at each board once more before it is cut: what is not drawn here the layout does not know.`;
}

function accountTable(boards: readonly BoardAccount[], style: BookStyle): BookBlock {
  return {
    kind: 'table',
    columns: [
      { head: 'Board', share: 1.2 },
      { head: 'Length × width × thickness', share: 2.6 },
      { head: 'Pieces', share: 2.4 },
      { head: 'Used', align: 'right' },
      { head: 'Board feet', align: 'right' },
      { head: 'm³', align: 'right' },
      { head: 'Price', align: 'right', share: 1.3 },
    ],
    rows: boards.map(({ board, laid, yield: used, boardFeet, cubicMetres, price, currency = '' }) => [
      board.name,
      sizes([board.length, board.width, board.thickness], style),
      laid.flatMap(({ toLay }) => toLay.pieces).join(', '),
      percent(used),
      board.kind === 'sheet' ? '–' : boardFeet.toFixed(2),
      cubicMetres.toFixed(4),
      price === undefined ? '–' : `${price.toFixed(2)} ${currency}`.trim(),
    ]),
  };
}

function offcutsTable(boards: readonly BoardAccount[], style: BookStyle): readonly BookBlock[] {
  const rows = boards.flatMap(({ board, offcuts }) =>
    offcuts.flatMap(({ rectangle }) =>
      rectangle === undefined
        ? []
        : [
            [
              board.name,
              sizes([rectangle.maxX - rectangle.minX, rectangle.maxY - rectangle.minY], style),
              long(rectangle.minX, style),
              long(rectangle.minY, style),
            ],
          ],
    ),
  );
  if (rows.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { head: 'Left of' },
        { head: 'Largest clear rectangle', share: 2 },
        { head: 'From the marked end', align: 'right' },
        { head: 'From the near edge', align: 'right' },
      ],
      rows,
    },
  ];
}

function toSay(layout: DesignLayout): readonly BookBlock[] {
  const items = [
    ...layout.faults.map((fault) => `STOP: ${layFaultWords(fault)}`),
    ...unlaidGroups(layout).map((group) => {
      const [{ part, boards }] = group;
      const pieces = group.flatMap((each) => each.pieces).join(', ');
      const why = boards.length === 0 ? 'no board is thick enough and of its wood' : 'there is no place yet';
      return `${part} (${pieces}): ${why}.`;
    }),
  ];
  return items.length === 0 ? [] : [{ kind: 'list', numbered: false, items }];
}

function drawings(
  heading: string,
  boards: readonly BoardAccount[],
  { search }: DesignLayout,
  { lengths }: BookStyle,
): readonly BookBlock[] {
  if (boards.length === 0) return [];
  return [
    { kind: 'heading', text: heading },
    ...boards.map((each): BookBlock => {
      const { scene } = boardDrawing(each, { lengths, allowed: search.rules.allowed, room: ROOM });
      return { kind: 'drawing', scene };
    }),
  ];
}

/** mm that a board may take along the page: what a page of the book is wide, less the words at its ends. */
const ROOM = 150;
