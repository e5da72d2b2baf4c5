/** Edge of a tile, pixels. */
export const TILE = 512;

/** One level of a photograph cut into tiles: level 0 in full, each further one at half the size of the one before. */
export interface TileLevel {
  readonly level: number;
  readonly width: number;
  readonly height: number;
  readonly columns: number;
  readonly rows: number;
}

/** The levels of a photograph down to the one that a single tile holds. Sizes of halves are rounded up, as halvedPicture does. */
export function tileLevels(width: number, height: number): readonly TileLevel[] {
  const levels: TileLevel[] = [];
  for (let level = 0, w = width, h = height; ; level++, w = Math.ceil(w / 2), h = Math.ceil(h / 2)) {
    const columns = Math.ceil(w / TILE);
    const rows = Math.ceil(h / TILE);
    levels.push({ level, width: w, height: h, columns, rows });
    if (columns * rows <= 1) return levels;
  }
}
