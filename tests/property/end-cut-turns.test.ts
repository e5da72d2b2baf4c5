import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Blank,
  type CutPlane,
  type Laid,
  mirrorBlank,
  mirroredCut,
  mirrorPlane,
  type NextCut,
  nextCut,
  type SawRange,
  sawnCut,
  waysToSaw,
} from '../../src/base/end-cut/index.ts';
import {
  aboutX,
  aboutY,
  aboutZ,
  apply,
  bladeOf,
  blanks,
  DEGREE,
  endPlanes,
  outOfParallel,
  place,
  type Turn,
} from './end-cut-bench.ts';

/** Sine of the least angle that a saw can be set to. */
const SAME = Math.sin(0.08 * DEGREE);

/** Each move, as what is done with the part on the saw. */
const DONE: Readonly<Record<string, Turn>> = {
  slide: aboutZ(0),
  'end-for-end': aboutZ(Math.PI),
  over: aboutY(Math.PI),
  roll: aboutX(Math.PI),
};

/** Second cuts related to a first as those of real parts are, and some that are not. */
const seconds = fc.constantFrom<(plane: CutPlane) => CutPlane>(
  ({ normal: m, point }) => ({ normal: { x: -m.x, y: -m.y, z: -m.z }, point }),
  ({ normal: m, point }) => ({ normal: { x: m.x, y: -m.y, z: m.z }, point }),
  ({ normal: m, point }) => ({ normal: { x: -m.x, y: -m.y, z: m.z }, point }),
  ({ normal: m, point }) => ({ normal: { x: m.x, y: -m.y, z: -m.z }, point }),
  ({ normal: m, point }) => ({ normal: { x: -m.x, y: m.y, z: m.z }, point }),
  ({ point }) => ({ normal: { x: 0.2, y: -0.97, z: Math.sqrt(1 - 0.04 - 0.97 ** 2) }, point }),
);

function firstOf(plane: CutPlane, blank: Blank): Laid {
  const cut = sawnCut(plane, blank);
  if (cut.kind !== 'end') throw new Error(`${cut.kind} instead of an end cut`);
  return cut.onBack;
}

/** That a second cut is made as said, by moving the part on the saw; `asIs` puts it as it lay for the first. */
function expectMade(first: Laid, next: NextCut, plane: CutPlane, blank: Blank, asIs: Laid['lay']): void {
  const lies = place(next.laid.lay)(plane.normal);
  const works = (done: Turn): boolean =>
    outOfParallel(apply(done, place(asIs)(plane.normal)), bladeOf(first.setting)) < SAME;
  if (next.kind === 'turn') {
    // The saw stays as it was, and only the move that is named brings the work there.
    expect(outOfParallel(lies, bladeOf(first.setting))).toBeLessThan(SAME);
    const moved = apply(DONE[next.move]!, place(asIs)(plane.normal));
    expect(Math.hypot(moved.x - lies.x, moved.y - lies.y, moved.z - lies.z)).toBeLessThan(1e-12);
    expect(next.stopMoves).toBe(next.laid.waste !== first.waste);
    if (blank.faceUp) expect(next.laid.lay.down).toBe('back');
    if (blank.straight !== 'both') expect(next.laid.lay.fence).toBe(blank.straight);
    return;
  }
  // The work stays as it was, and the saw alone makes the cut.
  expect(next.laid.lay).toEqual(asIs);
  expect(outOfParallel(lies, bladeOf(next.laid.setting))).toBeLessThan(1e-12);
  const allowed = {
    slide: asIs.fence === blank.straight || blank.straight === 'both',
    'end-for-end': blank.straight === 'both',
    over: !blank.faceUp && (blank.straight === 'both' || asIs.fence === blank.straight),
    roll: !blank.faceUp && blank.straight === 'both',
  };
  for (const [move, can] of Object.entries(allowed)) if (can) expect(works(DONE[move]!), move).toBe(false);
  if (next.kind === 'mirror') {
    const { swing, tilt } = first.setting;
    expect(next.laid.setting.swing).toBeCloseTo(next.swing ? -swing : swing, 2);
    expect(next.laid.setting.tilt).toBeCloseTo(next.tilt ? -tilt : tilt, 2);
  }
}

/** With its straight edge the face edge, as marking-out has it. */
const marked = blanks.map((blank): Blank => {
  const { straight } = blank;
  return straight === 'both' || straight === undefined ? blank : { ...blank, faceEdge: straight };
});

