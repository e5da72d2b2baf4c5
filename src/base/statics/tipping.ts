import {
  add,
  areaOfRegions,
  boundsOfRegions,
  dot,
  type Edge,
  leftOf,
  middle,
  nearestOnEdge,
  offsetRegions,
  POSITION_TOLERANCE,
  type Region,
  scale,
  subtract,
  unit,
  type Vec,
} from '../../geometry/index.ts';
import { TIPPING_LOAD } from '../../materials/index.ts';
import { type Foot, supportPolygon } from './support-polygon.ts';

/** A base with its top, as it stands: all seen from above, mm. */
export interface Standing {
  readonly feet: readonly Foot[];
  /** Of base and top together, kg, and where its centre lies. */
  readonly mass: number;
  readonly centre: Vec;
  /** Outline of the top. */
  readonly top: readonly Region[];
}

/** A line through two neighbouring feet over which the piece can tip. */
export interface TippingLine {
  readonly from: Foot;
  readonly to: Foot;
  /** How far the centre of mass lies inside the line, mm; negative when it lies beyond. */
  readonly inside: number;
  /** How far the load stands outside it, mm; 0 or less never tips. */
  readonly outside: number;
  /** Where the load stands. */
  readonly at: Vec;
  /** What tips it, a force and the mass that weighs as much. Absent where no load there can. */
  readonly load?: { readonly newtons: number; readonly kilograms: number };
}

export interface Tipping {
  /** One for each side of what it stands on, in its order. */
  readonly lines: readonly TippingLine[];
  /** The line over which the least load tips; absent when none does. */
  readonly worst?: TippingLine;
  /** Does it stand with nothing on it: is the centre of mass over the feet? */
  readonly stands: boolean;
  /** How far in from the top's edge the load stands, mm: less than asked for where the top is too narrow. */
  readonly fromEdge: number;
  readonly assumption: string;
  readonly source: string;
}

const ASSUMPTION =
  'A rigid base on a level floor that does not slide, a load that presses straight down and stays still. Nothing is said of one who leans, climbs or pulls.';

/**
 * The load on the top that tips the piece, over each line through two neighbouring feet: F = W b / a, with the weight W at distance b inside
 * the line and the load at distance a outside it. The load stands at the worst place at least 50 mm in from the top's
 * edge; where a whole side is as bad, in the middle of it. Moments about the line of the feet; place of the load as in ISO 7172. Throws a
 * RangeError when there is no top or no mass.
 */
export function tipping({ feet, mass, centre, top }: Standing): Tipping {
  if (!(mass > 0)) throw new RangeError(`${mass} kg is no mass`);
  const { regions, fromEdge } = placesOfLoad(top);
  const corners = supportPolygon(feet);
  const weight = mass * TIPPING_LOAD.gravity.value;
  const lines =
    corners.length < 2 ? [] : corners.map((from, i) => lineThrough(from, corners[(i + 1) % corners.length]!));
  const least = Math.min(...lines.map(({ load }) => load?.newtons ?? Infinity));
  const worst = lines.find(({ load }) => load !== undefined && load.newtons === least);
  const stands = corners.length > 2 && lines.every(({ inside }) => inside > 0);
  const base = { lines, stands, fromEdge, assumption: ASSUMPTION, source: TIPPING_LOAD.fromEdge.source };
  return worst === undefined ? base : { ...base, worst };

  function lineThrough(from: Foot, to: Foot): TippingLine {
    const outwards = scale(leftOf(unit(subtract(to.at, from.at))), -1);
    const at = farthest(regions, outwards);
    const inside = dot(outwards, subtract(from.at, centre));
    const outside = dot(outwards, subtract(at, from.at));
    const line = { from, to, inside, outside, at };
    if (inside <= 0) return { ...line, load: { newtons: 0, kilograms: 0 } };
    if (outside <= 0) return line;
    return { ...line, load: { newtons: (weight * inside) / outside, kilograms: (mass * inside) / outside } };
  }
}

/** Where the load may stand: the top less 50 mm all round, or as much of that as leaves something of a narrow top. */
function placesOfLoad(top: readonly Region[]): {
  readonly regions: readonly Region[];
  readonly fromEdge: number;
} {
  if (!(areaOfRegions(top) > 0)) throw new RangeError('a load needs a top to stand on');
  const asked = TIPPING_LOAD.fromEdge.value;
  const regions = offsetRegions(top, -asked);
  if (regions.length > 0) return { regions, fromEdge: asked };
  const box = boundsOfRegions(top);
  let fits = { regions: top, fromEdge: 0 };
  let [low, high] = [0, Math.min(asked, box.maxX - box.minX, box.maxY - box.minY)];
  while (high - low > LEAST_STEP) {
    const tried = (low + high) / 2;
    const left = offsetRegions(top, -tried);
    if (left.length === 0) high = tried;
    else [low, fits] = [tried, { regions: left, fromEdge: tried }];
  }
  return fits;
}

/** mm: as exactly as anyone puts a load on the middle of a narrow top. */
const LEAST_STEP = 0.1;

/** The place of the regions farthest along a direction; the middle of all such places. */
function farthest(regions: readonly Region[], along: Vec): Vec {
  const places = regions.flatMap(({ outer }) => outer.edges.flatMap((edge) => extremesOf(edge, along)));
  const most = Math.max(...places.map((p) => dot(p, along)));
  const across = leftOf(along);
  const ends = places
    .filter((p) => dot(p, along) >= most - 10 * POSITION_TOLERANCE)
    .sort((a, b) => dot(a, across) - dot(b, across));
  return middle(ends[0]!, ends.at(-1)!);
}

function extremesOf(edge: Edge, along: Vec): Vec[] {
  if (edge.kind === 'line') return [edge.from];
  return [edge.from, nearestOnEdge(edge, add(edge.centre, scale(along, edge.radius))).point];
}
