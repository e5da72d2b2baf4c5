import {
  areaOfRegions,
  boundsOfRegions,
  CONTACT_TOLERANCE,
  dot3,
  pointToFrame,
  pointToWorld,
  type Similarity,
  transformRegion,
  type Vec,
  type Vec3,
} from '../../geometry/index.ts';
import type { LeafPiece } from './api.ts';

/** Middle planes of a base: x ↦ −x, and y ↦ −y. */
const MIRRORS: readonly ((p: Vec3) => Vec3)[] = [(p) => ({ ...p, x: -p.x }), (p) => ({ ...p, y: -p.y })];

/**
 * How one piece lies on another that is its mirror image across a middle plane of the base, face side on face side: from the plane of the
 * one to that of the other. Nothing where it is not.
 */
export function mirrorBetween(a: LeafPiece, b: LeafPiece): Similarity | undefined {
  return MIRRORS.map((mirror) => across(a, b, mirror)).find((found) => found !== undefined);
}

function across(a: LeafPiece, b: LeafPiece, mirror: (p: Vec3) => Vec3): Similarity | undefined {
  const map = (p: Vec): Vec3 => pointToFrame(b.frame, mirror(pointToWorld(a.frame, { ...p, z: 0 })));
  const [origin, y] = [map({ x: 0, y: 0 }), map({ x: 0, y: 1 })];
  if (dot3(mirror(a.frame.z), b.frame.z) < 1 - 1e-9 || Math.abs(origin.z) > CONTACT_TOLERANCE)
    return undefined;
  const found: Similarity = {
    mirrored: true,
    turn: Math.atan2(origin.x - y.x, y.y - origin.y),
    scale: 1,
    shift: { x: origin.x, y: origin.y },
  };
  return liesOn(a, b, found) ? found : undefined;
}

/** Are their outlines the same there, as far as box and area tell? */
function liesOn(a: LeafPiece, b: LeafPiece, by: Similarity): boolean {
  const moved = a.region.map((region) => transformRegion(region, by));
  const [one, other] = [boundsOfRegions(moved), boundsOfRegions(b.region)];
  const off = [
    one.minX - other.minX,
    one.minY - other.minY,
    one.maxX - other.maxX,
    one.maxY - other.maxY,
  ].map(Math.abs);
  const girth = 2 * (other.maxX - other.minX + other.maxY - other.minY);
  return (
    Math.max(...off) < CONTACT_TOLERANCE &&
    Math.abs(areaOfRegions(moved) - areaOfRegions(b.region)) < CONTACT_TOLERANCE * girth
  );
}
