import type { ComponentChildren } from 'preact';
import { useRef } from 'preact/hooks';
import type { ScreenScene } from '../../drawing/index.ts';
import { Button } from '../ui/button.tsx';
import { words } from '../words/en.ts';
import { SceneLines } from './scene-lines.tsx';
import { useViewport } from './use-viewport.ts';
import { viewBoxOf } from './viewport.ts';

/** What the pointer is over, or what was clicked. */
export interface Hit {
  readonly part: string;
  readonly edge: string;
}

export interface SceneViewProps {
  readonly scene: ScreenScene;
  /** Says what is drawn to whoever cannot see it. */
  readonly label: string;
  readonly selected?: { readonly part?: string; readonly edge?: string };
  readonly onHover?: (hit: Hit | undefined) => void;
  readonly onPick?: (hit: Hit | undefined) => void;
  /** More SVG, in the scene's units, y down; given px per unit, so that it can keep its size on the screen. */
  readonly children?: (zoom: number) => ComponentChildren;
}

/** A scene of the engine as SVG: zoomed, moved, and asked what is where. It takes all the room that it is given. */
export function SceneView({ scene, label, selected, onHover, onPick, children }: SceneViewProps) {
  const svg = useRef<SVGSVGElement>(null);
  const { view, size, zoom, fit, isWhole, wasMoved, handlers } = useViewport(svg, { box: scene.box });
  return (
    <div class="scene">
      <svg
        ref={svg}
        role="group"
        aria-roledescription={words.drawing.kind}
        aria-label={label}
        tabIndex={0}
        viewBox={viewBoxOf(view, size)}
        {...handlers}
        onPointerOver={(event) => onHover?.(hitOf(event.target))}
        onPointerLeave={() => onHover?.(undefined)}
        onClick={(event) => {
          if (!wasMoved()) onPick?.(hitOf(event.target));
        }}
      >
        <SceneLines scene={scene} {...(selected === undefined ? {} : { selected })} />
        {children?.(view.zoom)}
      </svg>
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

function hitOf(target: EventTarget | null): Hit | undefined {
  const { part, edge } = (target as SVGElement | null)?.dataset ?? {};
  return part === undefined ? undefined : { part, edge: edge ?? '' };
}
