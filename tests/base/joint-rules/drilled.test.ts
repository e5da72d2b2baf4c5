import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type DrilledHole,
  holeDistance,
  holeOfPlace,
  surelyLeave,
  wallsLeft,
} from '../../../src/base/joint-rules/index.ts';
import {
  add3,
  cross3,
  distance3,
  dot3,
  length3,
  nearestOnEdges,
  planeThrough,
  polygonOutline,
  type Region,
  scale3,
  slotOutline,
  subtract3,
  unit3,
  type Vec3,
  vec3,
  WORLD,
} from '../../../src/geometry/index.ts';

const TAGS = ['bottom', 'right', 'top', 'left'].map((id) => ({ id, role: 'left' as const }));
/** A leg 60 wide, 700 long and 40 thick. */
const LEG = {
  outline: [
    {
      outer: polygonOutline(
        [
          { x: 0, y: 0 },
          { x: 60, y: 0 },
          { x: 60, y: 700 },
          { x: 0, y: 700 },
        ],
        TAGS,
      ),
      holes: [],
    },
  ] as readonly Region[],
  thickness: 40,
  cuts: [],
};
/** An outline far away from everything. */
const WIDE = polygonOutline(
  [
    { x: -300, y: -300 },
    { x: 300, y: -300 },
    { x: 300, y: 300 },
    { x: -300, y: 300 },
  ],
  TAGS,
);
const hole = (at: Vec3, along: Vec3, depth: number, radius: number, slot?: Vec3): DrilledHole => ({
  at,
  along: unit3(along),
  depth,
  radius,
  ...(slot === undefined ? {} : { slot }),
});

