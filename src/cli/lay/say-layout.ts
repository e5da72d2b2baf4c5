import { type DesignLayout, layFaultWords } from '../../design/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import type { BoardAccount, Layout } from '../../wood/index.ts';
import { textTable } from '../text-table.ts';

/** A layout in words: a row for each board, what is left of them, what found no room, and how the search ended. */
export function layoutWords(
  layout: DesignLayout,
  found: Layout,
  lengths: LengthStyle,
  width: number,
): string {
  const { account, unlaid, faults, toLay } = layout;
  const lines: string[] = [];
  if (account.boards.length > 0) lines.push(boardsTable(account.boards, lengths, width));
  const sums = [
    `yield ${percent(account.yield)}`,
    `${account.boardFeet.toFixed(2)} board feet`,
    `${account.cubicMetres.toFixed(4)} m³`,
    ...account.prices.map(({ currency, amount }) => `${amount.toFixed(2)} ${currency}`.trim()),
    ...(account.unpriced > 0 && account.prices.length > 0 ? [`${account.unpriced} without a price`] : []),
  ];
  lines.push('', `In all: ${sums.join(', ')}.`);
  if (account.untouched.length > 0) lines.push(`Not touched: ${account.untouched.join(', ')}.`);
  for (const { board, offcuts } of account.boards) {
    for (const { rectangle } of offcuts) {
      if (rectangle === undefined) continue;
      const long = formatLength(rectangle.maxX - rectangle.minX, lengths);
      const wide = formatLength(rectangle.maxY - rectangle.minY, lengths);
      const from = formatLength(rectangle.minX, lengths);
      lines.push(`Left of ${board.name}: ${long} × ${wide}, from ${from} on.`);
    }
  }
  for (const id of unlaid) {
    const { part, pieces, boards } = toLay.find((each) => each.id === id)!;
    const where =
      boards.length === 0 ? 'no board is thick enough and of its wood' : `no room on ${boards.join(', ')}`;
    lines.push(`Not laid: ${part} (${pieces.join(', ')}): ${where}.`);
  }
  for (const fault of faults) lines.push(`Stop: ${layFaultWords(fault)}`);
  lines.push(`${found.steps} places tried; ${ENDS[found.ended]}.`);
  return lines.join('\n');
}

const ENDS: Record<Layout['ended'], string> = {
  best: 'no layout can be better',
  steps: 'more steps may find a better layout',
  stopped: 'ended by the clock: another run may end elsewhere',
};

function boardsTable(boards: readonly BoardAccount[], lengths: LengthStyle, width: number): string {
  return textTable<BoardAccount>(
    [
      { head: 'board', cell: ({ board }) => board.name },
      {
        head: 'size',
        cell: ({ board }) =>
          [board.length, board.width, board.thickness]
            .map((mm) => formatLength(mm, lengths, false))
            .join(' × '),
      },
      {
        head: 'pieces',
        wrapped: true,
        cell: ({ laid }) => laid.flatMap(({ toLay }) => toLay.pieces).join(', '),
      },
      { head: 'yield', align: 'right', cell: (each) => percent(each.yield) },
      {
        head: 'board feet',
        align: 'right',
        cell: ({ board, boardFeet }) => (board.kind === 'sheet' ? '' : boardFeet.toFixed(2)),
      },
      { head: 'm³', align: 'right', cell: ({ cubicMetres }) => cubicMetres.toFixed(4) },
      {
        head: 'price',
        align: 'right',
        cell: ({ price, currency = '' }) =>
          price === undefined ? '' : `${price.toFixed(2)} ${currency}`.trim(),
      },
    ],
    boards,
    width,
  );
}

function percent(share: number): string {
  return `${(100 * share).toFixed(1)} %`;
}

/** The same for programs: mm, mm² and rad. */
export function layoutJson(
  { account, lying, unlaid, faults }: DesignLayout,
  { cost, least, steps, ended }: Layout,
): object {
  return {
    lying,
    unlaid,
    faults,
    yield: account.yield,
    boardFeet: account.boardFeet,
    cubicMetres: account.cubicMetres,
    prices: account.prices,
    boards: account.boards.map(({ board, yield: own, boardFeet, cubicMetres, price, currency, offcuts }) => ({
      name: board.name,
      yield: own,
      boardFeet,
      cubicMetres,
      price,
      currency,
      offcuts: offcuts.map(({ area, rectangle }) => ({ area, rectangle })),
    })),
    search: { cost, least, steps, ended },
  };
}
