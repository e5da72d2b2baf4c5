import { useState } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { SceneLines } from '../../drawing/scene-lines.tsx';
import { patientDo } from '../../engine/patient/patient-do.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

const percent = (share: number): string => `${Math.round(100 * share)} %`;

/** Every board with the parts that lie on it, to scale, and what it gives. */
export function BoardsView({ design }: { readonly design: Design }) {
  const boards = useAnswer('boards');
  const [busy, setBusy] = useState(false);
  const [says, setSays] = useState<readonly string[]>([]);
  const said = words.wood;
  const lay = async (anew: boolean): Promise<void> => {
    setBusy(true);
    try {
      const found = await patientDo('layBoards', { design, anew });
      setSays(found.ok ? [] : found.problems.map(({ message }) => message));
      if (found.ok) change(said.laid, [{ path: ['wood', 'placements'], to: found.value }]);
    } finally {
      setBusy(false);
    }
  };
  if ((design.wood?.boards ?? []).length === 0) return <p class="waiting">{said.none}</p>;
  return (
    <div class="wood-chapter">
      <div class="row">
        <Button look="main" disabled={busy} onClick={() => void lay(false)}>
          {said.lay}
        </Button>
        <Button disabled={busy} onClick={() => void lay(true)}>
          {said.anew}
        </Button>
        {busy ? (
          <span role="status">
            <progress aria-label={said.laying} /> {said.laying}
          </span>
        ) : null}
      </div>
      {says.map((message) => (
        <p key={message} class="problem" role="alert">
          {message}
        </p>
      ))}
      {boards === undefined ? null : (
        <>
          <p class="sum">{[said.sum(percent(boards.yield)), ...boards.prices].join(' · ')}</p>
          {boards.unlaid.map(({ part, pieces, boards: may }) => (
            <p key={`${part} ${pieces}`} class="problem">
              {may === 0 ? said.noBoard(part, pieces.join(', ')) : said.unlaid(part, pieces.join(', '))}
            </p>
          ))}
          {boards.faults.map(({ kind, id, board }) => (
            <p key={`${kind} ${id}`} class="problem">
              {said.fault(kind, id, board)}
            </p>
          ))}
          {boards.boards.map((board) => {
            const { x, y, width, height } = board.scene.box;
            return (
              <figure key={board.name} class="board-figure">
                <div class="scene drawn-page">
                  <svg
                    role="img"
                    aria-label={said.board(board.name, board.scale)}
                    viewBox={`${x - 2} ${y - 2} ${width + 4} ${height + 4}`}
                  >
                    <SceneLines scene={board.scene} />
                  </svg>
                </div>
                <figcaption>
                  <strong>{said.board(board.name, board.scale)}</strong>{' '}
                  {said.yields(
                    percent(board.yield),
                    board.boardFeet.toFixed(2),
                    board.cubicMetres.toFixed(4),
                  )}
                  {board.price === undefined ? '' : ` · ${board.price}`}
                  {board.offcuts.length === 0 ? '' : ` · ${said.offcuts(board.offcuts.join(', '))}`}
                </figcaption>
              </figure>
            );
          })}
          {boards.untouched.length === 0 ? null : (
            <p class="hint">{said.untouched(boards.untouched.join(', '))}</p>
          )}
        </>
      )}
    </div>
  );
}