describe('wood left round a hole', () => {
  test('bored into an edge: to face and back beside it, to the far edge behind it', () => {
    const { around, bottom } = wallsLeft(hole(vec3(60, 650, -15), vec3(-1, 0, 0), 40, 5), LEG);
    expect(around).toMatchObject({ on: 'face', wood: expect.closeTo(10, 9) });
    expect(bottom).toMatchObject({ on: 'left', wood: expect.closeTo(20, 9) });
    expect(bottom!.at.x).toBeCloseTo(0, 9);
  });

  test('a slot near the head of a leg: its near end counts', () => {
    const slot = hole(vec3(60, 670, -20), vec3(-1, 0, 0), 30, 4, vec3(0, 15, 0));
    expect(wallsLeft(slot, LEG).around).toMatchObject({ on: 'top', wood: expect.closeTo(30 - 15 - 4, 6) });
  });

  test('bored into the face: the back behind its flat bottom', () => {
    const { around, bottom } = wallsLeft(hole(vec3(30, 300, 0), vec3(0, 0, -1), 33, 6), LEG);
    expect(bottom).toEqual({
      on: 'back',
      wood: expect.closeTo(7, 9),
      at: expect.objectContaining({ z: -40 }),
    });
    expect(around.wood).toBeCloseTo(7, 9);
    const side = wallsLeft(hole(vec3(12, 300, 0), vec3(0, 0, -1), 20, 6), LEG).around;
    expect(side).toMatchObject({ on: 'left', wood: expect.closeTo(6, 3) });
  });

  test('a line that is square to a surface but for rounding leaves as much as one that is', () => {
    const straight = { at: vec3(30, 300, 0), along: vec3(0, 0, -1), depth: 33, radius: 6 };
    for (const along of [
      vec3(0, 0, -1 - 2 ** -52),
      vec3(2 ** -53, 0, -1),
      vec3(0, -(2 ** -54), -1 + 2 ** -53),
    ]) {
      const { around, bottom } = wallsLeft({ ...straight, along }, LEG);
      expect(bottom!.wood).toBeCloseTo(7, 9);
      expect(around.wood).toBeCloseTo(7, 9);
    }
  });

  test('measured along a slanting line, the wood behind a bottom is what the line still has to go', () => {
    // 30° towards the back: the lower rim of the bottom comes out first.
    const slant = hole(vec3(60, 300, -10), vec3(-Math.cos(Math.PI / 6), 0, -Math.sin(Math.PI / 6)), 30, 5);
    const { bottom, around } = wallsLeft(slant, LEG);
    const deepest = 10 + 30 * Math.sin(Math.PI / 6) + 5 * Math.cos(Math.PI / 6);
    expect(bottom).toMatchObject({
      on: 'back',
      wood: expect.closeTo((40 - deepest) / Math.sin(Math.PI / 6), 6),
    });
    // The mouth's own upper rim is nearest to the face.
    expect(around).toMatchObject({ on: 'face', wood: expect.closeTo(10 - 5 * Math.cos(Math.PI / 6), 6) });
  });

  test('a cut plane bounds the wood, and bears the mouth when it is the joint itself', () => {
    const head = { name: 'head', plane: planeThrough(vec3(30, 680, -20), vec3(0.1, 1, 0.2)) };
    const leg = { ...LEG, cuts: [head] };
    const near = wallsLeft(hole(vec3(60, 660, -20), vec3(-1, 0, 0), 30, 5), leg).around;
    expect(near.on).toBe('head');
    // Nearest at the mouth's rim, worked by moments of the plane: its normal n, along −x.
    const n = head.plane.normal;
    const rim = dot3(n, vec3(60, 660, -20)) + 5 * Math.sqrt(1 - n.x ** 2);
    expect(near.wood).toBeCloseTo(head.plane.offset - rim, 9);
    const at = vec3(30, 680, -20);
    const endwise = wallsLeft(hole(at, scale3(n, -1), 50, 5), leg);
    expect(endwise.around.on).not.toBe('head');
    expect(endwise.bottom!.on).not.toBe('head');
  });

  test('one that breaks out has less than nothing', () => {
    const through = wallsLeft(hole(vec3(60, 300, -20), vec3(-1, 0, 0), 63, 5), LEG);
    expect(through.bottom!.wood).toBeCloseTo(-3, 6);
    expect(through.around.wood).toBeCloseTo(-3, 6);
    const aside = wallsLeft(hole(vec3(60, 300, -3), vec3(-1, 0, 0), 20, 5), LEG);
    expect(aside.around).toMatchObject({ on: 'face', wood: expect.closeTo(-2, 9) });
    const edgeways = wallsLeft(hole(vec3(3, 300, 0), vec3(0, 0, -1), 20, 5), LEG);
    expect(edgeways.around.on).toBe('left');
    expect(edgeways.around.wood).toBeCloseTo(-2, 3);
  });

  test('the belly of a hollow edge is met between its ends', () => {
    const round = slotOutline({ x: 50, y: 100 }, { x: 50, y: 100 }, 30, { id: 'hollow', role: 'routed' }, -1);
    const [region] = LEG.outline;
    const part = { ...LEG, outline: [{ outer: region!.outer, holes: [round] }] };
    // A slot that slants past the round opening: its flat side before the belly.
    const way = unit3(vec3(0.2, 1, 0));
    const slot = hole(vec3(10, 100, 0), vec3(0, 0, -1), 20, 4, scale3(way, 45));
    const wood = length3(cross3(vec3(40, 0, 0), way)) - 30 - 4;
    expect(
      wallsLeft(slot, { ...part, outline: [{ ...part.outline[0]!, outer: WIDE }] }).around,
    ).toMatchObject({
      wood: expect.closeTo(wood, 7),
      on: 'hollow',
    });
  });

  test('is what many points of the hole say', () => {
    const share = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(
        share,
        share,
        share,
        share,
        fc.integer({ min: 2, max: 8 }),
        fc.boolean(),
        (a, b, c, d, radius, isSlot) => {
          const at = vec3(60, 350 + 300 * a, -20 + 15 * b);
          const along = unit3(vec3(-1, 0.8 * c, 0.5 * d));
          const slot = isSlot ? scale3(unit3(cross3(along, vec3(0, 0, 1))), 12) : undefined;
          const bored = hole(at, along, 35, radius, slot);
          const { around } = wallsLeft(bored, LEG);
          const outer = LEG.outline[0]!.outer.edges.filter(({ tag }) => tag.id !== 'right');
          let least = Infinity;
          for (const p of surfaceOf(bored)) {
            const inside = p.x >= 0 && p.y >= 0 && p.y <= 700 ? 1 : -1;
            least = Math.min(least, -p.z, p.z + 40, inside * nearestOnEdges(outer, p).distance);
          }
          expect(around.wood).toBeLessThanOrEqual(least + 1e-3);
          expect(around.wood).toBeGreaterThan(least - 0.05);
        },
      ),
    );
  });
});

/** Points all over a hole: rims of mouth and bottom, and lines between. */
function surfaceOf({ at, along, depth, radius, slot }: DrilledHole, steps = 180): Vec3[] {
  const u = unit3(cross3(along, Math.abs(along.z) < 0.9 ? vec3(0, 0, 1) : vec3(1, 0, 0)));
  const v = cross3(along, u);
  const points: Vec3[] = [];
  for (let k = 0; k < steps; k++) {
    const turn = (k * 2 * Math.PI) / steps;
    const aside = add3(scale3(u, radius * Math.cos(turn)), scale3(v, radius * Math.sin(turn)));
    for (const s of [0, 0.25, 0.5, 0.75, 1]) {
      const p = add3(at, add3(scale3(along, depth * s), aside));
      if (slot === undefined) points.push(p);
      else points.push(add3(p, slot), subtract3(p, slot));
    }
  }
  return points;
}

