import type { Edge, Region, Vec } from '../api.ts';
import { sweepOf } from '../edge.ts';

/** Area, centroid, and second moments about axes through the centroid along x and y. */
export interface Moments {
  /** mm². */
  readonly area: number;
  readonly centroid: Vec;
  /** ∫ y² dA about the centroid, mm⁴: resists bending about the x axis. */
  readonly xx: number;
  /** ∫ x² dA about the centroid, mm⁴. */
  readonly yy: number;
  /** ∫ x y dA about the centroid, mm⁴. */
  readonly xy: number;
}

/** Nodes and weights of the eight-point Gauss–Legendre rule on [−1, 1], positive half (Abramowitz & Stegun, table 25.4). */
const GAUSS: readonly (readonly [number, number])[] = [
  [0.18343464249565, 0.362683783378362],
  [0.525532409916329, 0.313706645877887],
  [0.796666477413627, 0.222381034453374],
  [0.960289856497536, 0.101228536290376],
];

/** Arcs are taken in pieces no longer than this, so that the rule is exact to rounding on them. */
const LONGEST_PIECE = Math.PI / 4;

/**
 * Area, centroid and second moments of regions, holes taken out. No regions (or no area) give zeros and a centroid of
 * NaN. Green's theorem: ∫xᵃyᵇ dA as integrals round the boundary, exact for lines and to rounding for arcs.
 */
export function momentsOfRegions(regions: readonly Region[]): Moments {
  const origin = regions[0]?.outer.edges[0]?.from ?? { x: 0, y: 0 };
  const sums = { area: 0, x: 0, y: 0, xx: 0, yy: 0, xy: 0 };
  for (const { outer, holes } of regions) {
    for (const loop of [outer, ...holes]) for (const edge of loop.edges) addEdge(sums, edge, origin);
  }
  const { area } = sums;
  const x = sums.x / area;
  const y = sums.y / area;
  return {
    area,
    centroid: { x: origin.x + x, y: origin.y + y },
    xx: sums.yy - area * y * y || 0,
    yy: sums.xx - area * x * x || 0,
    xy: sums.xy - area * x * y || 0,
  };
}

/** Centre of area of regions; without area NaN. */
export function centroidOfRegions(regions: readonly Region[]): Vec {
  return momentsOfRegions(regions).centroid;
}

type Sums = Record<'area' | 'x' | 'y' | 'xx' | 'yy' | 'xy', number>;

function addEdge(sums: Sums, edge: Edge, origin: Vec): void {
  const x = edge.from.x - origin.x;
  const y = edge.from.y - origin.y;
  if (edge.kind === 'line') {
    const dx = edge.to.x - edge.from.x;
    const dy = edge.to.y - edge.from.y;
    for (const [node, weight] of GAUSS) {
      for (const u of [(1 - node) / 2, (1 + node) / 2]) {
        addSample(sums, x + u * dx, y + u * dy, (weight / 2) * dx, (weight / 2) * dy);
      }
    }
    return;
  }
  const sweep = sweepOf(edge);
  const pieces = Math.ceil(sweep / LONGEST_PIECE);
  const half = sweep / pieces / 2;
  const ux = (edge.from.x - edge.centre.x) / edge.radius;
  const uy = (edge.from.y - edge.centre.y) / edge.radius;
  const { radius, turn } = edge;
  for (let piece = 0; piece < pieces; piece++) {
    for (const [node, weight] of GAUSS) {
      for (const u of [-node, node]) {
        const angle = turn * half * (2 * piece + 1 + u);
        const c = Math.cos(angle);
        const s = Math.sin(angle);
        // 1 − cos through the half angle: a flat arc of large radius keeps its bulge.
        const back = 2 * Math.sin(angle / 2) ** 2;
        const px = x + radius * (-ux * back - uy * s);
        const py = y + radius * (-uy * back + ux * s);
        const step = weight * half * radius * turn;
        addSample(sums, px, py, step * (-ux * s - uy * c), step * (-uy * s + ux * c));
      }
    }
  }
}

function addSample(sums: Sums, x: number, y: number, dx: number, dy: number): void {
  sums.area += (x * dy - y * dx) / 2;
  sums.x += (x * x * dy) / 2;
  sums.y -= (y * y * dx) / 2;
  sums.xx += (x * x * x * dy) / 3;
  sums.yy -= (y * y * y * dx) / 3;
  sums.xy += (x * x * y * dy) / 2;
}
