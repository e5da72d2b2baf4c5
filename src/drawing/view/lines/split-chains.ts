import { type Box, norm, type Vec3 } from '../../../geometry/index.ts';
import type { Chain } from './chain.ts';
import { createSegmentGrid } from './segment-grid.ts';

/** A stretch of a chain on which nothing begins or ends to hide it. Places are piece number plus share of the piece. */
export interface Run {
  readonly chain: Chain;
  readonly from: number;
  readonly to: number;
}

interface Contour {
  readonly from: Vec3;
  readonly to: Vec3;
}

/** mm in the picture: an end so near to a line touches it; what is shorter, ten times over, is no stretch. */
const TOUCH = 1e-6;
/** mm: a contour that lies farther behind an edge hides nothing of it. */
const BEHIND = 1e-3;

/** Chains cut wherever a contour that is not behind them crosses or touches them in the picture, and where they turn away themselves. */
export function splitChains(chains: readonly Chain[], box: Box): readonly Run[] {
  const contours = createSegmentGrid<Contour>(box);
  for (const { points, pieces } of chains) {
    for (const [i, piece] of pieces.entries()) {
      if (!piece.contour) continue;
      const [from, to] = [points[i]!, points[i + 1]!];
      contours.add(from, to, { from, to });
    }
  }
  return chains.flatMap((chain) => {
    const places = [0, chain.pieces.length];
    for (const [i, piece] of chain.pieces.entries()) {
      const before = chain.pieces[i - 1];
      if (before !== undefined && (before.contour !== piece.contour || before.away !== piece.away))
        places.push(i);
      // What its own solid hides is hidden all along.
      if (piece.away) continue;
      const [from, to] = [chain.points[i]!, chain.points[i + 1]!];
      contours.near(from, to, TOUCH, (contour) => {
        // Neither itself nor its neighbours along the chain.
        if (contour.from === from || contour.from === to || contour.to === from) return;
        meet(from, to, contour, (t) => places.push(i + t));
      });
    }
    return runsBetween(chain, places);
  });
}

function runsBetween(chain: Chain, places: number[]): readonly Run[] {
  places.sort((a, b) => a - b);
  const runs: Run[] = [];
  let from = 0;
  for (const to of places) {
    if (lengthBetween(chain, from, to) < TOUCH * 10) continue;
    runs.push({ chain, from, to });
    from = to;
  }
  const last = runs.at(-1);
  if (last !== undefined) runs[runs.length - 1] = { ...last, to: chain.pieces.length };
  return runs;
}

function lengthBetween(chain: Chain, from: number, to: number): number {
  let length = 0;
  for (let i = Math.floor(from); i < to; i++) {
    const [a, b] = [chain.points[i]!, chain.points[i + 1]!];
    const share = Math.min(to, i + 1) - Math.max(from, i);
    length += share * norm(b.x - a.x, b.y - a.y);
  }
  return length;
}

/** Shares of the piece from p to q where the contour meets it; of one that runs along it, where that begins and ends. */
function meet(p: Vec3, q: Vec3, { from, to }: Contour, found: (t: number) => void): void {
  const [ex, ey] = [q.x - p.x, q.y - p.y];
  const [fx, fy] = [to.x - from.x, to.y - from.y];
  const length = norm(ex, ey);
  const other = norm(fx, fy);
  if (length < TOUCH || other < TOUCH) return;
  const [gx, gy] = [from.x - p.x, from.y - p.y];
  const turn = ex * fy - ey * fx;
  if (Math.abs(turn) < 1e-9 * length * other) {
    if (Math.abs(ex * gy - ey * gx) > TOUCH * length) return;
    for (const end of [from, to]) {
      const t = ((end.x - p.x) * ex + (end.y - p.y) * ey) / (length * length);
      if (t > 20 * (TOUCH / length) && t < 1 - 20 * (TOUCH / length)) found(t);
    }
    return;
  }
  const t = (gx * fy - gy * fx) / turn;
  const u = (gx * ey - gy * ex) / turn;
  const slack = TOUCH / length;
  if (t < -slack || t > 1 + slack || u < -TOUCH / other || u > 1 + TOUCH / other) return;
  if (from.z + u * (to.z - from.z) < p.z + t * (q.z - p.z) - BEHIND) return;
  const nearEnd = 20 * slack;
  found(t < nearEnd ? 0 : t > 1 - nearEnd ? 1 : t);
}