describe('wood between two holes', () => {
  const DOWN = vec3(0, 0, -1);
  test('side by side: between their centres less both radii', () => {
    const { distance, on } = holeDistance(
      hole(vec3(0, 0, 0), DOWN, 20, 4),
      hole(vec3(20, 0, 0), DOWN, 30, 5),
    );
    expect(distance).toBeCloseTo(11, 6);
    expect(on[0].x).toBeCloseTo(4, 3);
    expect(on[1].x).toBeCloseTo(15, 3);
  });

  test('bottom to bottom: what is between the flat bottoms', () => {
    const a = hole(vec3(0, 0, 0), DOWN, 15, 5);
    expect(holeDistance(a, hole(vec3(0, 0, -40), vec3(0, 0, 1), 18, 5)).distance).toBeCloseTo(7, 6);
  });

  test('two tenons meeting in a leg at right angles', () => {
    // From the front face 25 deep, from the side 30 deep, 8 thick: the bottom of one before the flank of the other.
    const front = hole(vec3(30, 0, 30), vec3(0, 1, 0), 25, 4, vec3(0, 0, 12));
    const side = hole(vec3(60, 35, 30), vec3(-1, 0, 0), 40, 4, vec3(0, 0, 12));
    expect(holeDistance(front, side).distance).toBeCloseTo(35 - 4 - 25, 6);
    const deeper = { ...front, depth: 33 };
    expect(holeDistance(deeper, side).distance).toBe(0);
  });

  test('crossing at a distance: between the lines less both radii', () => {
    const a = hole(vec3(-50, 0, 0), vec3(1, 0, 0), 100, 4);
    const b = hole(vec3(0, -50, 15), vec3(0, 1, 0), 100, 6);
    expect(holeDistance(a, b).distance).toBeCloseTo(5, 6);
  });

  const share = fc.double({ min: -1, max: 1, noNaN: true });
  const bored = fc
    .tuple(share, share, share, share, share, share, fc.boolean())
    .map(([x, y, z, dx, dy, dz, isSlot]) => {
      const way = vec3(dx, dy, dz + 1.5);
      const along = unit3(way);
      const slot = isSlot ? scale3(unit3(cross3(along, vec3(0.3, 1, 0))), 10) : undefined;
      return hole(vec3(40 * x, 40 * y, 40 * z), way, 25 + 10 * x, 4 + 2 * y, slot);
    });

  test('what surely is between them is there, and most that are apart are told from a plane', () => {
    let [apart, told] = [0, 0];
    fc.assert(
      fc.property(bored, bored, fc.double({ min: 0.5, max: 15, noNaN: true }), (a, b, wood) => {
        const { distance } = holeDistance(a, b);
        const isTold = surelyLeave(a, b, wood);
        if (isTold) expect(distance).toBeGreaterThan(wood - 1e-5);
        if (distance >= wood) apart++;
        if (isTold) told++;
      }),
      { numRuns: 400 },
    );
    expect(told).toBeGreaterThan(apart / 2);
  });

  test('is the same both ways, and no point of one is nearer to the other', () => {
    fc.assert(
      fc.property(bored, bored, (a, b) => {
        const there = holeDistance(a, b);
        expect(holeDistance(b, a).distance).toBeCloseTo(there.distance, 5);
        if (there.distance === 0) return;
        expect(distance3(there.on[0], there.on[1])).toBeCloseTo(there.distance, 5);
        expect(isWithin(a, there.on[0])).toBe(true);
        expect(isWithin(b, there.on[1])).toBe(true);
        // A plane square to the nearest way parts the two: nothing can be nearer.
        const way = unit3(subtract3(there.on[1], there.on[0]));
        for (const p of surfaceOf(a, 60)) expect(dot3(subtract3(p, there.on[0]), way)).toBeLessThan(1e-3);
        for (const p of surfaceOf(b, 60)) expect(dot3(subtract3(p, there.on[1]), way)).toBeGreaterThan(-1e-3);
      }),
      { numRuns: 200 },
    );
  });
});

function isWithin({ at, along, depth, radius, slot }: DrilledHole, p: Vec3): boolean {
  const way = subtract3(p, at);
  const deep = dot3(way, along);
  const aside = subtract3(way, scale3(along, deep));
  const share = slot === undefined ? 0 : Math.max(-1, Math.min(1, dot3(aside, slot) / dot3(slot, slot)));
  const off = length3(slot === undefined ? aside : subtract3(aside, scale3(slot, share)));
  return deep > -1e-4 && deep < depth + 1e-4 && off < radius + 1e-4;
}

test('the hole of a place goes both ways from the joint', () => {
  const place = { from: { x: 5, y: 2 }, to: { x: 25, y: 2 }, radius: 4 };
  const first = holeOfPlace(place, WORLD, 20, 'first');
  expect(first).toEqual({
    at: vec3(15, 2, 0),
    along: vec3(0, 0, 1),
    depth: 20,
    radius: 4,
    slot: vec3(10, 0, 0),
  });
  expect(holeOfPlace(place, WORLD, 30, 'second').along.z).toBe(-1);
  expect(holeOfPlace({ ...place, to: place.from }, WORLD, 30, 'second').slot).toBeUndefined();
});
