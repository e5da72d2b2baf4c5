import { angleOf, distance, LAY_TURN, subtract } from '../../geometry/index.ts';
import type { Board, LayRules, Lying, ToLay } from '../boards/api.ts';

type Way = Pick<Lying, 'turned' | 'mirrored'>;

/** Straight sides shorter than this share of the longest are not laid along a board's edge. */
const LONG = 0.5;

/** Small turns tried off each main one. */
const MOST_SLANTS = 3;

/**
 * The ways in which something may lie on a board: head up the board or down it, face up or face down where it may, and each of these
 * straight, along the board's grain, as far off it as is allowed, and with its long straight sides along the board's edges. On a sheet,
 * where no grain is asked, a quarter turn as well.
 */
export function waysToLie(toLay: ToLay, board: Board, { grainWithin }: LayRules): readonly Way[] {
  const isFree = board.kind === 'sheet' || toLay.grain === undefined;
  const mirrors = toLay.face === 'either' ? [false, true] : [toLay.face === 'down'];
  return mirrors.flatMap((mirrored) => {
    const slants = isFree
      ? freeTurns(toLay, mirrored)
      : slantsWithin(toLay, mirrored, board.grain, grainWithin);
    const mains = isFree ? [0, Math.PI / 2, Math.PI, (3 * Math.PI) / 2] : [0, Math.PI];
    return mains.flatMap((main) => slants.map((slant) => ({ turned: main + slant, mirrored })));
  });
}

function slantsWithin(toLay: ToLay, mirrored: boolean, grain: number, within: number): readonly number[] {
  const wanted = [0, grain, ...sideTurns(toLay, mirrored), grain - within, grain + within];
  return distinct(wanted.filter((slant) => Math.abs(slant - grain) <= within + LAY_TURN)).slice(
    0,
    MOST_SLANTS,
  );
}

function freeTurns(toLay: ToLay, mirrored: boolean): readonly number[] {
  return distinct([0, ...sideTurns(toLay, mirrored)]).slice(0, MOST_SLANTS);
}

/** Turns, rad in (−π/4, π/4], that bring a long straight side along or square to the board's edge. */
function sideTurns({ region, grain = 0 }: ToLay, mirrored: boolean): readonly number[] {
  const lines = region.outer.edges.filter((edge) => edge.kind === 'line');
  const longest = Math.max(0, ...lines.map(({ from, to }) => distance(from, to)));
  return lines
    .map((edge) => ({ long: distance(edge.from, edge.to), angle: angleOf(subtract(edge.to, edge.from)) }))
    .filter(({ long }) => long >= LONG * longest)
    .sort((a, b) => b.long - a.long)
    .map(({ angle }) => {
      const fromGrain = mirrored ? grain - angle : angle - grain;
      const quarter = Math.PI / 2;
      return -(fromGrain - quarter * Math.round(fromGrain / quarter));
    });
}

function distinct(turns: readonly number[]): readonly number[] {
  return turns.filter((turn, i) => turns.findIndex((other) => Math.abs(other - turn) <= LAY_TURN) === i);
}
