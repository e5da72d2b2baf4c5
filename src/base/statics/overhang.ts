import { boundsOfRegions, type Region, type Vec } from '../../geometry/index.ts';
import { type Figure, OVERHANG } from '../../materials/index.ts';
import { type Measured, measure } from './measured.ts';

/** A top on its base, seen from above, mm: x along the table's length, y along its depth. */
export interface TopOnBase {
  readonly top: readonly Region[];
  /** Where the base carries it: corners of leg tops and rails. */
  readonly carriers: readonly Vec[];
  /** Where the base stands on the floor. */
  readonly feet: readonly Vec[];
  /** Does someone sit at the ends (left and right)? */
  readonly seatedEnds: boolean;
}

/**
 * How far the top reaches past what carries it on each side (mm), the largest share that is of the span between carriers, and the
 * share of the top's length and depth over which the feet spread. Limits are usual practice. Throws a RangeError without carriers or feet.
 */
export function overhang({ top, carriers, feet, seatedEnds }: TopOnBase): readonly Measured[] {
  if (carriers.length === 0 || feet.length === 0) throw new RangeError('a top needs carriers and feet');
  const box = boundsOfRegions(top);
  const [x, y] = [rangeOf(carriers.map((p) => p.x)), rangeOf(carriers.map((p) => p.y))];
  const sides = { least: OVERHANG.leastSide, most: OVERHANG.mostSide };
  const ends = seatedEnds ? { least: OVERHANG.leastEnd, most: OVERHANG.mostEnd } : {};
  const [left, right] = [x.least - box.minX, box.maxX - x.most];
  const [front, back] = [y.least - box.minY, box.maxY - y.most];
  return [
    measure('overhang.left', left, ends),
    measure('overhang.right', right, ends),
    measure('overhang.front', front, sides),
    measure('overhang.back', back, sides),
    share('overhang.along', Math.max(left, right), x.most - x.least, { most: OVERHANG.mostShareOfSpan }),
    share('overhang.across', Math.max(front, back), y.most - y.least, { most: OVERHANG.mostShareOfSpan }),
    spread(
      'feet.along',
      feet.map((p) => p.x),
      box.maxX - box.minX,
    ),
    spread(
      'feet.across',
      feet.map((p) => p.y),
      box.maxY - box.minY,
    ),
  ];
}

function rangeOf(values: readonly number[]): { readonly least: number; readonly most: number } {
  return { least: Math.min(...values), most: Math.max(...values) };
}

/** Carriers in one line (a pedestal) have no span: any overhang is endlessly long against it. */
function share(name: string, part: number, whole: number, limits: { readonly most: Figure }): Measured {
  return measure(name, part <= 0 ? 0 : part / whole, limits);
}

function spread(name: string, places: readonly number[], whole: number): Measured {
  const { least, most } = rangeOf(places);
  return measure(name, (most - least) / whole, { least: OVERHANG.spreadOfFeet });
}
