import { useEffect, useRef, useState } from 'preact/hooks';
import { type Design, usualKnownPoints } from '../../../design/index.ts';
import { type OnScreen, SceneView } from '../../drawing/scene-view.tsx';
import { problems } from '../../engine/engine.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { TileCanvas } from '../../figure/tile-canvas.tsx';
import { photoFile, photographs } from '../../photographs/board-pictures.ts';
import { photoDo } from '../../photographs/photo-do.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';
import { marking } from './marking.ts';

const said = words.wood.photograph;

type Board = NonNullable<NonNullable<Design['wood']>['boards']>[number];
type KnownPoint = NonNullable<Board['photographs']>[number]['points'][number];

interface MarkingBoardProps {
  readonly design: Design;
  readonly boardAt: number;
  readonly at: number;
}

/** px; and pixels of the photograph that an arrow key moves a point, with Shift, and with Alt. */
const RADIUS = 8;
const REACH = 18;
const STEPS = { plain: 1, coarse: 20, fine: 0.25 };
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** The photograph as it was taken, with its known points to be pulled onto what they name. */
export function MarkingBoard({ design, boardAt, at }: MarkingBoardProps) {
  const board = design.wood?.boards?.[boardAt];
  const photograph = board?.photographs?.[at];
  const file = photograph?.file ?? '';
  const [size, setSize] = useState<{ readonly width: number; readonly height: number }>();
  const photo = photographs.value.get(file);
  useEffect(() => {
    setSize(undefined);
    void photoFile(file)
      .then((found) => found && photoDo({ kind: 'measure', photo: found }))
      .then(setSize, () => undefined);
  }, [file, photo]);
  const laid = useAnswer('figures')?.photographs.find((each) => each.boardAt === boardAt && each.at === at);
  if (board === undefined || photograph === undefined) return null;
  const path = ['wood', 'boards', boardAt, 'photographs', at] as const;
  // Each edit says what it changes and nothing else: the next may come before this one is drawn.
  const set = (to: unknown, ...within: readonly (string | number)[]): void =>
    change(said.marked, [{ path: [...path, 'points', ...within], to }]);
  const isMissing = photo === 'missing';
  return (
    <div class="marking">
      <div class="marking-picture">
        {isMissing || size === undefined || photo === undefined ? (
          <p class="waiting">{isMissing ? said.missing(file) : words.loading}</p>
        ) : (
          <SceneView
            key={file}
            label={said.markHere(board.name)}
            scene={{ box: { x: 0, y: 0, ...size }, lines: [], texts: [] }}
            under={(screen) => <TileCanvas photo={photo} size={size} screen={screen} />}
          >
            {(zoom, screen) => (
              <Pins
                points={photograph.points}
                width={size.width}
                zoom={zoom}
                screen={screen}
                onPut={(pixel, k) => set(pixel, k, 'pixel')}
              />
            )}
          </SceneView>
        )}
      </div>
      <div class="marking-words">
        <p class="hint">{said.help}</p>
        <p role="status">
          {laid?.laid === undefined
            ? laid?.fault === undefined
              ? ''
              : said.fault[laid.fault]
            : said.trueTo(laid.laid.coarsest.toFixed(2))}
        </p>
        <Choice
          label={said.points}
          look="inline"
          options={said.pointChoices}
          chosen={photograph.points.length === 2 ? '2' : '4'}
          onChoose={(count) => {
            if (size !== undefined)
              set(usualKnownPoints(board, photograph.face, size, count === '2' ? 2 : 4));
          }}
        />
        <div class="known-points">
          {photograph.points.map((point, k) => (
            <fieldset key={k}>
              <legend>{said.point(k + 1)}</legend>
              {([0, 1] as const).map((axis) => (
                <MeasureField
                  key={axis}
                  kind="length"
                  unit={design.units.length}
                  label={axis === 0 ? said.along : said.across}
                  text={String(point.on[axis])}
                  problem={problemAt([...path, 'points', k, 'on', axis])}
                  onTake={(text) => set(text, k, 'on', axis)}
                />
              ))}
            </fieldset>
          ))}
        </div>
        <Button look="main" onClick={() => (marking.value = undefined)}>
          {said.done}
        </Button>
      </div>
    </div>
  );
}

