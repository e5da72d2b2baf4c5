import type { RefObject } from 'preact';
import { useEffect, useLayoutEffect, useRef, useState } from 'preact/hooks';
import { fitting, pannedBy, type Size, type Viewport, zoomedAbout } from './viewport.ts';

/** px round a drawing that is shown whole. */
const MARGIN = 20;
/** px that one arrow key moves, and how much one key or notch of a wheel zooms. */
const STEP = 60;
const FACTOR = 1.25;
/** px that a pointer may move and still be a click. */
const STILL = 5;

interface ViewportOptions {
  readonly box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number };
}

/**
 * Zoom and pan of a drawing: wheel and pinch zoom about the pointer, dragging moves, arrow keys move, + and − zoom, 0 shows all. Until it is
 * touched all is shown, whatever its size.
 */
export function useViewport(svg: RefObject<SVGSVGElement | null>, { box }: ViewportOptions) {
  const [size, setSize] = useState<Size>({ width: 800, height: 600 });
  const [chosen, setChosen] = useState<Viewport>();
  const whole = fitting(box, size, MARGIN);
  const view = chosen ?? whole;
  const now = useRef({ view, whole, size });
  now.current = { view, whole, size };
  const pointers = useRef(new Map<number, { x: number; y: number }>());
  const moved = useRef(0);

  useLayoutEffect(() => {
    const element = svg.current!;
    const measure = (): void => {
      const { width, height } = element.getBoundingClientRect();
      if (width > 0 && height > 0) setSize({ width, height });
    };
    measure();
    const watcher = new ResizeObserver(measure);
    watcher.observe(element);
    return () => watcher.disconnect();
  }, []);

  const zoom = (by: number, at = { x: 0, y: 0 }): void =>
    setChosen(zoomedAbout(now.current.view, by, at, now.current.whole.zoom));
  const pan = (dx: number, dy: number): void => setChosen(pannedBy(now.current.view, dx, dy));
  const fit = (): void => setChosen(undefined);

  useEffect(() => {
    const element = svg.current!;
    // Preact's own wheel handlers cannot keep the page from scrolling.
    const onWheel = (event: WheelEvent): void => {
      event.preventDefault();
      const { left, top, width, height } = element.getBoundingClientRect();
      const lines = event.deltaMode === 1 ? 16 : 1;
      const by = Math.exp((-event.deltaY * lines * (event.ctrlKey ? 8 : 1)) / 700);
      zoom(by, { x: event.clientX - left - width / 2, y: event.clientY - top - height / 2 });
    };
    element.addEventListener('wheel', onWheel, { passive: false });
    return () => element.removeEventListener('wheel', onWheel);
  }, []);

  const onPointerDown = (event: PointerEvent): void => {
    if (event.button > 1) return;
    moved.current = 0;
    pointers.current.set(event.pointerId, { x: event.clientX, y: event.clientY });
  };
  const onPointerMove = (event: PointerEvent): void => {
    const before = pointers.current.get(event.pointerId);
    if (before === undefined) return;
    const at = { x: event.clientX, y: event.clientY };
    const other = [...pointers.current].find(([id]) => id !== event.pointerId)?.[1];
    moved.current += Math.hypot(at.x - before.x, at.y - before.y);
    if (moved.current < STILL) return;
    svg.current!.setPointerCapture(event.pointerId);
    pointers.current.set(event.pointerId, at);
    if (other === undefined) pan(at.x - before.x, at.y - before.y);
    else pinch(before, at, other);
  };
  const pinch = (before: Point, at: Point, other: Point): void => {
    const { left, top, width, height } = svg.current!.getBoundingClientRect();
    const by =
      Math.hypot(at.x - other.x, at.y - other.y) /
      Math.max(1, Math.hypot(before.x - other.x, before.y - other.y));
    const middle = { x: (at.x + other.x) / 2 - left - width / 2, y: (at.y + other.y) / 2 - top - height / 2 };
    const { view: from, whole: all } = now.current;
    setChosen(
      pannedBy(zoomedAbout(from, by, middle, all.zoom), (at.x - before.x) / 2, (at.y - before.y) / 2),
    );
  };
  const onPointerUp = (event: PointerEvent): void => {
    pointers.current.delete(event.pointerId);
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.target !== svg.current || event.ctrlKey || event.metaKey || event.altKey) return;
    const deed = KEYS[event.key];
    if (deed === undefined) return;
    event.preventDefault();
    deed({ zoom, pan, showAll: fit });
  };

  return {
    view,
    whole,
    size,
    zoom: (by: number) => zoom(by),
    fit,
    isWhole: chosen === undefined,
    /** Was the pointer moved since it went down? Then what follows is no click. */
    wasMoved: () => moved.current >= STILL,
    handlers: { onPointerDown, onPointerMove, onPointerUp, onPointerCancel: onPointerUp, onKeyDown },
  };
}

interface Point {
  readonly x: number;
  readonly y: number;
}

interface Moves {
  readonly zoom: (by: number) => void;
  readonly pan: (dx: number, dy: number) => void;
  readonly showAll: () => void;
}

const KEYS: Readonly<Record<string, (moves: Moves) => void>> = {
  '+': ({ zoom }) => zoom(FACTOR),
  '=': ({ zoom }) => zoom(FACTOR),
  '-': ({ zoom }) => zoom(1 / FACTOR),
  '0': ({ showAll }) => showAll(),
  ArrowLeft: ({ pan }) => pan(STEP, 0),
  ArrowRight: ({ pan }) => pan(-STEP, 0),
  ArrowUp: ({ pan }) => pan(0, STEP),
  ArrowDown: ({ pan }) => pan(0, -STEP),
};
