import type { Box, Vec } from '../../../geometry/index.ts';

/** Straight pieces found again by place: each is kept in every cell of a grid that it may touch. Lives as long as one view. */
export interface SegmentGrid<T> {
  readonly add: (from: Vec, to: Vec, item: T) => void;
  /** Calls once for each item that may touch the straight piece (grown by `by` mm). */
  readonly near: (from: Vec, to: Vec, by: number, found: (item: T) => void) => void;
}

/** Cells along the longer side of what is drawn. */
const CELLS = 96;

export function createSegmentGrid<T>(box: Box): SegmentGrid<T> {
  const size = Math.max(1e-3, Math.max(box.maxX - box.minX, box.maxY - box.minY) / CELLS);
  const cells = new Map<number, { readonly item: T; readonly mark: { last: number } }[]>();
  let query = 0;
  const visit = (from: Vec, to: Vec, by: number, call: (key: number) => void): void => {
    const reach = Math.max(Math.abs(to.x - from.x), Math.abs(to.y - from.y));
    const pieces = Math.max(1, Math.ceil(reach / size));
    const [dx, dy] = [(to.x - from.x) / pieces, (to.y - from.y) / pieces];
    for (let i = 0; i < pieces; i++) {
      const [x0, y0] = [from.x + i * dx - box.minX, from.y + i * dy - box.minY];
      const left = Math.floor((Math.min(x0, x0 + dx) - by) / size);
      const right = Math.floor((Math.max(x0, x0 + dx) + by) / size);
      const bottom = Math.floor((Math.min(y0, y0 + dy) - by) / size);
      const top = Math.floor((Math.max(y0, y0 + dy) + by) / size);
      for (let column = left; column <= right; column++) {
        for (let row = bottom; row <= top; row++) call(column * 65536 + row);
      }
    }
  };
  return {
    add: (from, to, item) => {
      const entry = { item, mark: { last: 0 } };
      visit(from, to, 0, (key) => {
        const cell = cells.get(key);
        if (cell === undefined) cells.set(key, [entry]);
        else if (cell.at(-1) !== entry) cell.push(entry);
      });
    },
    near: (from, to, by, found) => {
      query += 1;
      visit(from, to, by, (key) => {
        for (const { item, mark } of cells.get(key) ?? []) {
          if (mark.last === query) continue;
          mark.last = query;
          found(item);
        }
      });
    },
  };
}
