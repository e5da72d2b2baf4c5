import { useSignal } from '@preact/signals';
import { useRef, useState } from 'preact/hooks';
import { typedPatchPlace } from '../../../design/index.ts';
import type { Projection } from '../../../geometry/index.ts';
import type { PatchPlace } from '../../../wood/index.ts';
import { type OnScreen, SceneView } from '../../drawing/scene-view.tsx';
import type { ShownPatch } from '../../engine/answers/patches.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { FigureCanvas } from '../../figure/figure-canvas.tsx';
import type { FigurePatch } from '../../figure/paint-figures.ts';
import { useFigures } from '../../figure/use-figures.ts';
import { boardPictures } from '../../photographs/board-pictures.ts';
import { change } from '../../state/current.ts';
import { words } from '../../words/en.ts';

const said = words.wood.mending;

/** mm that an arrow key moves, with Shift, and with Alt; and how far a key turns. */
const STEPS = { plain: 1, coarse: 10, fine: 0.1 };
const TURN = Math.PI / 360;
const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** px, and times the length of a patch that are shown round it at first. */
const HANDLE = 7;
const ROUND = 4;

/** The board over its photograph with the plug on it, to be pulled to where the figure matches. */
export function PatchBench({ patch, at }: { readonly patch: ShownPatch; readonly at: number }) {
  const boards = useAnswer('boards')?.boards;
  const figures = useFigures();
  const { on } = patch;
  const board = boards?.find(({ name }) => name === on?.board);
  if (on === undefined) return <p class="hint">{said.noBoard}</p>;
  if (board === undefined || figures === undefined) return <p class="waiting">{words.loading}</p>;
  const { factor, length, width } = board;
  const file = figures.photographs.find((each) => each.board === board.name)?.file;
  const toScene: Projection = [factor, 0, 0, 0, -factor, 0, 0, 0, 1];
  const data = `M0 0H${length * factor}V${-width * factor}H0Z`;
  const patches = (): readonly FigurePatch[] => {
    const picture = file === undefined ? undefined : boardPictures.value.get(file);
    return picture === undefined ? [] : [{ figure: { picture, data, toScene } }];
  };
  const hasPicture = file !== undefined && boardPictures.value.has(file);
  const reach = ROUND * on.reach * factor;
  const box = {
    x: Math.max(-4, on.place.at.x * factor - 2 * reach),
    y: -width * factor - 4,
    width: Math.min(length * factor + 8, 4 * reach),
    height: width * factor + 8,
  };
  return (
    <figure class="board-figure">
      <div class={`board-bench ${hasPicture ? 'over-figure' : ''}`}>
        <SceneView
          scene={{ ...board.scene, box, texts: [] }}
          label={words.wood.board(board.name)}
          under={(screen) => <FigureCanvas screen={screen} patches={patches} />}
        >
          {(zoom, screen) => (
            <Plug on={on} at={at} factor={factor} zoom={zoom} screen={screen} name={patch.name} />
          )}
        </SceneView>
      </div>
      <figcaption>
        {on.faults.length === 0 ? (
          <span>{said.sound}</span>
        ) : (
          on.faults.map((kind) => (
            <p key={kind} class="problem">
              {said.faults[kind]}
            </p>
          ))
        )}{' '}
        {said.hint}
      </figcaption>
    </figure>
  );
}

interface PlugProps {
  readonly on: NonNullable<ShownPatch['on']>;
  readonly at: number;
  readonly factor: number;
  readonly zoom: number;
  readonly screen: OnScreen;
  readonly name: string;
}

function Plug({ on, at, factor, zoom, screen, name }: PlugProps) {
  // A signal: a quick hand lets go before its last move is drawn.
  const held = useSignal<PatchPlace | undefined>(undefined);
  const grabbed = useRef<{ readonly x: number; readonly y: number }>(undefined);
  const { place } = on;
  /** Where it was set to while the engine has not answered yet. */
  const [ahead, setAhead] = useState<{ readonly from: PatchPlace; readonly to: PatchPlace }>();
  const now = held.value ?? (ahead?.from === place ? ahead.to : place);
  const client = (event: PointerEvent) => {
    const { x, y } = screen.at({ x: event.clientX, y: event.clientY });
    return { x: x / factor, y: -y / factor };
  };
  const set = (to: PatchPlace): void => {
    const typed = typedPatchPlace(to);
    setAhead({ from: place, to });
    change(said.moved(name), [
      { path: ['wood', 'patches', at, 'x'], to: typed.x },
      { path: ['wood', 'patches', at, 'y'], to: typed.y },
      { path: ['wood', 'patches', at, 'turned'], to: typed.turned },
    ]);
  };
  const take = (event: PointerEvent): void => {
    event.stopPropagation();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    const from = client(event);
    grabbed.current = { x: from.x - now.at.x, y: from.y - now.at.y };
  };
  const move = (event: PointerEvent): void => {
    if (grabbed.current === undefined) return;
    const to = client(event);
    held.value = { ...now, at: { x: to.x - grabbed.current.x, y: to.y - grabbed.current.y } };
  };
  const turn = (event: PointerEvent): void => {
    if (grabbed.current === undefined) return;
    const { x, y } = client(event);
    held.value = { ...now, turned: Math.atan2(y - now.at.y, x - now.at.x) };
  };
  const release = (): void => {
    grabbed.current = undefined;
    if (held.value !== undefined) set(held.value);
    held.value = undefined;
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const way = ARROWS[event.key];
    const by = event.shiftKey ? STEPS.coarse : event.altKey ? STEPS.fine : STEPS.plain;
    const turned = event.key === ',' ? TURN : event.key === '.' ? -TURN : 0;
    if (way === undefined && turned === 0) return;
    event.preventDefault();
    event.stopPropagation();
    const [x, y] = way ?? [0, 0];
    set({ at: { x: now.at.x + by * x, y: now.at.y + by * y }, turned: now.turned + turned });
  };
  const angle = ((place.turned - now.turned) * 180) / Math.PI;
  const moved = `translate(${now.at.x} ${-now.at.y}) rotate(${angle}) translate(${-place.at.x} ${place.at.y})`;
  const px = 1 / (zoom * factor);
  const handle = {
    x: now.at.x + Math.cos(now.turned) * (on.reach + 2 * HANDLE * px),
    y: -now.at.y - Math.sin(now.turned) * (on.reach + 2 * HANDLE * px),
  };
  return (
    <g class="things" transform={`scale(${factor})`}>
      <g class={`thing chosen ${held.value === undefined ? '' : 'held'}`} transform={moved}>
        {/* biome-ignore lint/a11y/useSemanticElements: a place in a drawing cannot be a button element */}
        <path
          class="thing-body plug"
          d={on.data}
          role="button"
          tabindex={0}
          aria-label={said.plug(name)}
          onPointerDown={take}
          onPointerMove={move}
          onPointerUp={release}
          onPointerCancel={() => {
            grabbed.current = undefined;
            held.value = undefined;
          }}
          onClick={(event) => event.stopPropagation()}
          onKeyDown={onKeyDown}
        />
      </g>
      {/* biome-ignore lint/a11y/noStaticElementInteractions: the keys , and . of the plug itself turn it as well. */}
      <g
        class="turn-handle"
        transform={`translate(${handle.x} ${handle.y})`}
        onPointerDown={take}
        onPointerMove={turn}
        onPointerUp={release}
        onClick={(event) => event.stopPropagation()}
      >
        <circle class="turn-reach" r={2 * HANDLE * px} />
        <circle class="turn-dot" r={HANDLE * px} />
      </g>
    </g>
  );
}
