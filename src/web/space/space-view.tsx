import { useEffect, useRef, useState } from 'preact/hooks';
import { useAnswer } from '../engine/use-answer.ts';
import { hovered, selection } from '../state/selection.ts';
import { theme } from '../state/theme.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';
import { openSpace, type SpaceScene } from './space-scene.ts';
import { useSpaceFigures } from './use-space-figures.ts';

/** Degrees that an arrow key turns the base, and how much a key zooms. */
const TURN = 10;
const ZOOM = 1.2;
/** px that a pointer may move and still be a click. */
const STILL = 4;

/** The base in space: turned by pointer, touch and keys. Where the browser cannot draw it, it says so. */
export function SpaceView() {
  const meshes = useAnswer('meshes');
  const canvas = useRef<HTMLCanvasElement>(null);
  const space = useRef<SpaceScene>(undefined);
  const [missing, setMissing] = useState(false);
  const down = useRef({ x: 0, y: 0 });
  const chosen = selection.value.part;
  const said = words.space;

  useEffect(() => {
    const element = canvas.current!;
    let watcher: ResizeObserver | undefined;
    try {
      const opened = openSpace(element);
      space.current = opened;
      watcher = new ResizeObserver(() => opened.resize());
      watcher.observe(element.parentElement!);
      opened.resize();
    } catch {
      setMissing(true);
    }
    const dark = matchMedia('(prefers-color-scheme: dark)');
    const recolour = (): void => space.current?.recolour();
    dark.addEventListener('change', recolour);
    return () => {
      dark.removeEventListener('change', recolour);
      watcher?.disconnect();
      space.current?.dispose();
      space.current = undefined;
    };
  }, []);
  useEffect(() => space.current?.recolour(), [theme.value]);
  useEffect(() => {
    if (meshes !== undefined) space.current?.show(meshes, chosen);
  }, [meshes, chosen, missing]);
  const figures = useSpaceFigures();
  useEffect(() => space.current?.carry(figures), [figures, meshes, missing]);

  const onKeyDown = (event: KeyboardEvent): void => {
    const deed = KEYS[event.key];
    if (deed === undefined || space.current === undefined) return;
    event.preventDefault();
    deed(space.current);
  };
  return (
    <div class="space">
      {missing ? <p class="waiting">{said.missing}</p> : null}
      {meshes === undefined && !missing ? <p class="waiting">{words.later}</p> : null}
      <div class="space-room" hidden={missing}>
        <canvas
          ref={canvas}
          role="img"
          aria-label={said.label}
          tabIndex={0}
          onKeyDown={onKeyDown}
          onPointerDown={(event) => {
            down.current = { x: event.clientX, y: event.clientY };
          }}
          onPointerMove={(event) => {
            if (event.buttons !== 0) return;
            const hit = space.current?.hitAt(event.clientX, event.clientY);
            hovered.value = hit === undefined ? {} : { part: hit.name };
          }}
          onPointerLeave={() => {
            hovered.value = {};
          }}
          onClick={(event) => {
            const { x, y } = down.current;
            if (Math.hypot(event.clientX - x, event.clientY - y) > STILL) return;
            const hit = space.current?.hitAt(event.clientX, event.clientY);
            selection.value = hit === undefined ? {} : { part: hit.name };
          }}
        />
      </div>
      <div class="scene-tools" hidden={missing}>
        <Button look="quiet" aria-label={words.drawing.larger} onClick={() => space.current?.zoom(ZOOM)}>
          +
        </Button>
        <Button look="quiet" aria-label={words.drawing.smaller} onClick={() => space.current?.zoom(1 / ZOOM)}>
          −
        </Button>
        <Button look="quiet" onClick={() => space.current?.reset()}>
          {words.drawing.all}
        </Button>
      </div>
    </div>
  );
}

const KEYS: Readonly<Record<string, (space: SpaceScene) => void>> = {
  ArrowLeft: ({ turn }) => turn(-TURN, 0),
  ArrowRight: ({ turn }) => turn(TURN, 0),
  ArrowUp: ({ turn }) => turn(0, TURN),
  ArrowDown: ({ turn }) => turn(0, -TURN),
  '+': ({ zoom }) => zoom(ZOOM),
  '=': ({ zoom }) => zoom(ZOOM),
  '-': ({ zoom }) => zoom(1 / ZOOM),
  '0': ({ reset }) => reset(),
};
