import {
  areaOfRegions,
  boundsOfRegions,
  cross,
  cross3,
  type Edge,
  length3,
  nearestOnEdges,
  norm,
  POSITION_TOLERANCE,
  pointAt,
  polar,
  type Region,
  SAME_MADE,
  type Similarity,
  STAY,
  scale3,
  subtract,
  subtract3,
  transformPoint,
  transformRegion,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { JointWork } from '../joints/api.ts';
import type { Shape } from './shape.ts';

/** How one shape lies on another that it equals: half a turn in its plane or none. */
export interface Match {
  readonly turned: boolean;
}

/**
 * Whether two pieces are alike when one is laid on the other, face side up, its grain along the other's: outlines of face and back with what makes
 * their edges, pieces glued on, and joints, all within SAME_MADE. Names of edges do not count.
 */
export function sameShape(a: Shape, b: Shape): Match | undefined {
  if (Math.abs(a.drawn.thickness - b.drawn.thickness) > SAME_MADE) return undefined;
  if (a.work.length !== b.work.length || a.face.length !== b.face.length) return undefined;
  for (const turned of [false, true]) {
    const motion = layOn(a, b, turned);
    if (motion !== undefined && agrees(a, b, motion)) return { turned };
  }
  return undefined;
}

/** The motion that lays the grain and the middle of one shape on those of the other. */
function layOn(a: Shape, b: Shape, turned: boolean): Similarity | undefined {
  const grain = b.drawn.grain - a.drawn.grain;
  const turn = grain - Math.PI * Math.round(grain / Math.PI) + (turned ? Math.PI : 0);
  const spun = a.silhouette.map((region) => transformRegion(region, { ...STAY, turn }));
  const [from, to] = [boundsOfRegions(spun), boundsOfRegions(b.silhouette)];
  const off = [from.minX - to.minX, from.minY - to.minY, from.maxX - to.maxX, from.maxY - to.maxY];
  // Boxes of one size stand off by as much on either side.
  if (Math.abs(off[0]! - off[2]!) > 2 * SAME_MADE || Math.abs(off[1]! - off[3]!) > 2 * SAME_MADE)
    return undefined;
  const shift = { x: -(off[0]! + off[2]!) / 2, y: -(off[1]! + off[3]!) / 2 };
  return { ...STAY, turn, shift };
}

function agrees(a: Shape, b: Shape, motion: Similarity): boolean {
  return (
    sameRegions(a.face, b.face, motion) &&
    sameRegions(a.back, b.back, motion) &&
    samePieces(a, b, motion) &&
    sameWork(a.work, b.work, motion)
  );
}

/** Outlines whose every corner and middle of an edge lies on the other's outline, either way, on an edge made in the same way. */
function sameRegions(a: readonly Region[], b: readonly Region[], motion: Similarity): boolean {
  const moved = isStill(motion) ? a : a.map((region) => transformRegion(region, motion));
  if (moved === b) return true;
  const [first, second] = [edgesOf(moved), edgesOf(b)];
  if (pairUp(first, second)) return true;
  if (Math.abs(areaOfRegions(moved) - areaOfRegions(b)) > SAME_MADE * roundOf(b)) return false;
  return liesAlong(first, second) && liesAlong(second, first);
}

const isStill = ({ turn, shift, mirrored }: Similarity): boolean =>
  turn === 0 && shift.x === 0 && shift.y === 0 && !mirrored;

/** Are they the very same edges in the same order, from wherever? So copies are, and need no closer look. */
function pairUp(edges: readonly Edge[], others: readonly Edge[]): boolean {
  const [first] = edges;
  if (first === undefined || edges.length !== others.length) return false;
  const start = others.findIndex((other) => isSameEdge(first, other));
  if (start < 0) return false;
  return edges.every((edge, at) => isSameEdge(edge, others[(start + at) % others.length]!));
}

function isSameEdge(a: Edge, b: Edge): boolean {
  if (a.tag.role !== b.tag.role || !isSamePoint(a.from, b.from) || !isSamePoint(a.to, b.to)) return false;
  if (a.kind === 'line' || b.kind === 'line') return a.kind === b.kind;
  return a.turn === b.turn && isSamePoint(a.centre, b.centre);
}

const isSamePoint = (p: Vec, q: Vec): boolean =>
  Math.abs(p.x - q.x) <= POSITION_TOLERANCE && Math.abs(p.y - q.y) <= POSITION_TOLERANCE;

/** Half the girth of the box round regions, doubled: what an outline that strays by 1 mm all round may add of area per mm. */
function roundOf(regions: readonly Region[]): number {
  const box = boundsOfRegions(regions);
  return 4 * (box.maxX - box.minX + box.maxY - box.minY);
}

const SHARES = [0, 0.25, 0.5, 0.75];

function liesAlong(edges: readonly Edge[], others: readonly Edge[]): boolean {
  return edges.every((edge) =>
    SHARES.every((share) => {
      const p = pointAt(edge, share);
      const { distance, index } = nearestOnEdges(others, p);
      if (distance > SAME_MADE) return false;
      // At a corner two edges meet, either of which may be the nearest.
      return share === 0 || others[index]!.tag.role === edge.tag.role || isNearEnd(others[index]!, p);
    }),
  );
}

const isNearEnd = (edge: Edge, p: Edge['from']): boolean =>
  [edge.from, edge.to].some((end) => norm(end.x - p.x, end.y - p.y) <= SAME_MADE);

const edgesOf = (regions: readonly Region[]): readonly Edge[] =>
  regions.flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges));

