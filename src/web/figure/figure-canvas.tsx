import { effect } from '@preact/signals';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import type { OnScreen } from '../drawing/scene-view.tsx';
import { type FigurePatch, paintFigures } from './paint-figures.ts';

interface FigureCanvasProps {
  readonly screen: OnScreen;
  /** Path data of the patches is in units of this many of the scene's; 1 when absent. */
  readonly scale?: number;
  /** What to paint; asked again, once a frame, whenever a signal that it reads changes. */
  readonly patches: () => readonly FigurePatch[];
}

/** A canvas under a drawing, with the figure of the wood where the drawing has wood. Never more than one painting a frame. */
export function FigureCanvas({ screen, scale = 1, patches }: FigureCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const now = useRef({ screen, scale, patches });
  now.current = { screen, scale, patches };
  const asked = useRef(0);
  const paint = (): void => {
    asked.current = 0;
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (element === null || context === null || context === undefined) return;
    const { clientWidth, clientHeight } = element;
    const density = Math.min(devicePixelRatio, 2);
    const [width, height] = [Math.round(clientWidth * density), Math.round(clientHeight * density)];
    if (element.width !== width || element.height !== height) {
      element.width = width;
      element.height = height;
    }
    const own = now.current;
    const { x, y } = own.screen.place({ x: 0, y: 0 });
    const zoom = own.screen.zoom * own.scale * density;
    const began = performance.now();
    paintFigures(context, own.patches(), { zoom, x: x * density, y: y * density });
    element.dataset.paint = (performance.now() - began).toFixed(2);
  };
  const ask = (): void => {
    if (asked.current === 0) asked.current = requestAnimationFrame(paint);
  };
  useLayoutEffect(ask);
  useEffect(() => {
    const stop = effect(() => {
      now.current.patches();
      ask();
    });
    const watcher = new ResizeObserver(ask);
    watcher.observe(canvas.current!);
    return () => {
      stop();
      watcher.disconnect();
      cancelAnimationFrame(asked.current);
      asked.current = 0;
    };
  }, []);
  return (
    <div class="figure-canvas" aria-hidden="true">
      <canvas ref={canvas} />
    </div>
  );
}
