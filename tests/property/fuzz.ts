import { findFaults, intersectEdges, type Region, type Vec } from '../../src/geometry/index.ts';
import { ADVERSARIAL } from '../cases/outlines/adversarial.ts';
import { FURNITURE } from '../cases/outlines/furniture.ts';
import { type Random, randomFrom } from '../cases/outlines/random.ts';

/** How many outlines a fuzz test makes: LEGWRIGHT_FUZZ, or a few hundred. */
export const FUZZ_COUNT = Number(process.env.LEGWRIGHT_FUZZ ?? 300);
/** First seed of the run: LEGWRIGHT_FUZZ_SEED, or 1. */
export const FUZZ_SEED = Number(process.env.LEGWRIGHT_FUZZ_SEED ?? 1);

/** What came of a run: what is wrong with each outline at fault, and how many were judged. */
export interface Fuzzed {
  readonly failures: string[];
  readonly checked: number;
}

export interface FuzzCase {
  readonly seed: number;
  readonly family: string;
  readonly regions: Region[];
  readonly random: Random;
}

const FAMILIES = [...Object.keys(FURNITURE), ...Object.keys(ADVERSARIAL)];

/** The outline of a seed; undefined when the draw came out invalid (edges that cross), which is not what is tested. */
export function fuzzCase(seed: number): FuzzCase | undefined {
  const random = randomFrom(seed * 7919);
  const family = FAMILIES[seed % FAMILIES.length]!;
  // Now and then large enough for the trees that small outlines do without.
  const size = random.next() < 0.05 ? random.whole(80, 400) : random.whole(4, 48);
  const draw = FURNITURE[family] ?? ADVERSARIAL[family]!;
  const regions = draw(random, size);
  const sound = findFaults(regions).length === 0 && regions.every(isSharp);
  return sound ? { seed, family, regions, random } : undefined;
}

/** Judges the sound outlines of `count` seeds from `first` on, each with a word on what was done to it. */
export function judgeSeeds(
  first: number,
  count: number,
  judge: (drawn: FuzzCase) => { readonly what: string; readonly faults: readonly string[] },
): Fuzzed {
  const failures: string[] = [];
  let checked = 0;
  for (let seed = first; seed < first + count; seed++) {
    const drawn = fuzzCase(seed);
    if (drawn === undefined) continue;
    const { what, faults } = judge(drawn);
    checked++;
    if (faults.length > 0) failures.push(`seed ${seed}, ${what}: ${faults.slice(0, 3).join('; ')}`);
  }
  return { failures, checked };
}

/**
 * Do edges meet nowhere but at their joint, to the last digit? Validity allows for a nanometre, within which a draw with edges of a
 * micrometre may turn back through itself.
 */
function isSharp({ outer, holes }: Region): boolean {
  return [outer, ...holes].every(({ edges }) =>
    edges.every((edge, i) => {
      const next = edges[(i + 1) % edges.length]!;
      if (edges.length < 3) return true;
      const found = intersectEdges(edge, next, 1e-13);
      return found.kind !== 'points' || found.points.every(({ point }) => apart(point, next.from) < 1e-9);
    }),
  );
}

function apart(a: Vec, b: Vec): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** An offset that suits the outline's family: round numbers that pinch as often as any size. */
export function fuzzOffset(random: Random): number {
  const size = random.pick([
    1,
    2,
    3,
    5,
    10,
    1.5875,
    6.35,
    19.05,
    random.ratio(1e-3, 60),
    random.ratio(0.1, 30),
  ]);
  return random.next() < 0.5 ? size : -size;
}
