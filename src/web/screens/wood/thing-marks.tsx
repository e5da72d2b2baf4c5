import { useRef } from 'preact/hooks';
import { matrix2d, type Projection, projectTwice } from '../../../geometry/index.ts';
import type { LyingMove } from '../../../wood/index.ts';
import type { OnScreen } from '../../drawing/scene-view.tsx';
import type { LaidThing } from '../../engine/answers/figures.ts';
import { moved, moveThing, moving } from '../../figure/moving.ts';
import { words } from '../../words/en.ts';
import { letThingGo, thingNow } from './move-things.ts';

const said = words.wood.place;

interface ThingMarksProps {
  readonly things: readonly LaidThing[];
  /** Units of the scene per mm of board. */
  readonly factor: number;
  readonly zoom: number;
  readonly screen: OnScreen;
  readonly chosen: string | undefined;
  readonly onChoose: (id: string | undefined) => void;
}

/** mm that an arrow key moves, with Shift, and with Alt; and how far a key turns. */
const STEP = 1;
const COARSE = 10;
const FINE = 0.1;
const TURN = Math.PI / 360;
/** Pulled round within this of along the board, a thing lies along it. */
const HELD = Math.PI / 180;
/** px. */
const HANDLE = 7;
const REACH = 18;
const STILL = 3;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};

const FLIP: Projection = [1, 0, 0, 0, -1, 0, 0, 0, 1];

/** What lies on a board, to be moved and turned over its photograph: by the pointer, or by keys once it has the focus. */
export function ThingMarks({ things, factor, zoom, screen, chosen, onChoose }: ThingMarksProps) {
  const start = useRef<{ readonly x: number; readonly y: number; readonly far: boolean } | undefined>(
    undefined,
  );
  /** mm of board, y up. */
  const at = (event: PointerEvent) => {
    const { x, y } = screen.at({ x: event.clientX, y: event.clientY });
    return { x: x / factor, y: -y / factor };
  };
  const take = (event: PointerEvent): void => {
    event.stopPropagation();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    start.current = { ...at(event), far: false };
  };
  const pullTo = (
    thing: LaidThing,
    event: PointerEvent,
    how: (now: { x: number; y: number }) => LyingMove,
  ): void => {
    if (start.current === undefined) return;
    const now = at(event);
    const away = Math.hypot(now.x - start.current.x, now.y - start.current.y) * factor * zoom;
    if (!start.current.far && away < STILL) return;
    start.current = { ...start.current, far: true };
    moveThing(thing, thing.lying, how(now));
  };
  const release = (thing: LaidThing): void => {
    const wasPulled = start.current?.far === true;
    start.current = undefined;
    onChoose(thing.lying.id);
    if (wasPulled) letThingGo();
  };
  const drop = (): void => {
    start.current = undefined;
    moving.value = undefined;
  };
  const onKeyDown = (event: KeyboardEvent, thing: LaidThing): void => {
    if (event.key === 'Escape') drop();
    const move = moveOfKey(event, thing);
    if (move === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    onChoose(thing.lying.id);
    moveThing(thing, thingNow(thing), move);
    letThingGo();
  };
  const by = moved.value;
  return (
    <g class="things" transform={`scale(${factor})`}>
      {things.map((thing) => {
        const { lying, toLay } = thing;
        const isMoved = by?.lying === lying.id;
        const matrix = isMoved
          ? matrix2d(projectTwice(projectTwice(FLIP, by.by), FLIP)).join(' ')
          : '1 0 0 1 0 0';
        const isChosen = chosen === lying.id;
        const { middle } = thing;
        const off = { x: Math.cos(lying.turned) * thing.reach, y: -Math.sin(lying.turned) * thing.reach };
        const handle = { x: middle.x + 0.86 * off.x, y: -middle.y + 0.86 * off.y };
        const px = 1 / (zoom * factor);
        return (
          <g
            key={lying.id}
            class={`thing ${isChosen ? 'chosen' : ''} ${isMoved ? 'held' : ''}`}
            transform={`matrix(${matrix})`}
          >
            <path
              class="thing-body"
              d={thing.data}
              role="button"
              tabindex={0}
              aria-pressed={isChosen}
              aria-label={said.label(toLay.part, toLay.pieces.join(', '))}
              onPointerDown={take}
              onPointerMove={(event) =>
                pullTo(thing, event, ({ x, y }) => ({
                  by: { x: x - start.current!.x, y: y - start.current!.y },
                }))
              }
              onPointerUp={() => release(thing)}
              onPointerCancel={drop}
              onClick={(event) => event.stopPropagation()}
              onKeyDown={(event) => onKeyDown(event, thing)}
            >
              <title>{said.label(toLay.part, toLay.pieces.join(', '))}</title>
            </path>
            {isChosen ? (
              // biome-ignore lint/a11y/noStaticElementInteractions: the keys , and . of the thing itself turn it as well.
              <g
                class="turn-handle"
                transform={`translate(${handle.x} ${handle.y})`}
                onPointerDown={take}
                onPointerMove={(event) =>
                  pullTo(thing, event, ({ x, y }) => ({
                    turn: heldAlong(Math.atan2(y - middle.y, x - middle.x)) - lying.turned,
                  }))
                }
                onPointerUp={() => release(thing)}
                onPointerCancel={drop}
                onClick={(event) => event.stopPropagation()}
              >
                <circle class="turn-reach" r={REACH * px} />
                <circle class="turn-dot" r={HANDLE * px} />
              </g>
            ) : null}
          </g>
        );
      })}
    </g>
  );
}

/** Along the board, or head to tail, where it is nearly so. */
function heldAlong(angle: number): number {
  const nearest = Math.PI * Math.round(angle / Math.PI);
  return Math.abs(angle - nearest) < HELD ? nearest : angle;
}

function moveOfKey(event: KeyboardEvent, { toLay }: LaidThing): LyingMove | undefined {
  const way = ARROWS[event.key];
  if (way !== undefined) {
    const size = event.shiftKey ? COARSE : event.altKey ? FINE : STEP;
    return { by: { x: size * way[0], y: size * way[1] } };
  }
  if (event.key === ',') return { turn: TURN };
  if (event.key === '.') return { turn: -TURN };
  if (event.key === 'h') return { turn: Math.PI };
  if (event.key === 't' && toLay.face === 'either') return { over: true };
  return undefined;
}
