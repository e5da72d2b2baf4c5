import { describe, expect, it } from 'vitest';
import {
  type Projection,
  project,
  projectionOfSimilarity,
  type Similarity,
  STAY,
  vec,
} from '../../src/geometry/index.ts';
import {
  carriedFigure,
  halvedPicture,
  layAt,
  type Photograph,
  type Picture,
  photographFor,
  picturePyramid,
  resamplePicture,
  type TruePhotograph,
  tileLevels,
  tilesInView,
  truePhotograph,
} from '../../src/wood/index.ts';
import { layOf, polygon } from './to-lay.ts';

/** 2 pixels a millimetre, taken square on, y down: the near left corner of the board at pixel (100, 500). */
const UPPER: Photograph = {
  file: 'upper.jpg',
  face: 'upper',
  points: [
    { from: vec(100, 500), to: vec(0, 0) },
    { from: vec(2100, 500), to: vec(1000, 0) },
  ],
};

function laid(photograph: Photograph): TruePhotograph {
  const found = truePhotograph(photograph);
  if ('kind' in found) throw new Error(found.kind);
  return found;
}

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });

describe('a photograph on its board', () => {
  it('lies to scale by two points, up in the picture being across the board', () => {
    const { toBoard, coarsest } = laid(UPPER);
    expect(project(vec(100, 100), toBoard)).toEqual(near(0, 200));
    expect(coarsest).toBeCloseTo(0.5, 9);
  });

  it('of the lower face is seen turned over about the length of the board', () => {
    const { toBoard } = laid({ ...UPPER, face: 'lower' });
    expect(project(vec(100, 700), toBoard)).toEqual(near(0, 100));
  });

  it('is found to be of the other face when four points say so', () => {
    const square = (flip: boolean): Photograph => ({
      ...UPPER,
      points: [
        [100, 500, 0, 0],
        [2100, 510, 1000, 0],
        [2080, 90, 1000, 200],
        [110, 100, 0, 200],
      ].map(([x, y, u, v]) => ({ from: vec(x!, flip ? 600 - y! : y!), to: vec(u!, v!) })),
    });
    expect(truePhotograph(square(false))).toMatchObject({ photograph: { face: 'upper' } });
    expect(truePhotograph(square(true))).toMatchObject({ kind: 'turned-over' });
    expect(truePhotograph({ ...square(true), face: 'lower' })).not.toHaveProperty('kind');
    expect(truePhotograph({ ...UPPER, points: UPPER.points.slice(1) })).toMatchObject({ kind: 'count' });
  });

  it('of a leaf goes before one of the board, and of the board the nearer face before the other', () => {
    const leaf = laid({ ...UPPER, file: 'leaf.jpg', leaf: 2, face: 'upper' });
    const upper = laid(UPPER);
    const lower = laid({ ...UPPER, file: 'lower.jpg', face: 'lower' });
    const all = [upper, lower, leaf];
    expect(photographFor(all, 'upper', { at: 2, of: 2 })).toBe(leaf);
    expect(photographFor(all, 'lower', { at: 1, of: 2 })).toBe(upper);
    expect(photographFor([upper, lower], 'upper', { at: 2, of: 2 })).toBe(lower);
    expect(photographFor([lower], 'upper')).toBe(lower);
  });
});

describe('the figure that parts will carry', () => {
  const leg = polygon([0, 0], [60, 0], [90, 400], [0, 400]);

  it('is read off the photograph where the part lies', () => {
    const { toBoard, region } = layAt(layOf('leg', leg), {
      id: 'leg',
      board: 'A',
      at: vec(200, 50),
      turned: 0,
      mirrored: false,
    });
    const figure = carriedFigure(laid(UPPER), leg, toBoard);
    // The part's near left corner as it lies is at (200, 50) on the board, that is at pixel (500, 400).
    const onBoard = region.outer.edges.map(({ from }) => from);
    for (const [i, { from }] of leg.outer.edges.entries()) {
      const pixel = project(from, figure.toPixels)!;
      expect(pixel).toEqual(near(100 + 2 * onBoard[i]!.x, 500 - 2 * onBoard[i]!.y));
      expect(project(pixel, figure.toPart)).toEqual(near(from.x, from.y));
    }
    expect(figure.mirrored).toBe(false);
  });

  it('of two leaves from one place is each other’s mirror image', () => {
    const place: Similarity = { ...STAY, turn: -Math.PI / 2, shift: vec(100, 150) };
    const left = carriedFigure(laid(UPPER), leg, place);
    // The right leg is the left one mirrored, and lies at the same place of the board with its leaf turned over.
    const right = carriedFigure(laid(UPPER), leg, { ...place, mirrored: true });
    for (const p of [vec(10, 30), vec(55, 90), vec(3, 399)]) {
      expect(project(vec(-p.x, p.y), right.toPixels)).toEqual(near(...xy(project(p, left.toPixels)!)));
    }
    expect([left.mirrored, right.mirrored]).toEqual([false, true]);
  });

  it('moves with the part on the board', () => {
    const at = (x: number) => carriedFigure(laid(UPPER), leg, { ...STAY, shift: vec(x, 20) }).toPixels;
    const [a, b] = [project(vec(5, 5), at(100))!, project(vec(5, 5), at(130))!];
    expect(b.x - a.x).toBeCloseTo(60, 6);
    expect(b.y).toBeCloseTo(a.y, 6);
  });
});

const xy = ({ x, y }: { x: number; y: number }): [number, number] => [x, y];