const problemAt = (path: readonly (string | number)[]): string | undefined =>
  problems.value.find((each) => each.path === path.join('.'))?.message;

interface PinsProps {
  readonly points: readonly KnownPoint[];
  /** Of the picture, px. */
  readonly width: number;
  readonly zoom: number;
  readonly screen: OnScreen;
  /** A point is put onto another place of the picture, px. */
  readonly onPut: (pixel: readonly [number, number], at: number) => void;
}

function Pins({ points, width, zoom, screen, onPut }: PinsProps) {
  const [held, setHeld] = useState<{ readonly at: number; readonly pixel: readonly [number, number] }>();
  // Whether it was moved is known before it is drawn so: a quick hand lets go within one frame.
  const grabbed = useRef<{ readonly x: number; readonly y: number; isMoved: boolean }>(undefined);
  const placeOf = (k: number): readonly [number, number] =>
    held?.at === k ? held.pixel : [points[k]!.pixel[0], points[k]!.pixel[1]];
  const put = (k: number, [x, y]: readonly [number, number]): void =>
    onPut([Math.round(x * 100) / 100, Math.round(y * 100) / 100], k);
  const target = (event: PointerEvent): readonly [number, number] => {
    const { x, y } = screen.at({ x: event.clientX, y: event.clientY });
    return [x - grabbed.current!.x, y - grabbed.current!.y];
  };
  const around = points.map((_, k) => placeOf(k).join(' ')).join('L');
  return (
    <g class="pins">
      <path class="pin-line" d={`M${around}${points.length > 2 ? 'Z' : ''}`} />
      {points.map((point, k) => {
        const [x, y] = placeOf(k);
        return (
          // biome-ignore lint/a11y/useSemanticElements: a place in a drawing cannot be a button element
          <g
            key={k}
            class={`pin ${held?.at === k ? 'held' : ''}`}
            role="button"
            tabindex={0}
            aria-label={said.pin(k + 1, String(point.on[0]), String(point.on[1]))}
            transform={`translate(${x} ${y})`}
            onPointerDown={(event) => {
              event.stopPropagation();
              (event.currentTarget as Element).setPointerCapture(event.pointerId);
              const at = screen.at({ x: event.clientX, y: event.clientY });
              grabbed.current = { x: at.x - x, y: at.y - y, isMoved: false };
            }}
            onPointerMove={(event) => {
              if (grabbed.current === undefined) return;
              grabbed.current.isMoved = true;
              setHeld({ at: k, pixel: target(event) });
            }}
            onPointerUp={(event) => {
              if (grabbed.current === undefined) return;
              if (grabbed.current.isMoved) put(k, target(event));
              grabbed.current = undefined;
              setHeld(undefined);
            }}
            onPointerCancel={() => {
              grabbed.current = undefined;
              setHeld(undefined);
            }}
            onClick={(event) => event.stopPropagation()}
            onKeyDown={(event) => {
              const way = ARROWS[event.key];
              if (way === undefined) return;
              event.preventDefault();
              event.stopPropagation();
              const by = event.shiftKey ? STEPS.coarse : event.altKey ? STEPS.fine : STEPS.plain;
              put(k, [x + by * way[0], y + by * way[1]]);
            }}
          >
            <circle class="pin-reach" r={REACH / zoom} />
            <circle class="pin-ring" r={RADIUS / zoom} />
            <path class="pin-cross" d={`M${-3 / zoom} 0H${3 / zoom}M0 ${-3 / zoom}V${3 / zoom}`} />
            <text
              x={(x > width / 2 ? -13 : 13) / zoom}
              y={-11 / zoom}
              font-size={14 / zoom}
              text-anchor={x > width / 2 ? 'end' : 'start'}
            >
              {said.pinName(k + 1, String(point.on[0]), String(point.on[1]))}
            </text>
          </g>
        );
      })}
    </g>
  );
}
