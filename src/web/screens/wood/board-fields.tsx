import type { Design } from '../../../design/index.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { PhotographFields } from './photograph-fields.tsx';
import { WoodField } from './wood-field.tsx';

type Board = NonNullable<NonNullable<Design['wood']>['boards']>[number];

/** The boards at hand, each with its sizes and price. */
export function BoardFields({ design }: { readonly design: Design }) {
  const said = words.wood;
  const boards = design.wood?.boards ?? [];
  const isMetric = design.units.length === 'mm';
  const add = (kind: 'board' | 'sheet'): void => {
    const taken = new Set(boards.map(({ name }) => name));
    let count = boards.length + 1;
    while (taken.has(said.newBoard(count))) count += 1;
    const board: Board = { name: said.newBoard(count), ...sizes(kind, isMetric) };
    change(said.added, [{ path: ['wood', 'boards'], to: [...boards, board] }]);
  };
  const remove = ({ name }: Board): void =>
    change(said.removed, [
      { path: ['wood', 'boards'], to: boards.filter((each) => each.name !== name) },
      {
        path: ['wood', 'placements'],
        to: (design.wood?.placements ?? []).filter(({ board }) => board !== name),
      },
    ]);
  return (
    <section aria-label={said.boards}>
      <h2>{said.boards}</h2>
      {boards.map((board, at) => (
        <details key={at} open={boards.length <= 2}>
          <summary>
            {board.name}: {String(board.length)} × {String(board.width)} × {String(board.thickness)}
          </summary>
          <WoodField label={said.name} path={['boards', at, 'name']} value={board.name} />
          <WoodField label={said.length} path={['boards', at, 'length']} value={board.length} />
          <WoodField label={said.width} path={['boards', at, 'width']} value={board.width} />
          <WoodField label={said.thickness} path={['boards', at, 'thickness']} value={board.thickness} />
          <WoodField
            label={said.price(board.price?.per ?? 'piece')}
            path={['boards', at, 'price']}
            value={board.price?.amount}
            write={(text) => ({ per: 'piece', ...board.price, amount: Number(text.replace(',', '.')) || 0 })}
          />
          {board.kind === 'sheet' ? null : <PhotographFields design={design} board={board} boardAt={at} />}
          <Button look="quiet" onClick={() => remove(board)}>
            {said.remove(board.name)}
          </Button>
        </details>
      ))}
      <div class="row">
        <Button onClick={() => add('board')}>{said.add}</Button>
        <Button onClick={() => add('sheet')}>{said.addSheet}</Button>
      </div>
    </section>
  );
}

/** A board or sheet to begin with. */
function sizes(
  kind: 'board' | 'sheet',
  metric: boolean,
): Pick<Board, 'length' | 'width' | 'thickness' | 'kind'> {
  if (kind === 'sheet') {
    return metric
      ? { kind, length: '1220 mm', width: '610 mm', thickness: '6 mm' }
      : { kind, length: '48 in', width: '24 in', thickness: '1/4 in' };
  }
  return metric
    ? { length: '2400 mm', width: '220 mm', thickness: '52 mm' }
    : { length: '96 in', width: '9 in', thickness: '8/4' };
}
