import { useRef } from 'preact/hooks';
import type { OnScreen } from '../../drawing/scene-view.tsx';
import type { ShownHandle } from '../../engine/answers/handles.ts';
import { progress } from '../../engine/engine.ts';
import type { Pull } from '../../engine/protocol.ts';
import { letGo, pull } from '../../state/pulling.ts';
import { words } from '../../words/en.ts';

interface HandleMarksProps {
  readonly handles: readonly ShownHandle[];
  readonly of: Pull['of'];
  /** Units of the scene per mm of wood. */
  readonly scale: number;
  readonly zoom: number;
  readonly screen: OnScreen;
}

/** px. */
const RADIUS = 5.5;
const REACH = 16;
/** mm of wood that an arrow key pulls; with Shift, and with Alt. */
const STEP = 1;
const COARSE = 10;
const FINE = 0.1;

const ARROWS: Readonly<Record<string, { readonly x: number; readonly y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: 1 },
  ArrowDown: { x: 0, y: -1 },
};

/** Points of the form that are pulled with the pointer or, once focused, with the arrow keys; Escape lets go without a change. */
export function HandleMarks({ handles, of, scale, zoom, screen }: HandleMarksProps) {
  const grabbed = useRef<{ readonly x: number; readonly y: number } | undefined>(undefined);
  /** Where keys have pulled to while the drawing is not there yet. */
  const ahead = useRef<{ readonly name: string; readonly to: Pull['to'] } | undefined>(undefined);
  const pullTo = (handle: ShownHandle, to: Pull['to'], end: boolean): void => {
    pull.value = { handle: handle.name, of, to, end };
  };
  /** The place that is pulled to, mm of wood: where the pointer is, less what it was beside the point when it took hold. */
  const target = (event: PointerEvent): Pull['to'] => {
    const at = screen.at({ x: event.clientX, y: event.clientY });
    return { x: at.x / scale - grabbed.current!.x, y: -at.y / scale - grabbed.current!.y };
  };
  const take = (event: PointerEvent, handle: ShownHandle): void => {
    event.stopPropagation();
    (event.currentTarget as Element).setPointerCapture(event.pointerId);
    const at = screen.at({ x: event.clientX, y: event.clientY });
    grabbed.current = { x: at.x / scale - handle.x, y: -at.y / scale - handle.y };
    ahead.current = undefined;
  };
  const release = (event: PointerEvent, handle: ShownHandle): void => {
    if (grabbed.current === undefined) return;
    if (pull.value !== undefined) pullTo(handle, target(event), true);
    grabbed.current = undefined;
  };
  const onKeyDown = (event: KeyboardEvent, handle: ShownHandle): void => {
    if (event.key === 'Escape') {
      grabbed.current = undefined;
      ahead.current = undefined;
      letGo();
    }
    const way = ARROWS[event.key];
    if (way === undefined) return;
    event.preventDefault();
    event.stopPropagation();
    const by = event.shiftKey ? COARSE : event.altKey ? FINE : STEP;
    const last = ahead.current;
    // Each press counts: while the drawing is behind, it goes on from where the last one led.
    const isBehind =
      last?.name === handle.name && (pull.value !== undefined || progress.value === 'reckoning');
    const at = isBehind ? last.to : handle;
    const to = { x: at.x + by * way.x, y: at.y + by * way.y };
    ahead.current = { name: handle.name, to };
    pullTo(handle, to, true);
  };
  return (
    <g class="handles">
      {handles.map((handle) => {
        const [x, y] = [handle.x * scale, -handle.y * scale];
        return (
          <g
            key={handle.name}
            class={`handle ${pull.value?.handle === handle.name ? 'held' : ''}`}
            role="button"
            tabindex={0}
            aria-label={words.shape.pullHandle(handle.label)}
            onPointerDown={(event) => take(event, handle)}
            onPointerMove={(event) => {
              if (grabbed.current !== undefined) pullTo(handle, target(event), false);
            }}
            onPointerUp={(event) => release(event, handle)}
            onPointerCancel={() => {
              grabbed.current = undefined;
              letGo();
            }}
            onClick={(event) => event.stopPropagation()}
            onKeyDown={(event) => onKeyDown(event, handle)}
            onBlur={() => {
              ahead.current = undefined;
            }}
          >
            <title>{handle.label}</title>
            <circle class="handle-reach" cx={x} cy={y} r={REACH / zoom} />
            <circle class="handle-dot" cx={x} cy={y} r={RADIUS / zoom} />
          </g>
        );
      })}
    </g>
  );
}
