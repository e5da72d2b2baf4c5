import { offsetRegions } from '../../src/geometry/index.ts';
import { ADVERSARIAL, GROWING } from '../cases/outlines/adversarial.ts';
import { randomFrom } from '../cases/outlines/random.ts';
import { chordedLoops } from '../reference/peers/chords.ts';
import { loadClipper2, offsetWithWasm, wasmPaths } from '../reference/peers/with-clipper2-wasm.ts';

/** Chords that the peer gets for arcs, mm. */
const CHORD = 1e-3;
const BY = -2;
/** Runs at least, so that Node has compiled the kernel however busy the machine is: so many of a thousand edges, six of a hundred thousand. */
const leastRuns = (size: number): number => Math.max(6, Math.round(200_000 / size));

/**
 * Best and middle time, ms of processor time, of offsetting one outline 2 mm inwards again and again for at least so long; and the edges
 * of source and result. Bundled and run in a process of its own, so that nothing measured before counts and the peer can be stopped.
 */
export async function timeOffset(who: string, family: string, size: number, ms: number): Promise<object> {
  const draw = ADVERSARIAL[family] ?? GROWING[family]!;
  const regions = draw(randomFrom(7), size);
  const edges = edgesOf(regions);
  if (who === 'legwright') {
    const result = edgesOf(offsetRegions(regions, BY));
    return { ...timesOf(() => void offsetRegions(regions, BY), ms, leastRuns(size)), edges, result };
  }
  const clipper = await loadClipper2();
  const paths = wasmPaths(clipper, chordedLoops(regions, CHORD));
  return { ...timesOf(() => offsetWithWasm(clipper, paths, BY, CHORD).delete(), ms, 1), edges };
}

function timesOf(run: () => void, ms: number, least: number): { best: number; middle: number } {
  const times: number[] = [];
  const until = performance.now() + ms;
  while (times.length < least || performance.now() < until) {
    const from = processorTime();
    run();
    times.push(processorTime() - from);
  }
  times.sort((a, b) => a - b);
  return { best: times[0]!, middle: times[times.length >> 1]! };
}

function processorTime(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

function edgesOf(regions: ReturnType<typeof offsetRegions>): number {
  let count = 0;
  for (const { outer, holes } of regions) for (const { edges } of [outer, ...holes]) count += edges.length;
  return count;
}
