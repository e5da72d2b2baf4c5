import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boundsOfRegions,
  cross3,
  dot3,
  pointAt,
  pointToWorld,
  scale3,
  type Vec,
  type Vec3,
} from '../../src/geometry/index.ts';
import { lengthWords } from '../../src/routing/index.ts';
import {
  type Bookmatch,
  checkLeaves,
  depthOfShow,
  type LeafMap,
  type LeafPiece,
  type LeafPlace,
  leafMap,
  leavesByHand,
  matchDrift,
  type ResawPlan,
  resawStack,
} from '../../src/wood/index.ts';
import { MATCHED, matchedPieces, matchOf } from '../wood/matched-pieces.ts';

const PLAN: ResawPlan = {
  name: 'leaves',
  rough: 60,
  flattening: 4,
  kerf: 1.3,
  leaves: 8,
  planing: { sawn: 0.7, outer: 0.4 },
  drying: 1.6,
  backing: 20,
  glued: 1,
  lastPlaning: { show: 0.4, back: 0.6 },
  drift: 0.5,
  finished: 20,
};
const STACK = resawStack(PLAN);

/** What the board shows at a place (mm): nothing in it repeats, and no turn of it is like another. `depth` from the rough upper face. */
const figureAt = ({ x, y }: Vec, depth: number): number =>
  Math.sin(x / 173) + 0.4 * Math.cos(y / 31 + x / 410) + x * y * 1e-4 + y / 77 + SLOPE * depth;
const SLOPE = 0.3;
const UP: Vec3 = { x: 0, y: 0, z: 1 };

/**
 * Where a point of the base's surface lay in the board, by what is printed of the leaf alone: which face of it shows, where the board's marked
 * end points, and that all leaves of a set take their outline from the same place, its box from (0, 0) on.
 */
function inBoard(piece: LeafPiece, place: LeafPlace, point: Vec3): Vec {
  const { frame } = piece;
  const out = place.face === 'face' ? frame.z : scale3(frame.z, -1);
  const up = place.shows === 'upper' ? out : scale3(out, -1);
  const head = { x: 0, y: 0, z: 0 };
  for (const [axis, share] of [
    [frame.x, piece.head.x],
    [frame.y, piece.head.y],
  ] as const) {
    head.x += axis.x * share;
    head.y += axis.y * share;
    head.z += axis.z * share;
  }
  // As one stands before the face that shows, looking at it: their left is what comes out of it crossed with up.
  const left = cross3(out, UP);
  const isHead =
    place.markedEnd === 'up' || place.markedEnd === 'down'
      ? (place.markedEnd === 'up') === head.z > 0
      : (place.markedEnd === 'left') === dot3(head, left) > 0;
  // The marked end is where x is 0: x grows away from it.
  const along = scale3(head, isHead ? -1 : 1);
  const across = cross3(up, along);
  const corners = cornersOf(piece);
  const least = (axis: Vec3): number => Math.min(...corners.map((corner) => dot3(corner, axis)));
  return { x: dot3(point, along) - least(along), y: dot3(point, across) - least(across) };
}

const cornersKept = new WeakMap<LeafPiece, readonly Vec3[]>();

/** Points all along a piece's outline, in the world. */
function cornersOf(piece: LeafPiece): readonly Vec3[] {
  const known = cornersKept.get(piece);
  if (known !== undefined) return known;
  const corners = piece.region.flatMap(({ outer }) =>
    outer.edges.flatMap((edge) =>
      Array.from({ length: 64 }, (_, at) => pointToWorld(piece.frame, { ...pointAt(edge, at / 64), z: 0 })),
    ),
  );
  cornersKept.set(piece, corners);
  return corners;
}

/** Points within the box of a piece's outline, on its face or back, in the world. */
function pointsOn({ frame, region, thickness }: LeafPiece, face: LeafPlace['face']): readonly Vec3[] {
  const { minX, maxX, minY, maxY } = boundsOfRegions(region);
  return [0.1, 0.35, 0.8].flatMap((u) =>
    [0.15, 0.5, 0.9].map((v) =>
      pointToWorld(frame, {
        x: minX + u * (maxX - minX),
        y: minY + v * (maxY - minY),
        z: face === 'face' ? 0 : -thickness,
      }),
    ),
  );
}