/** A picture whose red is a function of the place, in pixels. */
function drawn(width: number, height: number, red: (x: number, y: number) => number): Picture {
  const data = new Uint8ClampedArray(4 * width * height);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) data.set([red(x + 0.5, y + 0.5), 0, 0, 255], 4 * (y * width + x));
  }
  return { width, height, data };
}

const redAt = ({ width, data }: Picture, x: number, y: number) => data[4 * (y * width + x)]!;
const scaleBy = (s: number): Projection => projectionOfSimilarity({ ...STAY, scale: s });

describe('a picture resampled', () => {
  const noise = drawn(37, 23, (x, y) => (x * 7919 + y * 104_729) % 251);

  it('as it is stays as it is', () => {
    expect(resamplePicture(picturePyramid(noise), scaleBy(1), 37, 23)).toEqual(noise);
  });

  it('at a quarter is the mean of sixteen pixels, not one of them', () => {
    const fine = drawn(64, 64, (x, y) => ((Math.floor(x) + Math.floor(y)) % 2 === 0 ? 240 : 20));
    const small = resamplePicture(picturePyramid(fine), scaleBy(4), 16, 16);
    for (let i = 0; i < 16; i++) expect(Math.abs(redAt(small, i, 15 - i) - 130)).toBeLessThanOrEqual(1);
  });

  it('through a projection shows what lies there, and is clear beyond the edge', () => {
    const ramp = drawn(200, 100, (x, y) => x / 2 + y);
    const lean: Projection = [0.9, 0.2, 3, -0.1, 0.8, 12, 0.0004, 0.0007, 1];
    const seen = resamplePicture(picturePyramid(ramp), lean, 260, 140);
    let inside = 0;
    for (let y = 0; y < 140; y += 7) {
      for (let x = 0; x < 260; x += 7) {
        const from = project(vec(x + 0.5, y + 0.5), lean)!;
        const isIn = from.x > 1 && from.y > 1 && from.x < 199 && from.y < 99;
        if (isIn) {
          inside++;
          expect(Math.abs(redAt(seen, x, y) - (from.x / 2 + from.y))).toBeLessThan(1.6);
        } else if (from.x < 0 || from.y < 0 || from.x > 200 || from.y > 100) {
          expect(seen.data[4 * (y * 260 + x) + 3]).toBe(0);
        }
      }
    }
    expect(inside).toBeGreaterThan(200);
  });

  it('halves keep the mean', () => {
    const mean = ({ data }: Picture) =>
      data.reduce((sum, v, i) => sum + (i % 4 === 0 ? v : 0), 0) / (data.length / 4);
    const even = drawn(64, 32, (x, y) => (x * 31 + y * 17) % 255);
    expect(Math.abs(mean(halvedPicture(even)) - mean(even))).toBeLessThan(0.6);
    expect(picturePyramid(noise).map(({ width, height }) => [width, height])).toEqual([
      [37, 23],
      [19, 12],
      [10, 6],
      [5, 3],
      [3, 2],
      [2, 1],
      [1, 1],
    ]);
  });
});

describe('tiles of a 24-megapixel photograph', () => {
  const levels = tileLevels(6000, 4000);

  it('cover every level, the last with a single one', () => {
    expect(levels.map(({ columns, rows }) => columns * rows)).toEqual([96, 24, 6, 2, 1]);
    expect(levels[3]).toMatchObject({ width: 750, height: 500, columns: 2, rows: 1 });
  });

  it('the whole photograph on a screen takes a few coarse tiles', () => {
    const tiles = tilesInView(levels, scaleBy(1500 / 6000), { width: 1500, height: 1000 });
    expect(tiles).toHaveLength(6);
    expect(tiles.every(({ level }) => level === 2)).toBe(true);
    // The tile in the second column of the second row begins at pixel 2048 of the photograph, 512 of the view.
    const tile = tiles.find(({ column, row }) => column === 1 && row === 1)!;
    expect(project(vec(0, 0), tile.toView)).toEqual(near(512, 512));
    expect(project(vec(512, 0), tile.toView)).toEqual(near(1024, 512));
  });

  it('any view square on needs few pixels for each of its own, and misses none that it shows', () => {
    for (const scale of [2, 1, 0.7, 0.5, 0.36, 0.26, 0.1, 0.02]) {
      for (const turn of [0, 0.3, 1.2]) {
        const by: Similarity = { ...STAY, scale, turn, shift: vec(-900 * scale, -700 * scale) };
        const toView = projectionOfSimilarity(by);
        const view = { width: 1400, height: 900 };
        const tiles = tilesInView(levels, toView, view);
        const diagonal = Math.hypot(view.width, view.height);
        expect(tiles.length).toBeLessThanOrEqual((2 * diagonal) ** 2 / 512 ** 2);
        for (let probe = 0; probe < 60; probe++) {
          const p = vec((probe * 1117) % 6000, (probe * 733) % 4000);
          const q = project(p, toView)!;
          if (q.x < 0 || q.y < 0 || q.x > view.width || q.y > view.height) continue;
          const size = 512 * 2 ** tiles[0]!.level;
          const [column, row] = [Math.floor(p.x / size), Math.floor(p.y / size)];
          expect(tiles.some((tile) => tile.column === column && tile.row === row)).toBe(true);
          expect(2 ** tiles[0]!.level * scale).toBeLessThanOrEqual(
            1 + 1e-9 + (tiles[0]!.level === 0 ? scale : 0),
          );
        }
      }
    }
  });

  it('nothing is needed of a photograph out of sight', () => {
    const away = projectionOfSimilarity({ ...STAY, shift: vec(9000, 0) });
    expect(tilesInView(levels, away, { width: 1400, height: 900 })).toEqual([]);
  });
});
