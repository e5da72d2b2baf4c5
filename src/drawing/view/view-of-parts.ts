import { type Box, boundsOfEdges, joinBoxes, type Vec3 } from '../../geometry/index.ts';
import type { Camera, View, ViewedPart, ViewOptions } from './api.ts';
import { type Chain, chainsOf } from './lines/chain.ts';
import { linesOfRuns } from './lines/lines-of-runs.ts';
import { mergeRuns } from './lines/merge-runs.ts';
import { splitChains } from './lines/split-chains.ts';
import { createVisibility } from './lines/visibility.ts';
import { type Solid, solidsOf } from './solid/solid.ts';

/** mm in the world: what a full-size drawing on paper promises. */
export const VIEW_TOLERANCE = 0.02;

const EMPTY: Box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };

/**
 * What a camera sees of parts, in mm of the world:
 *
 *     parts ─▶ flat-sided solids ─▶ edges in the picture ─▶ cut where contours cross them ─▶ seen or hidden ─▶ each line once
 *
 * Curved walls are taken as flat ones within the tolerance, so that nothing after that is more than rounded; circles seen square on come
 * back as arcs, all other curves as chords. Where wood of one part stands inside another (a tenon, say) its edges are hidden; the line where
 * two such surfaces cross is not drawn.
 */
export function viewOfParts(parts: readonly ViewedPart[], camera: Camera, options: ViewOptions = {}): View {
  const { tolerance = VIEW_TOLERANCE, hidden = true } = options;
  const solids = solidsOf(parts, camera, tolerance);
  const ofSolid = new Map<Solid, readonly Chain[]>(solids.map((solid) => [solid, chainsOf(solid)]));
  const chains = [...ofSolid.values()].flat();
  const box = boxOf(chains.flatMap(({ points }) => points));
  const points = new Map(
    [...ofSolid].map(([solid, own]) => [solid, own.flatMap((chain) => chain.points)] as const),
  );
  const isVisible = createVisibility(solids, points);
  const runs = splitChains(chains, box).map((run) => ({ ...run, visible: isVisible(run) }));
  const wanted = hidden ? runs : runs.filter(({ visible }) => visible);
  const visible = 2 * tolerance;
  const nearness = { visible, hidden: Math.max(visible, options.hiddenApart ?? 0) };
  const lines = linesOfRuns(mergeRuns(wanted, box, nearness));
  const bounds = lines.map(({ edges }) => boundsOfEdges(edges)).reduce(joinBoxes, EMPTY);
  return { camera, tolerance, lines, box: bounds };
}

function boxOf(points: readonly Vec3[]): Box {
  let { minX, minY, maxX, maxY } = EMPTY;
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { minX, minY, maxX, maxY };
}
