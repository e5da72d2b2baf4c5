/** What of a scene is looked at: the place in the middle (scene units, y down), and px on the screen per unit. */
export interface Viewport {
  readonly x: number;
  readonly y: number;
  readonly zoom: number;
}

export interface Size {
  readonly width: number;
  readonly height: number;
}

interface BoxOnScreen extends Size {
  readonly x: number;
  readonly y: number;
}

/** How far one may zoom from where all of it is seen. */
const LEAST = 0.2;
const MOST = 60;

/** The whole of a box in the middle, with a margin (px). */
export function fitting(box: BoxOnScreen, size: Size, margin: number): Viewport {
  const room = {
    width: Math.max(40, size.width - 2 * margin),
    height: Math.max(40, size.height - 2 * margin),
  };
  const zoom = Math.min(room.width / Math.max(box.width, 1e-6), room.height / Math.max(box.height, 1e-6));
  return { x: box.x + box.width / 2, y: box.y + box.height / 2, zoom };
}

/** Zoomed by a factor about a point of the screen (px from its middle), which stays where it is. */
export function zoomedAbout(
  view: Viewport,
  by: number,
  at: { readonly x: number; readonly y: number },
  whole: number,
): Viewport {
  const zoom = Math.min(Math.max(view.zoom * by, whole * LEAST), whole * MOST);
  return {
    zoom,
    x: view.x + at.x / view.zoom - at.x / zoom,
    y: view.y + at.y / view.zoom - at.y / zoom,
  };
}

/** Moved as the pointer moves, px. */
export function pannedBy(view: Viewport, dx: number, dy: number): Viewport {
  return { ...view, x: view.x - dx / view.zoom, y: view.y - dy / view.zoom };
}

export function viewBoxOf({ x, y, zoom }: Viewport, { width, height }: Size): string {
  return `${x - width / zoom / 2} ${y - height / zoom / 2} ${width / zoom} ${height / zoom}`;
}
