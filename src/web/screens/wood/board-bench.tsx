import { useMemo, useState } from 'preact/hooks';
import { type Design, lengthStyleOf } from '../../../design/index.ts';
import type { Projection } from '../../../geometry/index.ts';
import { formatAngle, formatLength } from '../../../measure/index.ts';
import { SceneView } from '../../drawing/scene-view.tsx';
import type { FiguresInHand, LaidThing } from '../../engine/answers/figures.ts';
import type { ScreenBoard } from '../../engine/answers/wood.ts';
import { FigureCanvas } from '../../figure/figure-canvas.tsx';
import { moveThing } from '../../figure/moving.ts';
import type { FigurePatch } from '../../figure/paint-figures.ts';
import { boardPictures, photographs } from '../../photographs/board-pictures.ts';
import { design } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { letThingGo, thingNow, unpin } from './move-things.ts';
import { ThingMarks } from './thing-marks.tsx';

const said = words.wood;

/** Units of the drawing that are shown round the board: the mark of its end, its width; its grain. */
const ROUND = { end: 13, edge: 11 };

interface BoardBenchProps {
  readonly board: ScreenBoard;
  readonly things: readonly LaidThing[];
  readonly figures: FiguresInHand;
  readonly boards: NonNullable<NonNullable<Design['wood']>['boards']>;
}

/** One board to scale over its photograph, with what lies on it to be moved by hand. */
export function BoardBench({ board, things, figures, boards }: BoardBenchProps) {
  const [chosen, setChosen] = useState<string>();
  const [shownFile, setShownFile] = useState<string>();
  const own = figures.photographs.filter((each) => each.board === board.name);
  const files = own.map(({ file }) => file);
  const file = shownFile !== undefined && files.includes(shownFile) ? shownFile : files[0];
  const { factor, length, width } = board;
  const toScene: Projection = [factor, 0, 0, 0, -factor, 0, 0, 0, 1];
  // The board alone: what stands round it on paper is said below it.
  const box = {
    x: -ROUND.end,
    y: -width * factor - ROUND.edge,
    width: length * factor + 2 * ROUND.end,
    height: width * factor + 2 * ROUND.edge,
  };
  const scene = useMemo(
    () => ({
      ...board.scene,
      box,
      texts: board.scene.texts.filter(({ y }) => y > box.y && y < box.y + box.height),
    }),
    [board.scene],
  );
  const data = `M0 0H${length * factor}V${-width * factor}H0Z`;
  const patches = (): readonly FigurePatch[] => {
    const picture = file === undefined ? undefined : boardPictures.value.get(file);
    return picture === undefined ? [] : [{ figure: { picture, data, toScene } }];
  };
  const hasPicture = file !== undefined && boardPictures.value.has(file);
  const thing = things.find(({ lying }) => lying.id === chosen);
  return (
    <figure class="board-figure">
      <div class={`board-bench ${hasPicture ? 'over-figure' : ''}`}>
        <SceneView
          scene={scene}
          label={said.board(board.name)}
          onPick={() => setChosen(undefined)}
          under={(screen) => <FigureCanvas screen={screen} patches={patches} />}
        >
          {(zoom, screen) => (
            <ThingMarks
              things={things}
              factor={factor}
              zoom={zoom}
              screen={screen}
              chosen={chosen}
              onChoose={setChosen}
            />
          )}
        </SceneView>
      </div>
      <figcaption>
        <strong>{said.board(board.name)}</strong>{' '}
        {said.yields(percent(board.yield), board.boardFeet.toFixed(2), board.cubicMetres.toFixed(4))}
        {board.price === undefined ? '' : ` · ${board.price}`}
        {board.offcuts.length === 0 || things.length === 0
          ? ''
          : ` · ${said.offcuts(board.offcuts.join(', '))}`}
        {files.length < 2 ? null : (
          <Choice
            label={said.photograph.under}
            look="inline"
            options={own.map((each) => [each.file, each.file] as const)}
            chosen={file ?? ''}
            onChoose={setShownFile}
          />
        )}
        {own.map(({ file: name }) =>
          photographs.value.get(name) === 'missing' ? (
            <p key={`${name} missing`} class="problem">
              {said.photograph.notHere(name)}
            </p>
          ) : null,
        )}
        {own.map(({ file: name, fault }) =>
          fault === undefined ? null : (
            <p key={name} class="problem">
              {name}: {said.photograph.fault[fault]}
            </p>
          ),
        )}
      </figcaption>
      {thing === undefined ? (
        things.length === 0 ? null : (
          <p class="hint thing-tools">{said.place.hint}</p>
        )
      ) : (
        <ThingTools thing={thing} boards={boards} />
      )}
    </figure>
  );
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;

function ThingTools({
  thing,
  boards,
}: {
  readonly thing: LaidThing;
  readonly boards: BoardBenchProps['boards'];
}) {
  const { lying, toLay, pinned } = thing;
  const move = (how: Parameters<typeof moveThing>[2]): void => {
    moveThing(thing, thingNow(thing), how);
    letThingGo();
  };
  const style = design.value === undefined ? undefined : lengthStyleOf(design.value);
  const say = (mm: number): string => (style === undefined ? '' : formatLength(mm, style));
  const angle = formatAngle(lying.turned, { unit: 'deg', decimals: 1 });
  const what = `${toLay.part} ${toLay.pieces.join(', ')}`;
  const others = boards.filter(({ name }) => name !== lying.board && toLay.boards.includes(name));
  return (
    <div class="row thing-tools">
      <span>{said.place.at(what, say(lying.at.x), say(lying.at.y), angle)}</span>
      <Button look="quiet" onClick={() => move({ turn: Math.PI })}>
        {said.place.headToTail}
      </Button>
      {toLay.face === 'either' ? (
        <Button look="quiet" onClick={() => move({ over: true })}>
          {said.place.over}
        </Button>
      ) : null}
      {others.map(({ name }) => (
        <Button key={name} look="quiet" onClick={() => move({ board: name })}>
          {said.place.toBoard(name)}
        </Button>
      ))}
      {pinned ? (
        <Button look="quiet" onClick={() => unpin(thing)}>
          {said.place.unpin}
        </Button>
      ) : null}
    </div>
  );
}
