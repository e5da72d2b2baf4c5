/**
 * Offsets and booleans beside general-purpose polygon libraries in one run, the kernel built as it ships, everything warmed up. The
 * libraries know no arcs and get chords within 0.001 mm; making the chords is not counted. Times are milliseconds of processor time,
 * whatever else the machine does; `min` is the best of all runs. LEGWRIGHT_BENCH=large adds outlines of up to 100,000 edges (half an hour, nearly all the peer's).
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
import { printLargeOutlines } from './large-outlines.ts';

const { intersectRegions, offsetRegions, subtractRegions, transformRegion, uniteRegions } =
  await builtKernel();
const CHORD = 1e-3;
const OFFSETS = [1.5875, -1.5875, 6.35, -6.35, 19.05, -19.05];
/** For what knows no offset. */
const ONCE = [0];
const clipper = await loadClipper2();

function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

const short = { time: 400, warmupTime: 200, now: processorTime };

const legs = ['tapered leg with rounds', 'knee leg', 'curved leg', 'panel leg with window'].flatMap(
  (family) => [1, 2, 3, 4].map((seed) => FURNITURE[family]!(randomFrom(seed))),
);
const chorded = legs.map((leg) => chordedLoops(leg, CHORD));
const paths = chorded.map((loops) => wasmPaths(clipper, loops));
const shapes = legs.map((leg) => shapeOf(leg, CHORD));

/** All legs by all offsets in one call: one by one they are too short for the clock. */
function eachLeg(run: (leg: number, by: number) => void, offsets: readonly number[] = OFFSETS): () => void {
  return () => {
    for (const by of offsets) for (let leg = 0; leg < legs.length; leg++) run(leg, by);
  };
}

describe(`${legs.length * OFFSETS.length} offsets of leg outlines, round joins`, () => {
  bench(
    'legwright',
    eachLeg((leg, by) => void offsetRegions(legs[leg]!, by)),
    short,
  );
  bench(
    'clipper2-wasm',
    eachLeg((leg, by) => offsetWithWasm(clipper, paths[leg]!, by, CHORD).delete()),
    short,
  );
  bench(
    'clipper2-ts',
    eachLeg((leg, by) => void offsetWithClipper(chorded[leg]!, by, CHORD)),
    short,
  );
  bench(
    'jsts',
    eachLeg((leg, by) => void offsetWithJsts(shapes[leg]!, by, CHORD)),
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
  describe(`${name} of two leg outlines, ${legs.length} pairs by turns`, () => {
    bench(
      'legwright',
      eachLeg((k) => void ours(legs[k]!, moved[(k + 1) % moved.length]!), ONCE),
      short,
    );
    bench(
      'clipper2-wasm',
      eachLeg(
        (k) => combineWithWasm(clipper, wasm, paths[k]!, movedPaths[(k + 1) % moved.length]!).delete(),
        ONCE,
      ),
      short,
    );
    bench(
      'clipper2-ts',
      eachLeg((k) => void combineWithClipper(ts, chorded[k]!, movedChorded[(k + 1) % moved.length]!), ONCE),
      short,
    );
    bench(
      'jsts',
      eachLeg((k) => void combineWithJsts(jts, shapes[k]!, movedShapes[(k + 1) % moved.length]!), ONCE),
      short,
    );
  });
}

const FAMILIES = [
  'comb',
  'gear',
  'noise',
  'near-tangent arcs',
  'star',
  'random ring',
  'near-tangent rounds',
  'nested holes',
];
const steady = { time: 400, iterations: 3, warmupTime: 300, warmupIterations: 2, now: processorTime };

for (const family of FAMILIES) {
  const regions = ADVERSARIAL[family]!(randomFrom(7), 1_000);
  const theirs = wasmPaths(clipper, chordedLoops(regions, CHORD));
  describe(`${family} of 1,000 edges, 2 mm inwards`, () => {
    bench('legwright', () => void offsetRegions(regions, -2), steady);
    bench('clipper2-wasm', () => offsetWithWasm(clipper, theirs, -2, CHORD).delete(), steady);
  });
}

// The peer may never come to an end with these (spirals among them), so that it has a process of its own.
if (process.env.LEGWRIGHT_BENCH === 'large') await printLargeOutlines();