function samePieces(a: Shape, b: Shape, motion: Similarity): boolean {
  const [pieces, others] = [a.drawn.pieces ?? [], b.drawn.pieces ?? []];
  if (pieces.length !== others.length) return false;
  return pieces.every((piece, at) => {
    const other = others[at]!;
    const [from, to] = [piece.leftOf.from, piece.leftOf.to].map((p) => transformPoint(p, motion));
    const along = subtract(other.leftOf.to, other.leftOf.from);
    const long = norm(along.x, along.y);
    const off = (p: typeof from): number => Math.abs(cross(along, subtract(p!, other.leftOf.from))) / long;
    const grain = polar(piece.grain + motion.turn);
    return (
      off(from) <= SAME_MADE &&
      off(to) <= SAME_MADE &&
      along.x * (to!.x - from!.x) + along.y * (to!.y - from!.y) > 0 &&
      Math.abs(cross(grain, polar(other.grain))) < 1e-6
    );
  });
}

/** Every joint of one has its own in the other. */
function sameWork(works: readonly JointWork[], others: readonly JointWork[], motion: Similarity): boolean {
  const left = [...others];
  return works.every((work) => {
    const at = left.findIndex((other) => isSameWork(work, other, motion));
    if (at < 0) return false;
    left.splice(at, 1);
    return true;
  });
}

function isSameWork(work: JointWork, other: JointWork, motion: Similarity): boolean {
  if (work.kind === 'pocket' && other.kind === 'pocket') {
    return (
      isNear(work.fromZ, other.fromZ) &&
      isNear(work.toZ, other.toZ) &&
      sameRegions(work.region, other.region, motion)
    );
  }
  if (work.kind === 'pocket' || other.kind === 'pocket' || work.kind !== other.kind) return false;
  const [size, otherSize] = [work, other].map(sizeOf);
  if (size!.some((value, at) => !isNear(value, otherSize![at]!))) return false;
  const turned = (v: Vec3): Vec3 => ({ ...transformPoint(v, { ...motion, shift: { x: 0, y: 0 } }), z: v.z });
  const origin = { ...transformPoint(work.own.origin, motion), z: work.own.origin.z };
  const [along, across, deep] = size!;
  const strays = [
    length3(subtract3(origin, other.own.origin)),
    length3(scale3(subtract3(turned(work.own.z), other.own.z), deep!)),
    // Turned by half a turn about its own line a mortise is the same; a round hole however it is turned.
    work.kind === 'hole'
      ? 0
      : (length3(cross3(turned(work.own.x), other.own.x)) * Math.max(along!, across!)) / 2,
  ];
  return strays.every((stray) => stray <= SAME_MADE);
}

/** mm along x, along y and along z. */
const sizeOf = (work: Exclude<JointWork, { kind: 'pocket' }>): readonly number[] =>
  work.kind === 'tenon' ? [work.width, work.thickness, work.length] : [work.length, work.width, work.depth];

const isNear = (a: number, b: number): boolean => Math.abs(a - b) <= SAME_MADE;