/** Figures at the places of one piece and at their mirror images on another, as differences. */
function differences(map: LeafMap, a: LeafPlace, b: LeafPlace, across: 'x' | 'y'): readonly number[] {
  const [one, other] = [a, b].map(({ piece }) => map.pieces.find(({ id }) => id === piece)!) as [
    LeafPiece,
    LeafPiece,
  ];
  const [depthA, depthB] = [depthOfShow(a, STACK), depthOfShow(b, STACK)];
  return pointsOn(one, a.face).map((p) => {
    const image = { ...p, [across]: -p[across] };
    return figureAt(inBoard(other, b, image), depthB) - figureAt(inBoard(one, a, p), depthA);
  });
}

/** Across which middle plane a piece is the mirror image of another, by where they stand. */
function mirrorOf(a: LeafPiece, b: LeafPiece): 'x' | 'y' {
  const { z } = a.frame;
  const isX = Math.abs(z.x + b.frame.z.x) < 1e-9 && Math.abs(z.y - b.frame.z.y) < 1e-9;
  const isY = Math.abs(z.x - b.frame.z.x) < 1e-9 && Math.abs(z.y + b.frame.z.y) < 1e-9;
  if (isX && isY) return Math.abs(a.frame.origin.x + b.frame.origin.x) < 1e-6 ? 'x' : 'y';
  return isX ? 'x' : 'y';
}

const maps = MATCHED.map(([form, part]) => ({ form, part, pieces: matchedPieces(form, part) }));

const matches = fc.record({
  base: fc.constantFrom(...maps),
  centre: fc.constantFrom<Bookmatch['centre']>('near', 'far'),
  faces: fc.constantFrom<Bookmatch['parts'][number]['faces']>(['face'], ['face', 'back']),
});
const mapOf = ({
  base,
  centre,
  faces,
}: {
  base: (typeof maps)[number];
  centre: Bookmatch['centre'];
  faces: Bookmatch['parts'][number]['faces'];
}): LeafMap =>
  leafMap(matchOf(base.part, { centre, parts: [{ part: base.part, faces }] }), base.pieces, PLAN.leaves);

const placeOn = (map: LeafMap, piece: string, face: LeafPlace['face']): LeafPlace =>
  map.places.find((each) => each.piece === piece && each.face === face)!;

