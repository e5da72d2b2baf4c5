import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import { type Figure, SAG_LIMITS } from '../../materials/index.ts';
import { type BeamLoad, type BeamSupport, type BentBeam, bendBeam } from './beam.ts';
import type { BeamSection } from './beam-section.ts';

/** A beam of wood. */
export interface WoodenBeam {
  /** mm. */
  readonly length: number;
  readonly supports: readonly BeamSupport[];
  readonly loads: readonly BeamLoad[];
  readonly section: BeamSection;
  /** Moduli of the wood, MPa. */
  readonly elasticity: number;
  readonly rupture: number;
}

/** How one stretch of a beam sags. */
export interface SaggingSpan {
  readonly kind: 'span' | 'overhang';
  /** mm from the beam's start. */
  readonly from: number;
  readonly to: number;
  /** Where it lies farthest from the line of its supports, and how far, mm: down positive. */
  readonly at: number;
  readonly first: number;
  /** After years under the same load, mm. */
  readonly later: number;
  /** |first| and |later| for each mm of the stretch. */
  readonly firstShare: number;
  readonly laterShare: number;
  /** Is it more than one designs for; will it show? */
  readonly overDesign: boolean;
  readonly shows: boolean;
}

export interface Sag {
  readonly spans: readonly SaggingSpan[];
  /** N upwards, in the order of the supports; negative where a joint must hold the beam down. */
  readonly reactions: readonly number[];
  /** Greatest bending moment, N·mm, where it acts, and the stress of its outermost fibres, MPa. */
  readonly moment: number;
  readonly momentAt: number;
  readonly stress: number;
  /** Stress to count on, MPa: a stated share of the modulus of rupture. */
  readonly allowed: number;
  readonly strong: boolean;
  readonly limits: {
    readonly design: Figure;
    readonly shows: Figure;
    readonly creep: Figure;
    readonly stressShare: Figure;
  };
  readonly assumption: string;
}

const ASSUMPTION =
  'Clear, straight-grained, dry wood of mean stiffness along the grain, one section from end to end, small slopes, loads that do not move; joints that let the beam turn unless said otherwise. All of the load counts as lasting.';

/**
 * How far a wooden beam sags and how hard it is bent: beam theory (see bendBeam), stress M c / I. An overhang is reckoned by its own
 * length, from the support to its tip. Published moduli come from bending tests at a span of 14 depths and so hold some deflection by shear;
 * beams much shorter than that sag more than is said here. Nothing when the supports do not hold the beam.
 */
export function sagOf({
  length,
  supports,
  loads,
  section,
  elasticity,
  rupture,
}: WoodenBeam): Sag | undefined {
  const bent = bendBeam({ length, supports, loads, stiffness: elasticity * section.secondMoment });
  if (bent === undefined) return undefined;
  const { value: moment, at: momentAt } = greatestMoment(bent);
  const stress = (Math.abs(moment) * section.toFibre) / section.secondMoment;
  const allowed = SAG_LIMITS.stressShare.value * rupture;
  return {
    spans: stretchesOf(supports, length).map((stretch) => sagOfStretch(bent, stretch)),
    reactions: bent.reactions,
    moment,
    momentAt,
    stress,
    allowed,
    strong: stress <= allowed,
    limits: SAG_LIMITS,
    assumption: ASSUMPTION,
  };
}

type Stretch = Pick<SaggingSpan, 'kind' | 'from' | 'to'>;

function stretchesOf(supports: readonly BeamSupport[], length: number): Stretch[] {
  const at = supports.map((support) => support.at).sort((a, b) => a - b);
  const stops = [0, ...at, length];
  const last = stops.length - 1;
  return stops
    .slice(1)
    .map((to, i): Stretch => ({ kind: i === 0 || i === last - 1 ? 'overhang' : 'span', from: stops[i]!, to }))
    .filter(({ from, to }) => to - from > POSITION_TOLERANCE);
}

function sagOfStretch(bent: BentBeam, stretch: Stretch): SaggingSpan {
  const { from, to } = stretch;
  const places = [from, ...turningPoints(bent, from, to), to];
  const at = places.reduce((a, b) => (Math.abs(bent.sagAt(b)) > Math.abs(bent.sagAt(a)) ? b : a));
  const first = bent.sagAt(at);
  const later = first * SAG_LIMITS.creep.value;
  const [firstShare, laterShare] = [first, later].map((sag) => Math.abs(sag) / (to - from)) as [
    number,
    number,
  ];
  return {
    ...stretch,
    at,
    first,
    later,
    firstShare,
    laterShare,
    overDesign: firstShare > SAG_LIMITS.design.value,
    shows: laterShare > SAG_LIMITS.shows.value,
  };
}

/** Steps in which a stretch between two breaks is searched: its slope is a cubic, of three turns at most. */
const STEPS = 24;

/** Places within a stretch where the beam lies level. */
function turningPoints({ breaks, slopeAt }: BentBeam, from: number, to: number): number[] {
  const stops = [from, ...breaks.filter((x) => x > from && x < to), to];
  const found: number[] = [];
  for (const [i, start] of stops.slice(0, -1).entries()) {
    const step = (stops[i + 1]! - start) / STEPS;
    for (let k = 0; k < STEPS; k++) {
      let [low, high] = [start + k * step, start + (k + 1) * step];
      const rising = slopeAt(high) > slopeAt(low);
      if (slopeAt(low) > 0 === slopeAt(high) > 0) continue;
      while (high - low > POSITION_TOLERANCE) {
        const mid = (low + high) / 2;
        if (slopeAt(mid) > 0 === rising) high = mid;
        else low = mid;
      }
      found.push((low + high) / 2);
    }
  }
  return found;
}

/** Between two breaks the moment is a parabola: its ends and its vertex by three places of it. */
function greatestMoment({ breaks, momentAt }: BentBeam): { readonly value: number; readonly at: number } {
  let best = { value: 0, at: breaks[0]! };
  for (const [i, from] of breaks.slice(0, -1).entries()) {
    const to = breaks[i + 1]!;
    const mid = (from + to) / 2;
    const value = (x: number): number => momentAt(x, mid);
    const [m0, m1, m2] = [value(from), value(mid), value(to)];
    const bend = m0 - 2 * m1 + m2;
    const vertex = bend === 0 ? mid : mid + ((to - from) / 4) * ((m0 - m2) / bend);
    for (const at of [from, to, Math.min(to, Math.max(from, vertex))]) {
      if (Math.abs(value(at)) > Math.abs(best.value)) best = { value: value(at), at };
    }
  }
  return best;
}
