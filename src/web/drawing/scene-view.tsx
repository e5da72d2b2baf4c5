import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import type { ScreenScene } from '../../drawing/index.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';
import { type ChosenLines, SceneLines } from './scene-lines.tsx';
import { useViewport } from './use-viewport.ts';
import { type Size, type Viewport, viewBoxOf } from './viewport.ts';

/** What the pointer is over, or what was clicked. */
export interface Hit {
  readonly part: string;
  readonly edge: string;
}

/** Where things of the scene (its units, y down) are on the screen. */
export interface OnScreen {
  /** px per unit of the scene. */
  readonly zoom: number;
  /** px from the upper left corner of the drawing. */
  readonly place: (at: { readonly x: number; readonly y: number }) => {
    readonly x: number;
    readonly y: number;
  };
  /** The place in the scene of a point of the page (`clientX`, `clientY`). */
  readonly at: (client: { readonly x: number; readonly y: number }) => {
    readonly x: number;
    readonly y: number;
  };
}

export interface SceneViewProps {
  readonly scene: ScreenScene;
  /** Says what is drawn to whoever cannot see it. */
  readonly label: string;
  /** Units of the scene per unit of what is looked at: a picture that is laid out anew at another scale stays where it is. 1 when absent. */
  readonly scale?: number;
  readonly selected?: ChosenLines;
  readonly onHover?: (hit: Hit | undefined) => void;
  readonly onPick?: (hit: Hit | undefined) => void;
  /** Told how much larger than whole the drawing is shown. */
  readonly onZoom?: (times: number) => void;
  /** More SVG, in the scene's units, y down; given px per unit, so that it can keep its size on the screen. */
  readonly children?: (zoom: number, screen: OnScreen) => ComponentChildren;
  /** HTML under the drawing, which fills it. */
  readonly under?: (screen: OnScreen) => ComponentChildren;
  /** HTML over the drawing, placed in px from its upper left corner. */
  readonly overlay?: (screen: OnScreen) => ComponentChildren;
}

/** A scene of the engine as SVG: zoomed, moved, and asked what is where. It takes all the room that it is given. */
export function SceneView(props: SceneViewProps) {
  const { scene, label, scale = 1, selected, onHover, onPick, onZoom, children, under, overlay } = props;
  const svg = useRef<SVGSVGElement>(null);
  const { view, whole, size, zoom, fit, isWhole, wasMoved, handlers } = useViewport(svg, {
    box: boxOver(scene.box, scale),
  });
  const times = view.zoom / whole.zoom;
  useEffect(() => onZoom?.(times), [times]);
  const shown: Viewport = { x: view.x * scale, y: view.y * scale, zoom: view.zoom / scale };
  const screen = screenOf(shown, size, svg);
  return (
    <div class="scene">
      {under?.(screen)}
      <svg
        ref={svg}
        role="group"
        aria-roledescription={words.drawing.kind}
        aria-label={label}
        tabindex={0}
        viewBox={viewBoxOf(shown, size)}
        {...handlers}
        onPointerOver={(event) => onHover?.(hitOf(event.target))}
        onPointerLeave={() => onHover?.(undefined)}
        onClick={(event) => {
          if (!wasMoved()) onPick?.(hitOf(event.target));
        }}
      >
        <SceneLines scene={scene} {...(selected === undefined ? {} : { selected })} />
        {children?.(shown.zoom, screen)}
      </svg>
      {overlay?.(screen)}
      <div class="scene-tools">
        <Button look="quiet" aria-label={words.drawing.larger} onClick={() => zoom(1.25)}>
          +
        </Button>
        <Button look="quiet" aria-label={words.drawing.smaller} onClick={() => zoom(0.8)}>
          −
        </Button>
        <Button look="quiet" onClick={fit} disabled={isWhole}>
          {words.drawing.all}
        </Button>
      </div>
    </div>
  );
}

function screenOf(
  { x, y, zoom }: Viewport,
  { width, height }: Size,
  svg: { readonly current: SVGSVGElement | null },
): OnScreen {
  return {
    zoom,
    place: (at) => ({ x: width / 2 + (at.x - x) * zoom, y: height / 2 + (at.y - y) * zoom }),
    at: (client) => {
      const { left, top } = svg.current?.getBoundingClientRect() ?? { left: 0, top: 0 };
      return { x: x + (client.x - left - width / 2) / zoom, y: y + (client.y - top - height / 2) / zoom };
    },
  };
}

function boxOver({ x, y, width, height }: ScreenScene['box'], scale: number): ScreenScene['box'] {
  return { x: x / scale, y: y / scale, width: width / scale, height: height / scale };
}

function hitOf(target: EventTarget | null): Hit | undefined {
  const { part, edge } = (target as SVGElement | null)?.dataset ?? {};
  return part === undefined ? undefined : { part, edge: edge ?? '' };
}