describe('a bookmatch cut from a board with a figure all through it', () => {
  it('makes mates mirror images, but for the wood that kerf and planing took between their faces', () => {
    fc.assert(
      fc.property(matches, (given) => {
        const map = mapOf(given);
        for (const { pieces } of map.frames.filter((frame) => frame.pieces.length === 2)) {
          for (const face of given.faces) {
            const [a, b] = pieces.map((id) => placeOn(map, id, face)) as [LeafPlace, LeafPlace];
            const [one, other] = pieces.map((id) => map.pieces.find((each) => each.id === id)!) as [
              LeafPiece,
              LeafPiece,
            ];
            const apart = depthOfShow(b, STACK) - depthOfShow(a, STACK);
            for (const difference of differences(map, a, b, mirrorOf(one, other)))
              expect(difference).toBeCloseTo(SLOPE * apart, 3);
            // One kerf, and off both faces: planing, half of what drying takes, the last planing.
            expect(Math.abs(apart)).toBeCloseTo(1.3 + 2 * (0.7 + 0.8 + 0.4), 9);
          }
        }
      }),
      { numRuns: 25 },
    );
  });

  it('names the end that lies at the marked end of the board, as one stands before the face that shows', () => {
    fc.assert(
      fc.property(matches, (given) => {
        const map = mapOf(given);
        for (const { piece: id, face, markedEnd, toBoard } of map.places) {
          const { frame, level } = map.pieces.find((each) => each.id === id)!;
          const out = face === 'face' ? frame.z : scale3(frame.z, -1);
          // Left comes out of the face crossed with up, for who looks at it.
          const named = { up: UP, down: scale3(UP, -1), left: cross3(out, UP), right: cross3(UP, out) }[
            markedEnd
          ];
          expect(level).toBe(markedEnd === 'left' || markedEnd === 'right');
          const { x, y } = { x: dot3(named, frame.x), y: dot3(named, frame.y) };
          const cos = Math.cos(toBoard.turn);
          const alongBoard = (toBoard.mirrored ? -x : x) * cos - y * Math.sin(toBoard.turn);
          expect(alongBoard).toBeLessThan(0);
        }
      }),
      { numRuns: 25 },
    );
  });

  it('makes both end frames agree', () => {
    for (const { part, pieces } of maps) {
      const map = leafMap(matchOf(part), pieces, PLAN.leaves);
      const [first, second] = map.frames;
      if (second === undefined) continue;
      for (const id of first!.pieces) {
        const a = placeOn(map, id, 'face');
        const one = map.pieces.find((each) => each.id === id)!;
        for (const otherId of second.pieces) {
          const other = map.pieces.find((each) => each.id === otherId)!;
          const isAcross =
            Math.abs(one.frame.z.x + other.frame.z.x) < 1e-9 &&
            Math.abs(one.frame.z.y - other.frame.z.y) < 1e-9;
          if (!isAcross || Math.abs(one.frame.origin.y - other.frame.origin.y) > 1e-6) continue;
          const b = placeOn(map, otherId, 'face');
          const apart = depthOfShow(b, STACK) - depthOfShow(a, STACK);
          for (const difference of differences(map, a, b, 'x'))
            expect(difference).toBeCloseTo(SLOPE * apart, 3);
        }
      }
    }
  });

  it('says by how much each match drifts', () => {
    for (const { part, pieces } of maps) {
      const map = leafMap(matchOf(part), pieces, PLAN.leaves);
      for (const { kind, a, b, apart, mostApart } of matchDrift(map, STACK)) {
        expect(apart).toBeCloseTo(Math.abs(depthOfShow(a, STACK) - depthOfShow(b, STACK)), 9);
        if (kind === 'mates') expect(mostApart! - apart!).toBeCloseTo(2 * PLAN.drift, 9);
      }
    }
  });

  it('has nothing found fault with, and any one leaf turned wrong is found', () => {
    const say = lengthWords();
    const wrongs = ['over', 'round', 'both'] as const;
    fc.assert(
      fc.property(matches, fc.constantFrom(...wrongs), fc.nat(), (given, wrong, pick) => {
        const map = mapOf(given);
        expect(checkLeaves(map, STACK, say)).toEqual([]);
        const frame = map.frames.find(({ pieces }) => pieces.length === 2);
        fc.pre(frame !== undefined);
        const piece = frame!.pieces[pick % 2]!;
        const turned = leavesByHand(
          map,
          map.places.map((place) => {
            const isIt = place.piece === piece && place.face === 'face';
            const over = isIt && wrong !== 'round';
            const round = isIt && wrong !== 'over';
            return {
              ...place,
              board: place.board!,
              shows: over ? (place.shows === 'upper' ? 'lower' : 'upper') : place.shows,
              markedEnd: round ? OPPOSITE[place.markedEnd] : place.markedEnd,
            };
          }),
        );
        const found = checkLeaves(turned, STACK, say);
        expect(found.map(({ code }) => code)).toContain('wood.leaf-turned');
        const [a, b] = frame!.pieces.map((id) => placeOn(turned, id, 'face')) as [LeafPlace, LeafPlace];
        const [one, other] = frame!.pieces.map((id) => turned.pieces.find((each) => each.id === id)!) as [
          LeafPiece,
          LeafPiece,
        ];
        const drift = SLOPE * (depthOfShow(b, STACK) - depthOfShow(a, STACK));
        const off = differences(turned, a, b, mirrorOf(one, other)).map((each) => Math.abs(each - drift));
        // Where the leaf is right this is nothing at all.
        expect(Math.max(...off)).toBeGreaterThan(0.2);
      }),
      { numRuns: 30 },
    );
  });
});

const OPPOSITE = { up: 'down', down: 'up', left: 'right', right: 'left' } as const;
