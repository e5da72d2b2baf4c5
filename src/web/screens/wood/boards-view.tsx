import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { boundsOfRegions, transformRegion, turnBy } from '../../../geometry/index.ts';
import { formatLength } from '../../../measure/index.ts';
import type { ToLay } from '../../../wood/index.ts';
import { patientDo } from '../../engine/patient/patient-do.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { useFigures } from '../../figure/use-figures.ts';
import { layingPhotographs } from '../../photographs/board-pictures.ts';
import { change } from '../../state/current.ts';
import { lengthStyle } from '../../state/lengths.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { BoardBench } from './board-bench.tsx';
import { FigureSheetView } from './figure-sheet-view.tsx';
import { marking } from './marking.ts';
import { MarkingBoard } from './marking-board.tsx';
import { hearMoved, setPlace } from './move-things.ts';

const percent = (share: number): string => `${Math.round(100 * share)} %`;
const said = words.wood;

/** A board with what lies on it over its photograph, what it gives, and the figure that the pieces will carry. */
export function BoardsView({ design }: { readonly design: Design }) {
  const boards = useAnswer('boards');
  const figures = useFigures();
  const [chosen, setChosen] = useState<string>();
  useEffect(() => {
    if (figures !== undefined) hearMoved(figures, design);
  }, [figures, design]);
  const named = design.wood?.boards ?? [];
  if (named.length === 0) return <p class="waiting">{said.none}</p>;
  const marked = marking.value;
  if (marked !== undefined && named[marked.boardAt]?.photographs?.[marked.at] !== undefined) {
    return <MarkingBoard key={`${marked.boardAt} ${marked.at}`} design={design} {...marked} />;
  }
  if (boards === undefined || figures === undefined) return <p class="waiting">{words.loading}</p>;
  const shown = boards.boards.find(({ name }) => name === chosen) ?? boards.boards[0];
  const things = figures.things.filter(({ lying }) => lying.board === shown?.name);
  return (
    <div class="boards-view">
      <div class="boards-head">
        <LayButtons design={design} />
        <p class="sum">{[said.sum(percent(boards.yield)), ...boards.prices].join(' · ')}</p>
        {layingPhotographs.value > 0 ? <p role="status">{said.photograph.making}</p> : null}
        {boards.boards.length < 2 ? null : (
          <fieldset class="choices board-choice">
            <legend class="hidden-label">{said.boards}</legend>
            {boards.boards.map(({ name }) => (
              <label key={name}>
                <input
                  type="radio"
                  name="board"
                  checked={name === shown?.name}
                  onChange={() => setChosen(name)}
                />{' '}
                {name}
                {boards.untouched.includes(name) ? ` (${said.empty})` : ''}
              </label>
            ))}
          </fieldset>
        )}
      </div>
      {shown === undefined ? null : (
        <BoardBench key={shown.name} board={shown} things={things} figures={figures} boards={named} />
      )}
      <Says boards={boards} shown={shown?.name} at={design.wood?.placements?.length ?? 0} />
      <FigureSheetView figures={figures} />
    </div>
  );
}

function LayButtons({ design }: { readonly design: Design }) {
  const [done, setDone] = useState<number>();
  const busy = done !== undefined;
  const [says, setSays] = useState<readonly string[]>([]);
  const lay = async (anew: boolean): Promise<void> => {
    setDone(0);
    try {
      const found = await patientDo('layBoards', { design, anew }, setDone);
      setSays(found.ok ? [] : found.problems.map(({ message }) => message));
      if (found.ok) change(said.laid, [{ path: ['wood', 'placements'], to: found.value }]);
    } finally {
      setDone(undefined);
    }
  };
  return (
    <>
      <div class="row">
        <Button look="main" disabled={busy} onClick={() => void lay(false)}>
          {said.lay}
        </Button>
        <Button disabled={busy} onClick={() => void lay(true)}>
          {said.anew}
        </Button>
        {busy ? (
          <span role="status">
            <progress aria-label={said.laying} value={done} max={1} /> {said.laying}
          </span>
        ) : null}
      </div>
      {says.map((message) => (
        <p key={message} class="problem" role="alert">
          {message}
        </p>
      ))}
    </>
  );
}

interface SaysProps {
  readonly boards: NonNullable<ReturnType<typeof useAnswer<'boards'>>>;
  readonly shown: string | undefined;
  /** How many placements there are. */
  readonly at: number;
}

/** A board that would do for it: as long and as wide as its blank, along its grain. */
function boardWords({ blank, grain = 0 }: ToLay): string {
  const { minX, minY, maxX, maxY } = boundsOfRegions([transformRegion(blank, turnBy(-grain))]);
  const said = (mm: number): string => formatLength(mm, lengthStyle());
  return words.wood.wouldDo(said(maxX - minX), said(maxY - minY));
}

/** What has no place, and what is wrong with those that there are. */
function Says({ boards, shown, at }: SaysProps) {
  if (boards.unlaid.length + boards.faults.length === 0) return null;
  return (
    <div class="boards-says">
      {boards.faults.map((words) => (
        <p key={words} class="problem">
          {words}
        </p>
      ))}
      {boards.unlaid.map(([first, ...others]) => {
        const { id, part, boards: may, face } = first;
        const names = [first, ...others].flatMap(({ pieces }) => pieces).join(', ');
        const on = shown !== undefined && may.includes(shown) ? shown : may[0];
        return (
          <p key={id} class="problem">
            {on === undefined ? said.noBoard(part, names) : said.unlaid(part, names)} {boardWords(first)}{' '}
            {on === undefined ? null : (
              <Button
                look="quiet"
                onClick={() =>
                  setPlace(at, first, {
                    id,
                    board: on,
                    at: { x: 0, y: 0 },
                    turned: 0,
                    mirrored: face === 'down',
                  })
                }
              >
                {said.place.put(first.pieces.join(', '), on)}
              </Button>
            )}
          </p>
        );
      })}
    </div>
  );
}