/** Angles near the least that a saw can be set to are neither same nor different for certain. */
function isClear({ normal: m }: CutPlane): boolean {
  return [m.x, m.z].every((v) => Math.abs(v) < 1e-9 || Math.abs(v) > 0.01);
}

describe('the next cut', () => {
  it('turns the work or swings the saw, never both, and turns it wherever that does', () => {
    fc.assert(
      fc.property(endPlanes.filter(isClear), marked, seconds, (plane, blank, second) => {
        const first = firstOf(plane, blank);
        const other = second(plane);
        expectMade(first, nextCut(first, other, blank), other, blank, first.lay);
      }),
      { numRuns: 400 },
    );
  });

  it('of the mirrored part likewise', () => {
    fc.assert(
      fc.property(endPlanes.filter(isClear), marked, (plane, blank) => {
        const first = firstOf(plane, blank);
        const next = mirroredCut(first, plane, blank);
        const mirrored = mirrorBlank(blank);
        const fence = first.lay.fence === 'left' ? 'right' : 'left';
        expectMade(first, next, mirrorPlane(plane), mirrored, { down: 'back', fence });
        // A free part is always turned: rolled over it shows the first part's own setting.
        if (blank.straight === 'both' && !blank.faceUp) expect(next.kind).toBe('turn');
        if (next.kind !== 'turn') expect(next.kind).toBe('mirror');
      }),
    );
  });
});

const ranges: fc.Arbitrary<SawRange> = fc
  .tuple(
    fc.integer({ min: 20, max: 60 }),
    fc.integer({ min: 20, max: 60 }),
    fc.integer({ min: 0, max: 48 }),
    fc.integer({ min: 0, max: 48 }),
  )
  .map(([a, b, c, d]) => ({
    swing: { left: a * DEGREE, right: b * DEGREE },
    tilt: { left: c * DEGREE, right: d * DEGREE },
  }));

describe('ways to saw on a saw of limited range', () => {
  it('hold the work so that the cut lies on the blade, within the range', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(endPlanes, marked, ranges, (plane, blank, saw) => {
        for (const way of waysToSaw(plane, blank, saw)) {
          seen.add(way.kind);
          const { swing, tilt } = way.setting;
          expect(swing).toBeGreaterThan(-saw.swing.left - 1e-8);
          expect(swing).toBeLessThan(saw.swing.right + 1e-8);
          expect(tilt).toBeGreaterThan(-saw.tilt.left - 1e-8);
          expect(tilt).toBeLessThan(saw.tilt.right + 1e-8);
          const done =
            way.turned === undefined
              ? aboutZ(0)
              : (way.turned.about === 'upright' ? aboutZ : aboutY)(way.turned.angle);
          const held = apply(done, place(way.lay)(plane.normal));
          expect(outOfParallel(held, bladeOf(way.setting))).toBeLessThan(1e-9);
          expectHeldAsSaid(way, { saw, done, wasteY: held.y });
        }
      }),
      { numRuns: 1000 },
    );
    expect([...seen].sort()).toEqual(['direct', 'square-fence', 'wedge-at-fence', 'wedge-under']);
  });
});

/** That a wedge is thick where it is said to be, and that the sawn end points to the fence at a square fence. */
function expectHeldAsSaid(
  way: ReturnType<typeof waysToSaw>[number],
  { saw, done, wasteY }: { readonly saw: SawRange; readonly done: Turn; readonly wasteY: number },
): void {
  const right = apply(done, { x: 1, y: 0, z: 0 });
  const thick = way.wedge?.to === 'right' ? 1 : -1;
  // A wedge at the fence pushes the work's thick end towards the sawyer, one under the work lifts it.
  if (way.kind === 'wedge-at-fence') expect(Math.sign(-right.y)).toBe(thick);
  if (way.kind === 'wedge-under') expect(Math.sign(right.z)).toBe(thick);
  if (way.wedge !== undefined) expect(way.wedge.fromSquare).toBeLessThanOrEqual(20 * DEGREE + 1e-12);
  // A wedge takes no more than what the saw lacks: the saw stands at the end of its range.
  const { swing, tilt } = way.setting;
  if (way.kind === 'wedge-at-fence') expect(toEnd(swing, saw.swing)).toBeLessThan(1e-9);
  if (way.kind === 'wedge-under') expect(toEnd(tilt, saw.tilt)).toBeLessThan(1e-9);
  if (way.kind === 'square-fence') expect(wasteY).toBeGreaterThan(0);
}

/** How far a setting is from the nearer end of its range. */
function toEnd(at: number, { left, right }: SawRange['swing']): number {
  return Math.min(Math.abs(at - right), Math.abs(at + left));
}
