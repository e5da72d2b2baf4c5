import { keptFor } from '../../core/index.ts';
import {
  boundsOfRegions,
  CONTACT_TOLERANCE,
  directionToFrame,
  dot3,
  type Edge,
  heightOver,
  intersectEdges,
  line,
  locate,
  norm,
  pointToFrame,
  pointToWorld,
  RESIDUE_TOLERANCE,
  type Region,
  scale3,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { Contact, SolidPart } from '../contact/api.ts';
import type { Hollow } from '../contact/without-pockets.ts';
import { soonestOn } from '../joint-rules/index.ts';
import type { Side } from './joint-pair.ts';
import { woodToPocket } from './wood-to-pocket.ts';

/** Places along a contact at which the wood behind it is measured, as shares of half its length. */
const PLACES = [0, -0.3, 0.3, -0.6, 0.6];

/** How far (mm) wood reaches square behind a contact into one of its parts: the least along the middle of the contact, or at shares of it. */
export function woodBehind(
  { frame, regions }: Contact,
  { part, into }: Side,
  pockets: readonly Hollow[],
  shares: readonly number[] = PLACES,
): number {
  const box = boundsOfRegions(regions);
  const along = directionToFrame(part.frame, scale3(frame.z, into));
  const exitFrom = exitsAlong(part, along);
  const reaches = shares
    .map((share) => (share * (box.maxX - box.minX)) / 2)
    .filter((x) => locate(regions, { x, y: 0 }) !== 'outside')
    .map((x) => pointToFrame(part.frame, pointToWorld(frame, { x, y: 0, z: 0 })))
    .map((p) => Math.min(exitFrom(p).reach, isAcross(along) ? woodToPocket(p, along, pockets) : Infinity));
  return Math.min(...reaches);
}

const isAcross = ({ z }: Vec3): boolean => Math.abs(z) > 1 - 1e-6;

/** Where a drilled line comes out. */
export interface Exit {
  /** mm from where it begins. */
  readonly reach: number;
  /** The face: `face`, `back`, the name of a cut or the identity of an edge. */
  readonly on: string;
}

export const NOWHERE: Exit = { reach: Infinity, on: '' };

/**
 * Asks where lines of one direction first come out of a part, each from a point of its surface, if sooner than another exit; points and direction in
 * the part's own frame. What does not depend on the point is reckoned once.
 */
export function exitsAlong({ drawn, cuts }: SolidPart, along: Vec3): (p: Vec3, other?: Exit) => Exit {
  const planes = [
    { name: 'face', plane: { normal: { x: 0, y: 0, z: 1 }, offset: 0 } },
    { name: 'back', plane: { normal: { x: 0, y: 0, z: -1 }, offset: drawn.thickness } },
    ...cuts,
  ].flatMap(({ name, plane }) => {
    const speed = dot3(plane.normal, along);
    return speed > 1e-9 ? [{ name, plane, speed }] : [];
  });
  const fromOutline = outlineAlong(drawn.region, along);
  return (p, other = NOWHERE) => {
    let first = other;
    for (const { name, plane, speed } of planes) {
      const depth = -heightOver(plane, p);
      if (depth > RESIDUE_TOLERANCE && depth / speed < first.reach)
        first = { reach: depth / speed, on: name };
    }
    return fromOutline(p, first);
  };
}

/** The same for the outline. */
function outlineAlong(region: Region, along: Vec3): (p: Vec3, other: Exit) => Exit {
  const run = norm(along.x, along.y);
  if (run < 1e-9) return (_, other) => other;
  const { edges, reach } = outlineOf(region);
  const way = { x: along.x / run, y: along.y / run };
  return (p, other) => {
    let first = other;
    for (const edge of edges) {
      if (isBeside(edge, p, way) || soonestOn(edge, p, way) > first.reach * run) continue;
      const end = { x: p.x + way.x * reach, y: p.y + way.y * reach };
      const met = intersectEdges(line({ x: p.x, y: p.y }, end, DRILLED), edge);
      if (met.kind !== 'points') continue;
      for (const { onA } of met.points) {
        const far = onA * reach;
        if (far > RESIDUE_TOLERANCE && far / run < first.reach) first = { reach: far / run, on: edge.tag.id };
      }
    }
    return first;
  };
}

const DRILLED = { id: 'drilled', role: 'left' } as const;

/** The edges of an outline, and mm that lead out of it from anywhere near. */
const outlineOf = keptFor((region: Region) => {
  const { minX, minY, maxX, maxY } = boundsOfRegions([region]);
  const edges = [region.outer, ...region.holes].flatMap((loop) => loop.edges);
  return { edges, reach: 2 * (maxX - minX + maxY - minY) + 1 };
});

/** Does an edge surely lie beside a line? Most do, and need not be met with it. */
function isBeside(edge: Edge, p: Vec, way: Vec): boolean {
  const off = (q: Vec): number => way.x * (q.y - p.y) - way.y * (q.x - p.x);
  if (edge.kind === 'arc') return Math.abs(off(edge.centre)) > edge.radius + CONTACT_TOLERANCE;
  const [from, to] = [off(edge.from), off(edge.to)];
  return Math.min(from, to) > CONTACT_TOLERANCE || Math.max(from, to) < -CONTACT_TOLERANCE;
}
