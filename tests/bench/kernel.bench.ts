/**
 * Offsets and booleans beside general-purpose polygon libraries in one run, the kernel built as it ships, everything warmed up. The
 * libraries know no arcs and get chords within 0.001 mm; making the chords is not counted. `npm run bench` prints how many times
 * faster than the slowest each is. LEGWRIGHT_BENCH=large adds outlines of 10,000 and 100,000 edges (many minutes, nearly all the peer's).
 */
import { bench, describe } from 'vitest';
import type { Region } from '../../src/geometry/index.ts';
import { ADVERSARIAL } from '../cases/outlines/adversarial.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { chordedLoops } from '../reference/peers/chords.ts';
import { combineWithClipper, offsetWithClipper } from '../reference/peers/with-clipper2-ts.ts';
import {
  combineWithWasm,
  loadClipper2,
  offsetWithWasm,
  wasmPaths,
} from '../reference/peers/with-clipper2-wasm.ts';
import { combineWithJsts, offsetWithJsts, shapeOf } from '../reference/peers/with-jsts.ts';
import { builtKernel } from './built-kernel.ts';

const { intersectRegions, offsetRegions, subtractRegions, transformRegion, uniteRegions } =
  await builtKernel();
const CHORD = 1e-3;
const OFFSETS = [1.5875, -1.5875, 6.35, -6.35, 19.05, -19.05];
const clipper = await loadClipper2();
const short = { time: 300, warmupTime: 100 };

const legs = ['tapered leg with rounds', 'knee leg', 'curved leg', 'panel leg with window'].flatMap(
  (family) => [1, 2, 3, 4].map((seed) => FURNITURE[family]!(randomFrom(seed))),
);
const chorded = legs.map((leg) => chordedLoops(leg, CHORD));
const paths = chorded.map((loops) => wasmPaths(clipper, loops));
const shapes = legs.map((leg) => shapeOf(leg, CHORD));

/** Goes through all legs and offsets, one a call. */
function inTurn(run: (leg: number, by: number) => void): () => void {
  let k = 0;
  return () => {
    run(k % legs.length, OFFSETS[Math.floor(k / legs.length) % OFFSETS.length]!);
    k++;
  };
}

describe('one offset of a leg outline, round joins', () => {
  bench(
    'legwright',
    inTurn((leg, by) => void offsetRegions(legs[leg]!, by)),
    short,
  );
  bench(
    'clipper2-wasm',
    inTurn((leg, by) => offsetWithWasm(clipper, paths[leg]!, by, CHORD).delete()),
    short,
  );
  bench(
    'clipper2-ts',
    inTurn((leg, by) => void offsetWithClipper(chorded[leg]!, by, CHORD)),
    short,
  );
  bench(
    'jsts',
    inTurn((leg, by) => void offsetWithJsts(shapes[leg]!, by, CHORD)),
    short,
  );
});

const moved = legs.map((leg): Region[] =>
  leg.map((region) =>
    transformRegion(region, { turn: 0.1, shift: { x: 5, y: 5 }, scale: 1, mirrored: false }),
  ),
);
const movedChorded = moved.map((leg) => chordedLoops(leg, CHORD));
const movedPaths = movedChorded.map((loops) => wasmPaths(clipper, loops));
const movedShapes = moved.map((leg) => shapeOf(leg, CHORD));

for (const [name, ours, wasm, ts, jts] of [
  ['union', uniteRegions, 'UnionD', 'unionD', 'union'],
  ['intersection', intersectRegions, 'IntersectD', 'intersectD', 'intersection'],
  ['difference', subtractRegions, 'DifferenceD', 'differenceD', 'difference'],
] as const) {
  describe(`${name} of two leg outlines`, () => {
    bench(
      'legwright',
      inTurn((k) => void ours(legs[k]!, moved[(k + 1) % moved.length]!)),
      short,
    );
    bench(
      'clipper2-wasm',
      inTurn((k) => combineWithWasm(clipper, wasm, paths[k]!, movedPaths[(k + 1) % moved.length]!).delete()),
      short,
    );
    bench(
      'clipper2-ts',
      inTurn((k) => void combineWithClipper(ts, chorded[k]!, movedChorded[(k + 1) % moved.length]!)),
      short,
    );
    bench(
      'jsts',
      inTurn((k) => void combineWithJsts(jts, shapes[k]!, movedShapes[(k + 1) % moved.length]!)),
      short,
    );
  });
}

const LARGE = ['comb', 'gear', 'noise', 'spiral', 'near-tangent arcs'];
const MIDDLING = ['star', 'random ring', 'near-tangent rounds', 'nested holes'];
const sizes = process.env.LEGWRIGHT_BENCH === 'large' ? [1_000, 10_000, 100_000] : [1_000];
const steady = { time: 400, iterations: 1, warmupTime: 300, warmupIterations: 1 };

for (const family of [...LARGE, ...MIDDLING]) {
  for (const size of LARGE.includes(family) ? sizes : [1_000]) {
    const regions = ADVERSARIAL[family]!(randomFrom(7), size);
    describe(`${family} of ${size} edges, 2 mm inwards`, () => {
      bench('legwright', () => void offsetRegions(regions, -2), steady);
      // Half a minute at 1,000; beyond, hours.
      if (family === 'spiral' && size > 1_000) return;
      const theirs = wasmPaths(clipper, chordedLoops(regions, CHORD));
      bench('clipper2-wasm', () => offsetWithWasm(clipper, theirs, -2, CHORD).delete(), steady);
    });
  }
}
