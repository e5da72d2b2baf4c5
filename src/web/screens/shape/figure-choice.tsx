import { useAnswer } from '../../engine/use-answer.ts';
import { figureShown } from '../../figure/use-figures.ts';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

const said = words.wood.figure;

/** Whether a view shows the figure of the wood, and of a part whose. */
export function FigureChoice({
  part,
  piece,
  onPiece,
}: {
  readonly part: string | undefined;
  readonly piece: string | undefined;
  readonly onPiece: (piece: string) => void;
}) {
  return (
    <div class="figure-choice">
      <label>
        <input
          type="checkbox"
          checked={figureShown.value}
          onChange={(event) => (figureShown.value = event.currentTarget.checked)}
        />{' '}
        {said.show}
      </label>
      {part === undefined || !figureShown.value ? null : (
        <PieceChoice part={part} piece={piece} onPiece={onPiece} />
      )}
    </div>
  );
}

function PieceChoice({
  part,
  piece,
  onPiece,
}: {
  readonly part: string;
  readonly piece: string | undefined;
  readonly onPiece: (piece: string) => void;
}) {
  const pieces = useAnswer('figureView', { of: { part } })?.pieces ?? [];
  if (pieces.length < 2) return null;
  return (
    <Choice
      label={said.of}
      look="inline"
      options={pieces.map(({ id, name }) => [id, name] as const)}
      chosen={piece ?? pieces[0]!.id}
      onChoose={onPiece}
    />
  );
}
