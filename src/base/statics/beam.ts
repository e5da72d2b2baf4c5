import { solveLinear } from './solve-linear.ts';

/** What holds a beam up, mm from its start: `rest` carries it and lets it turn, `fixed` holds it from turning too. */
export interface BeamSupport {
  readonly at: number;
  readonly kind: 'rest' | 'fixed';
}

/** A load pressing down: N at a place, or N/mm over a stretch (mm from the beam's start). */
export type BeamLoad =
  | { readonly kind: 'point'; readonly at: number; readonly force: number }
  | { readonly kind: 'spread'; readonly from: number; readonly to: number; readonly perLength: number };

export interface Beam {
  /** mm. */
  readonly length: number;
  readonly supports: readonly BeamSupport[];
  readonly loads: readonly BeamLoad[];
  /** Modulus of elasticity times second moment of area, N·mm². */
  readonly stiffness: number;
}

/** A beam that is bent. */
export interface BentBeam {
  /** N upwards at each support, in their order; negative where the beam must be held down. */
  readonly reactions: readonly number[];
  /** Places where its curve changes its law: ends, supports and loads, in order, mm. */
  readonly breaks: readonly number[];
  /** How far it lies below its supports at a place, mm; negative where it rises. */
  readonly sagAt: (x: number) => number;
  /** Slope of that, downwards positive. */
  readonly slopeAt: (x: number) => number;
  /**
   * Bending moment at a place, N·mm, positive where it hollows the beam upwards. At a fixed support it jumps: `near` is a place
   * on the side that is meant.
   */
  readonly momentAt: (x: number, near?: number) => number;
}

/** A term of the curve: coefficient · ⟨x − from⟩ to a power, where ⟨ ⟩ is 0 for a negative argument. */
interface Term {
  readonly from: number;
  readonly power: 2 | 3 | 4;
  readonly coefficient: number;
}

/**
 * Bends a straight beam of one section on any number of supports: EI d'''' = q with Macaulay's brackets, the reactions and the two
 * constants from d = 0 at every support, d' = 0 at every fixed one, and no shear or moment past the end. Plane sections, small
 * slopes, no deflection by shear. Nothing when the supports do not hold it (fewer than two, and none of them fixed, or two in one place).
 */
export function bendBeam({ length, supports, loads, stiffness }: Beam): BentBeam | undefined {
  if (!(length > 0 && stiffness > 0)) throw new RangeError('a beam has a length and a stiffness');
  const at = supports.map((support) => support.at / length);
  const fixed = supports.flatMap((support, i) => (support.kind === 'fixed' ? [at[i]!] : []));
  // Everything in lengths of the beam and in N, so that no row of the system outweighs another.
  const given = loads.flatMap((load) => termsOf(load, length));
  const unknown: readonly Term[] = [
    ...at.map((from): Term => ({ from, power: 3, coefficient: -1 / 6 })),
    ...fixed.map((from): Term => ({ from, power: 2, coefficient: 1 / 2 })),
  ];
  const rows: number[][] = [];
  const right: number[] = [];
  const condition = (derivative: number, x: number, line: readonly [number, number]): void => {
    rows.push([...unknown.map((term) => termAt(term, x, derivative)), ...line]);
    right.push(-given.reduce((sum, term) => sum + termAt(term, x, derivative), 0));
  };
  for (const x of at) condition(0, x, [x, 1]);
  for (const x of fixed) condition(1, x, [1, 0]);
  // Past the end: beyond it by half a length, every bracket is open.
  condition(2, 1.5, [0, 0]);
  condition(3, 1.5, [0, 0]);
  const found = solveLinear(rows, right);
  if (found === undefined) return undefined;
  const terms = [
    ...given,
    ...unknown.map((term, i) => ({ ...term, coefficient: term.coefficient * found[i]! })),
  ];
  const [slope, shift] = found.slice(unknown.length) as [number, number];
  const sum = (x: number, derivative: number, near = x): number =>
    terms.reduce((total, term) => total + (term.from <= near ? termAt(term, x, derivative, true) : 0), 0);
  const breaks = [0, length, ...supports.map((support) => support.at), ...loads.flatMap(placesOf)];
  return {
    reactions: found.slice(0, at.length),
    breaks: [...new Set(breaks)].sort((a, b) => a - b),
    sagAt: (x) => ((sum(x / length, 0) + (slope * x) / length + shift) * length ** 3) / stiffness,
    slopeAt: (x) => ((sum(x / length, 1) + slope) * length ** 2) / stiffness,
    momentAt: (x, near = x) => -sum(x / length, 2, near / length) * length,
  };
}

function termsOf(load: BeamLoad, length: number): Term[] {
  if (load.kind === 'point') return [{ from: load.at / length, power: 3, coefficient: load.force / 6 }];
  const coefficient = (load.perLength * length) / 24;
  return [
    { from: load.from / length, power: 4, coefficient },
    { from: load.to / length, power: 4, coefficient: -coefficient },
  ];
}

const placesOf = (load: BeamLoad): number[] => (load.kind === 'point' ? [load.at] : [load.from, load.to]);

/** A derivative of a term at x. `open`: whatever the sign of what stands in the bracket. */
function termAt({ from, power, coefficient }: Term, x: number, derivative: number, open = false): number {
  const inside = x - from;
  if (!open && inside < 0) return 0;
  let factor = coefficient;
  for (let k = 0; k < derivative; k++) factor *= power - k;
  if (factor === 0) return 0;
  return factor * inside ** (power - derivative);
}
