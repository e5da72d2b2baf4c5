import { type Design, removeBoard, renameBoard, usualBoard } from '../../../design/index.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { words } from '../../words/en.ts';
import { PhotographFields } from './photograph-fields.tsx';
import { amountOf } from './why-not.ts';
import { WoodField } from './wood-field.tsx';

const said = words.wood;

type Board = NonNullable<NonNullable<Design['wood']>['boards']>[number];
type Price = NonNullable<Board['price']>;

/** The boards at hand, each with its sizes, price and photographs. */
export function BoardFields({ design }: { readonly design: Design }) {
  const boards = design.wood?.boards ?? [];
  const add = (kind: 'board' | 'sheet'): void => {
    const taken = new Set(boards.map(({ name }) => name));
    let count = boards.length + 1;
    while (taken.has(said.newBoard(count))) count += 1;
    const board = usualBoard(said.newBoard(count), kind, design.units.length);
    change(said.added, [{ path: ['wood', 'boards'], to: [...boards, board] }]);
  };
  return (
    <section aria-label={said.boards}>
      <h2>{said.boards}</h2>
      {boards.map((board, at) => (
        <details key={at} open={boards.length <= 2}>
          <summary>
            {board.name}: {String(board.length)} × {String(board.width)} × {String(board.thickness)}
          </summary>
          <OneBoard design={design} board={board} at={at} />
        </details>
      ))}
      <div class="row">
        <Button onClick={() => add('board')}>{said.add}</Button>
        <Button onClick={() => add('sheet')}>{said.addSheet}</Button>
      </div>
    </section>
  );
}

interface OneBoardProps {
  readonly design: Design;
  readonly board: Board;
  readonly at: number;
}

function OneBoard({ design, board, at }: OneBoardProps) {
  const wood = design.wood ?? {};
  const others = (wood.boards ?? []).filter((_, k) => k !== at).map(({ name }) => name);
  const { price } = board;
  return (
    <>
      <TextField
        label={said.name}
        text={board.name}
        maxLength={120}
        whyNot={(typed) => whyNoName(typed.trim(), others)}
        onTake={(name) =>
          change(said.renamed(name), [{ path: ['wood'], to: renameBoard(wood, board.name, name) }])
        }
      />
      <WoodField label={said.length} of="length" path={['boards', at, 'length']} value={board.length} />
      <WoodField label={said.width} of="length" path={['boards', at, 'width']} value={board.width} />
      <WoodField
        label={said.thickness}
        of="thickness"
        path={['boards', at, 'thickness']}
        value={board.thickness}
      />
      <WoodField
        label={said.price(said.per[price?.per ?? 'piece'])}
        of="amount"
        optional
        path={['boards', at, 'price']}
        value={price?.amount}
        write={(text): Price => ({ per: 'piece', ...price, amount: amountOf(text) ?? 0 })}
      />
      {price === undefined ? null : (
        <Choice
          label={said.counted}
          options={choicesOf(said.per)}
          chosen={price.per}
          onChoose={(per) =>
            change(said.counted, [{ path: ['wood', 'boards', at, 'price', 'per'], to: per }])
          }
        />
      )}
      {board.kind === 'sheet' ? null : <PhotographFields design={design} board={board} boardAt={at} />}
      <Button
        look="quiet"
        onClick={() => change(said.removed, [{ path: ['wood'], to: removeBoard(wood, board.name) }])}
      >
        {said.remove(board.name)}
      </Button>
    </>
  );
}

/** A board goes by its name: it has one, and no other board has it. */
function whyNoName(name: string, others: readonly string[]): string | undefined {
  if (name === '') return said.refused.needed;
  return others.includes(name) ? said.refused.taken(name) : undefined;
}
