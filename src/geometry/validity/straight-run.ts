import type { Edge, Vec } from '../api.ts';
import { CARRIER_TOLERANCE } from '../tolerance.ts';
import { cross, dot, subtract } from '../vec.ts';

/**
 * Lines one after another whose joints all lie within CARRIER_TOLERANCE of the line from the first one's start to the last one's end. Whether a line more
 * goes on so is mostly told by the cone of directions in which the joints so far leave it: to look at every joint for every line would take the square of their number.
 */
export interface StraightRun {
  readonly edges: Edge[];
  readonly from: Vec;
  /** Along the first line. */
  readonly along: Vec;
  /** Slopes off that direction, each joint within the tolerance of them all. */
  least: number;
  most: number;
  /** So near to either border every joint is looked at. */
  leastDoubt: number;
  mostDoubt: number;
}

export function newStraightRun(first: Edge): StraightRun {
  const along = subtract(first.to, first.from);
  const run = {
    edges: [],
    from: first.from,
    along,
    least: -Infinity,
    most: Infinity,
    leastDoubt: 0,
    mostDoubt: 0,
  };
  addToRun(run, first);
  return run;
}

export function addToRun(run: StraightRun, edge: Edge): void {
  run.edges.push(edge);
  const { slope, room } = coneOf(run, edge.to);
  if (slope - room > run.least) {
    run.least = slope - room;
    run.leastDoubt = DOUBT * room;
  }
  if (slope + room < run.most) {
    run.most = slope + room;
    run.mostDoubt = DOUBT * room;
  }
}

/** As a share of the slopes within the tolerance: rounding, and what slanting lengthens. */
const DOUBT = 0.01;

/** Would all joints lie on the line to `to`? */
export function goesStraightTo(run: StraightRun, to: Vec): boolean {
  const { slope } = coneOf(run, to);
  const { least, most, leastDoubt, mostDoubt } = run;
  if (slope > least + leastDoubt && slope < most - mostDoubt) return true;
  if (slope < least - leastDoubt || slope > most + mostDoubt) return false;
  return run.edges.every((edge) => isOnChord(edge.to, run.from, to));
}

/** Slope of a place off the first line, and the slopes to either side at which a line passes it within the tolerance. */
function coneOf({ from, along }: StraightRun, p: Vec): { slope: number; room: number } {
  const q = subtract(p, from);
  const ahead = dot(along, q);
  return {
    slope: cross(along, q) / ahead,
    room: (CARRIER_TOLERANCE * Math.sqrt(dot(along, along))) / ahead,
  };
}

function isOnChord(p: Vec, from: Vec, to: Vec): boolean {
  const u = subtract(to, from);
  return Math.abs(cross(u, subtract(p, from))) <= CARRIER_TOLERANCE * Math.sqrt(dot(u, u));
}
