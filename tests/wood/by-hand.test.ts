import { describe, expect, it } from 'vitest';
import { removeBoard, renameBoard } from '../../src/design/index.ts';
import { facesInView } from '../../src/drawing/index.ts';
import {
  boundsOfRegions,
  type Frame,
  project,
  projectTwice,
  transformPoint,
  vec,
} from '../../src/geometry/index.ts';
import {
  boardPicturePlan,
  facesOfMesh,
  type Lying,
  layAt,
  movedOnBoard,
  moveLying,
  photographedBox,
  truePhotograph,
} from '../../src/wood/index.ts';
import { layOf, polygon } from './to-lay.ts';

/** No turn or mirror leaves this outline as it is. */
const FLAG = polygon([0, 0], [60, 0], [60, 20], [20, 20], [20, 90], [0, 90]);
const AT: Lying = { id: 'flag', board: 'A', at: vec(300, 40), turned: 0.3, mirrored: false };

describe('what is moved by hand on a board', () => {
  it('keeps the middle of its box while it is turned, and comes back after a whole turn', () => {
    const toLay = layOf('flag', FLAG);
    const middle = (lying: Lying) => {
      const { minX, maxX, minY, maxY } = boundsOfRegions([layAt(toLay, lying).region]);
      return { x: Number(((minX + maxX) / 2).toFixed(7)), y: Number(((minY + maxY) / 2).toFixed(7)) };
    };
    let lying = AT;
    for (let quarter = 0; quarter < 4; quarter++) {
      lying = moveLying(toLay, lying, { turn: Math.PI / 2 });
      expect(middle(lying)).toEqual(middle(AT));
    }
    expect(lying.turned).toBeCloseTo(AT.turned, 12);
    expect(middle(moveLying(toLay, AT, { over: true }))).toEqual(middle(AT));
  });

  it('takes the figure along: places of the piece go where the layout says that they lie', () => {
    const toLay = layOf('flag', FLAG);
    const to = moveLying(toLay, AT, { by: vec(-70, 15), turn: 2.1, over: true });
    const by = movedOnBoard(toLay, AT, to);
    for (const p of [vec(0, 0), vec(60, 20), vec(7, 83)]) {
      const before = transformPoint(p, layAt(toLay, AT).toBoard);
      const { x, y } = transformPoint(p, layAt(toLay, to).toBoard);
      expect(project(before, by)).toEqual({ x: expect.closeTo(x, 9), y: expect.closeTo(y, 9) });
    }
  });
});

describe('the picture of a board', () => {
  const corners = [
    [400, 2400, 0, 0],
    [5700, 2250, 2000, 0],
    [5400, 1800, 2000, 240],
    [600, 1850, 0, 240],
  ] as const;
  const laid = truePhotograph({
    file: 'slant.jpg',
    face: 'upper',
    points: corners.map(([px, py, x, y]) => ({ from: vec(px, py), to: vec(x, y) })),
  });
  if ('kind' in laid) throw new Error(laid.kind);

  it('has the board from edge to edge, its far edge at the top, whatever the camera saw', () => {
    const plan = boardPicturePlan(laid, { length: 2000, width: 240 });
    const toPhotograph = projectTwice(plan.fromBoard, plan.toPhotograph);
    for (const [px, py, x, y] of corners) {
      expect(project(vec(x, y), toPhotograph)).toEqual({
        x: expect.closeTo(px, 6),
        y: expect.closeTo(py, 6),
      });
    }
    expect(project(vec(0, 240), plan.fromBoard)).toEqual({ x: 0, y: 0 });
  });

  it('is no larger than asked, and reads of the photograph no more than the board and its rim', () => {
    const plan = boardPicturePlan(laid, { length: 2000, width: 240 }, 100_000);
    expect(plan.width * plan.height).toBeLessThanOrEqual(101_000);
    const read = photographedBox(plan, { width: 6000, height: 4000 })!;
    // The corners lie from 400 to 5700 and from 1800 to 2400; the picture is rounded to whole pixels of about 2 mm.
    expect(Math.abs(read.x - 398) + Math.abs(read.y - 1798)).toBeLessThan(8);
    expect(Math.abs(read.width - 5304) + Math.abs(read.height - 604)).toBeLessThan(16);
    // A board that is not on the picture is not read at all.
    expect(photographedBox(plan, { width: 300, height: 300 })).toBeUndefined();
  });
});

