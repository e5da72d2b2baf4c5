import {
  angleOf,
  directionAt,
  distance,
  type Edge,
  locate,
  POSITION_TOLERANCE,
  polar,
  type Region,
  subtract,
  type Vec,
} from '../../geometry/index.ts';
import { edgesOf } from '../layout/edges-of.ts';
import { flattenEdge } from '../layout/flatten.ts';
import { toFrame } from '../layout/oriented-box.ts';
import { createNearest } from './nearest-of-many.ts';

/** A spot inside the outline where lettering may be tried. */
export interface Spot {
  readonly at: Vec;
  /** Coordinates along and across the centre line, from its start; mm. */
  readonly along: number;
  readonly across: number;
  /** Distance to the nearest edge, mm. */
  readonly clearance: number;
  /** The nearest edge, and the share of its length where it is nearest. */
  readonly edge: Edge;
  readonly t: number;
}

/** About how many spots cover one part: enough to find every place where a word fits. */
const SPOTS = 1800;
const MOST_ROWS = 1000;

/**
 * Spots inside regions on a lattice laid along a line, in rows from its start. Closer together on a narrow part, wider
 * on a broad one, so that their number stays bounded.
 */
export function insideGrid(
  regions: readonly Region[],
  line: { readonly from: Vec; readonly to: Vec },
): readonly Spot[] {
  const edges = edgesOf(regions);
  if (edges.length === 0 || distance(line.from, line.to) === 0) return [];
  const angle = angleOf(subtract(line.to, line.from));
  const ahead = polar(angle);
  const frame = boundsInFrame(edges, line.from, angle);
  const width = frame.maxY - frame.minY;
  const height = frame.maxX - frame.minX;
  const pitch = Math.max(2.5, Math.sqrt((width * height) / SPOTS));
  const rows = Math.min(MOST_ROWS, Math.ceil(height / pitch));
  // Never fewer than six places across, however long and thin the part.
  const columns = Math.max(6, Math.ceil(width / pitch));
  const nearest = createNearest(edges);
  // A measured place tells of those after it in its column too: up to the nearest edge all lie on the same side.
  const sureUntil = new Float64Array(columns).fill(-Infinity);
  const isInside = new Array<boolean>(columns).fill(false);
  const guess = new Int32Array(columns);
  const spots: Spot[] = [];
  for (let row = 0; row < rows; row++) {
    const along = frame.minX + ((row + 0.5) * height) / rows;
    for (let column = 0; column < columns; column++) {
      const isSure = along < sureUntil[column]!;
      if (isSure && !isInside[column]) continue;
      const across = frame.minY + ((column + 0.5) * width) / columns;
      const at = {
        x: line.from.x + ahead.x * along - ahead.y * across,
        y: line.from.y + ahead.y * along + ahead.x * across,
      };
      if (!isSure) isInside[column] = locate(regions, at) === 'inside';
      const { index, t, distance: clearance } = nearest(at, guess[column]!);
      sureUntil[column] = along + clearance - 2 * POSITION_TOLERANCE;
      guess[column] = index;
      if (isInside[column]) spots.push({ at, along, across, clearance, edge: edges[index]!, t });
    }
  }
  return spots;
}

/** Direction of the nearest edge, rad. */
export function edgeAngle({ edge, t }: Spot): number {
  return angleOf(directionAt(edge, t));
}

function boundsInFrame(
  edges: readonly Edge[],
  origin: Vec,
  angle: number,
): { minX: number; minY: number; maxX: number; maxY: number } {
  const box = { minX: Infinity, minY: Infinity, maxX: -Infinity, maxY: -Infinity };
  for (const edge of edges) {
    for (const point of flattenEdge(edge, 0.5)) {
      const p = toFrame(origin, angle, point);
      box.minX = Math.min(box.minX, p.x);
      box.maxX = Math.max(box.maxX, p.x);
      box.minY = Math.min(box.minY, p.y);
      box.maxY = Math.max(box.maxY, p.y);
    }
  }
  return box;
}
