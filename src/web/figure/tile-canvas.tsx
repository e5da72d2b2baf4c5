import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { matrix2d, type Projection } from '../../geometry/index.ts';
import { type TileInView, tileLevels, tilesInView } from '../../wood/index.ts';
import type { OnScreen } from '../drawing/scene-view.tsx';
import { photoDo } from '../photographs/photo-do.ts';
import type { PhotoFile } from '../photographs/photo-protocol.ts';

interface TileCanvasProps {
  readonly photo: PhotoFile;
  readonly size: { readonly width: number; readonly height: number };
  readonly screen: OnScreen;
}

/** Tiles kept: a large screen shows a third of them. */
const KEPT = 96;

const keyOf = ({ level, column, row }: Pick<TileInView, 'level' | 'column' | 'row'>): string =>
  `${level} ${column} ${row}`;

/** A photograph as it was taken under a drawing of its pixels: coarse at once, then the tiles that are looked at. */
export function TileCanvas({ photo, size, screen }: TileCanvasProps) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const tiles = useRef(new Map<string, ImageBitmap | 'asked'>());
  const now = useRef(screen);
  now.current = screen;
  const frame = useRef(0);
  const ask = (): void => {
    if (frame.current === 0) frame.current = requestAnimationFrame(paint);
  };
  const paint = (): void => {
    frame.current = 0;
    const element = canvas.current;
    const context = element?.getContext('2d');
    if (element === null || context === null || context === undefined) return;
    const density = Math.min(devicePixelRatio, 2);
    const view = {
      width: Math.round(element.clientWidth * density),
      height: Math.round(element.clientHeight * density),
    };
    if (element.width !== view.width) element.width = view.width;
    if (element.height !== view.height) element.height = view.height;
    const { x, y } = now.current.place({ x: 0, y: 0 });
    const zoom = now.current.zoom * density;
    const toView: Projection = [zoom, 0, x * density, 0, zoom, y * density, 0, 0, 1];
    const levels = tileLevels(size.width, size.height);
    const whole = tilesInView(levels.slice(-1), toView, view);
    const wanted = tilesInView(levels, toView, view);
    context.setTransform(1, 0, 0, 1, 0, 0);
    context.clearRect(0, 0, view.width, view.height);
    for (const tile of [...whole, ...wanted]) {
      const bitmap = tiles.current.get(keyOf(tile));
      if (bitmap === undefined) void fetchTile(tile);
      if (bitmap === undefined || bitmap === 'asked') continue;
      context.setTransform(...matrix2d(tile.toView));
      context.drawImage(bitmap, 0, 0);
      // What is looked at is kept longest.
      tiles.current.delete(keyOf(tile));
      tiles.current.set(keyOf(tile), bitmap);
    }
  };
  const fetchTile = async ({ level, column, row }: TileInView): Promise<void> => {
    const own = tiles.current;
    own.set(keyOf({ level, column, row }), 'asked');
    const bitmap = await photoDo({ kind: 'tile', photo, level, column, row }).catch(() => undefined);
    if (bitmap === undefined) return;
    own.set(keyOf({ level, column, row }), bitmap);
    for (const [key, old] of own) {
      if (own.size <= KEPT || old === 'asked') break;
      old.close();
      own.delete(key);
    }
    ask();
  };
  useLayoutEffect(ask);
  useEffect(() => {
    const watcher = new ResizeObserver(ask);
    watcher.observe(canvas.current!);
    return () => {
      watcher.disconnect();
      cancelAnimationFrame(frame.current);
      for (const tile of tiles.current.values()) if (tile !== 'asked') tile.close();
      tiles.current = new Map();
    };
  }, [photo]);
  return (
    <div class="figure-canvas" aria-hidden="true">
      <canvas ref={canvas} />
    </div>
  );
}