const UPRIGHT: Frame = {
  origin: { x: 0, y: 0, z: 0 },
  x: { x: 1, y: 0, z: 0 },
  y: { x: 0, y: 0, z: 1 },
  z: { x: 0, y: -1, z: 0 },
};

describe('faces in a view', () => {
  const piece = (id: string, y: number) => ({
    id,
    frame: { ...UPRIGHT, origin: { x: 0, y, z: 0 } },
    face: [FLAG],
    back: [FLAG],
    drawn: { thickness: 20 },
  });
  const front: Frame = { origin: UPRIGHT.origin, x: UPRIGHT.x, y: UPRIGHT.y, z: UPRIGHT.z };
  const behind: Frame = { ...front, x: { x: -1, y: 0, z: 0 }, z: { x: 0, y: 1, z: 0 } };

  it('come the farthest first, whichever way they are named', () => {
    const parts = [piece('near', -100), piece('far', 300), piece('middle', 50)] as never;
    expect(facesInView(parts, front).map((each) => each.piece)).toEqual(['far', 'middle', 'near']);
    expect(facesInView(parts, behind).map((each) => each.piece)).toEqual(['near', 'middle', 'far']);
  });

  it('show the back, mirrored, to who stands behind', () => {
    const [seen] = facesInView([piece('leg', 0)] as never, behind);
    expect(seen!.face).toBe('back');
    expect(project(vec(60, 20), seen!.toPicture)).toEqual({ x: -60, y: 20 });
    const [edge] = facesInView([piece('leg', 0)] as never, {
      ...front,
      x: { x: 0, y: 1, z: 0 },
      z: { x: 1, y: 0, z: 0 },
    });
    expect(edge!.face).toBeUndefined();
  });
});

describe('the surface of a piece', () => {
  it('is told apart into face side, back and the rest, each corner with its place in the plane', () => {
    const box = [0, 30].flatMap((x) => [0, 700].flatMap((z) => [0, 20].map((y) => [x, y, z]))).flat();
    // A box of 30 × 20 × 700 mm: two triangles of its face side (y = 0), two of its back (y = 20), two of a side.
    const triangles = Uint32Array.from([0, 4, 2, 1, 3, 5, 2, 4, 6, 3, 7, 5, 0, 2, 1, 1, 2, 3]);
    const mesh = facesOfMesh({ positions: Float32Array.from(box), triangles, frame: UPRIGHT }, 20);
    expect(mesh.counts).toEqual({ other: 2, face: 2, back: 2 });
    expect([...mesh.triangles.subarray(6, 12)].map((corner) => box[3 * corner + 1])).toEqual([
      0, 0, 0, 0, 0, 0,
    ]);
    expect([...mesh.plane.subarray(12, 14)]).toEqual([30, 700]);
  });
});

describe('the name of a board', () => {
  const wood = {
    boards: [
      { name: 'A', length: 2000, width: 200, thickness: 50 },
      { name: 'B', length: 900, width: 200, thickness: 50 },
    ],
    placements: [
      { board: 'A', part: 'leg', x: 0, y: 0 },
      { board: 'B', part: 'arm', x: 0, y: 0 },
    ],
    bookmatch: [
      {
        name: 'legs',
        arrangement: 'book' as const,
        resaw: 'plan',
        boards: ['A'],
        parts: [{ part: 'leg', faces: ['face' as const] }],
        leaves: [
          {
            board: 'A',
            leaf: 1,
            piece: 'FL',
            face: 'face' as const,
            shows: 'upper' as const,
            markedEnd: 'up' as const,
          },
        ],
      },
    ],
    patches: [{ name: 'knot', shape: 'boat' as const, along: 20, across: 8, board: 'A' }],
  };

  it('is carried wherever the board is named', () => {
    const text = JSON.stringify(renameBoard(wood, 'A', 'crotch'));
    expect(text.match(/"crotch"/g)).toHaveLength(5);
    expect(text).not.toContain('"A"');
    expect(renameBoard(renameBoard(wood, 'A', 'crotch'), 'crotch', 'A')).toEqual(wood);
  });

  it('is named nowhere once the board is gone, and what lay on the other stays', () => {
    const left = removeBoard(wood, 'A');
    expect(JSON.stringify(left)).not.toContain('"A"');
    expect(left.placements).toEqual([wood.placements[1]]);
    expect(left.bookmatch![0]).not.toHaveProperty('boards');
  });
});
