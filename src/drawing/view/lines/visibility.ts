import { directionToFrame, norm, pointToFrame, type Vec3 } from '../../../geometry/index.ts';
import { lineInPrism } from '../solid/line-in-prism.ts';
import { lineInSolid, type Solid } from '../solid/solid.ts';
import type { Run } from './split-chains.ts';

/**
 * mm in the picture: an edge is looked at just beside it, on both sides, because the walls that meet in it may be seen edge-on.
 * Far above the rounding of places (1e-10 mm), far below anything drawn.
 */
const BESIDE = 1e-3;
/**
 * mm of wood along the line of sight that hide what lies behind. Less is none: touching faces, and the slope of a surface over BESIDE
 * up to 50 : 1.
 */
const HIDING = 0.05;

interface Hider {
  readonly solid: Solid;
  readonly sight: Vec3;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly nearest: number;
}

/** Tells whether the middle of a run can be seen past all solids. */
export function createVisibility(
  solids: readonly Solid[],
  points: ReadonlyMap<Solid, readonly Vec3[]>,
): (run: Run) => boolean {
  const hiders = solids.flatMap((solid) => hiderOf(solid, points.get(solid)!));
  const isHidden = (p: Vec3): boolean =>
    hiders.some(
      (hider) =>
        p.x > hider.minX &&
        p.x < hider.maxX &&
        p.y > hider.minY &&
        p.y < hider.maxY &&
        p.z < hider.nearest - HIDING &&
        woodBefore(hider, p) > HIDING,
    );
  return (run) => {
    const { chain } = run;
    const { at, piece } = middleOf(run);
    if (chain.pieces[piece]!.away) return false;
    const [a, b] = [chain.points[piece]!, chain.points[piece + 1]!];
    const length = norm(b.x - a.x, b.y - a.y);
    const [nx, ny] = [(-(b.y - a.y) / length) * BESIDE, ((b.x - a.x) / length) * BESIDE];
    return (
      !isHidden({ x: at.x + nx, y: at.y + ny, z: at.z }) || !isHidden({ x: at.x - nx, y: at.y - ny, z: at.z })
    );
  };
}

function hiderOf(solid: Solid, points: readonly Vec3[]): readonly Hider[] {
  if (points.length === 0) return [];
  let [minX, maxX, minY, maxY, nearest] = [Infinity, -Infinity, Infinity, -Infinity, -Infinity];
  for (const { x, y, z } of points) {
    [minX, maxX] = [Math.min(minX, x), Math.max(maxX, x)];
    [minY, maxY] = [Math.min(minY, y), Math.max(maxY, y)];
    nearest = Math.max(nearest, z);
  }
  const sight = directionToFrame(solid.frame, { x: 0, y: 0, z: 1 });
  return [{ solid, sight, minX, maxX, minY, maxY, nearest }];
}

/** How much wood (mm) of a solid lies between a point and the viewer. */
function woodBefore({ solid, sight }: Hider, p: Vec3): number {
  const o = pointToFrame(solid.frame, p);
  const stretches =
    solid.pockets.length === 0 ? lineInPrism(solid.prism, o, sight, 0) : lineInSolid(solid, o, sight, 0);
  let wood = 0;
  for (const [a, b] of stretches) if (b > 0) wood += b - Math.max(0, a);
  return wood;
}

/** A point about the middle of a run, inside a piece of it that is no shorter than the others. */
function middleOf({ chain, from, to }: Run): { readonly at: Vec3; readonly piece: number } {
  let best = { longest: -1, piece: 0, share: 0.5 };
  const half = (from + to) / 2;
  for (let i = Math.floor(from); i < to; i++) {
    const [start, end] = [Math.max(from, i), Math.min(to, i + 1)];
    const [a, b] = [chain.points[i]!, chain.points[i + 1]!];
    // Of pieces that are alike the middle one.
    const worth = (end - start) * norm(b.x - a.x, b.y - a.y) - 1e-6 * Math.abs(i + 0.5 - half);
    if (worth > best.longest) best = { longest: worth, piece: i, share: (start + end) / 2 - i };
  }
  const { piece, share } = best;
  const [a, b] = [chain.points[piece]!, chain.points[piece + 1]!];
  return {
    piece,
    at: { x: a.x + share * (b.x - a.x), y: a.y + share * (b.y - a.y), z: a.z + share * (b.z - a.z) },
  };
}
