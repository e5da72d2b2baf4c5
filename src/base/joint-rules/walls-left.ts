import {
  add3,
  dot3,
  type Edge,
  heightOver,
  nearestOnEdge,
  type Plane3,
  RESIDUE_TOLERANCE,
  scale3,
} from '../../geometry/index.ts';
import type { DrilledPart, Wall, WallsLeft } from './api.ts';
import { type DrilledHole, farthestOfBottom, farthestOfHole } from './drilled-hole.ts';
import { bottomToOutline, FLATTEST } from './walls-behind.ts';
import { shadowOfHole, sideToOutline, straightTo, surelyBeside } from './walls-to-outline.ts';

/**
 * Least wood that a hole leaves in a part, all round and at its bottom. The surface on which its mouth lies does not count: any that the
 * middle of the mouth is on, within RESIDUE_TOLERANCE. The hole begins at the disc of its mouth, square to its line. Holes are taken
 * with flat bottoms. Outlines are met as they are, arcs too; where a hole looks at an arc or a corner, its round counts as a polygon of 360 corners,
 * 0.00004 of its radius short. Throws a RangeError when every surface holds the mouth.
 */
export function wallsLeft(hole: DrilledHole, part: DrilledPart): WallsLeft {
  const planes = planesOf(part).filter(
    ({ plane }) => Math.abs(heightOver(plane, hole.at)) > RESIDUE_TOLERANCE,
  );
  const edges = part.outline
    .flatMap(({ outer, holes }) => [outer, ...holes].flatMap((loop) => loop.edges))
    .filter((edge) => nearestOnEdge(edge, hole.at).distance > RESIDUE_TOLERANCE);
  let around = leastWall(planes.map(({ name, plane }) => sideToPlane(hole, name, plane)));
  const rest: Edge[] = [];
  for (const edge of edges) {
    const wall = straightTo(hole, edge);
    if (wall === undefined) rest.push(edge);
    else if (around === undefined || wall.wood < around.wood) around = wall;
  }
  // Arcs and edges that the hole crosses or looks at past their ends are asked last: most lie farther than what is found by then.
  const shadow = shadowOfHole(hole);
  for (const edge of rest) {
    if (around !== undefined && surelyBeside(shadow, edge) >= Math.max(0, around.wood)) continue;
    const wall = sideToOutline(shadow, edge, part.outline);
    if (around === undefined || wall.wood < around.wood) around = wall;
  }
  if (around === undefined) throw new RangeError('a hole needs a surface that it does not begin on');
  const flat = leastWall(planes.flatMap(({ name, plane }) => bottomToPlane(hole, name, plane)));
  const round = bottomToOutline(hole, edges, flat?.wood ?? Infinity);
  const bottom = leastWall(flat === undefined ? round : [flat, ...round]);
  return bottom === undefined ? { around } : { around, bottom };
}

function planesOf({ thickness, cuts }: DrilledPart): DrilledPart['cuts'] {
  return [
    { name: 'face', plane: { normal: { x: 0, y: 0, z: 1 }, offset: 0 } },
    { name: 'back', plane: { normal: { x: 0, y: 0, z: -1 }, offset: thickness } },
    ...cuts,
  ];
}

function leastWall(walls: readonly Wall[]): Wall | undefined {
  return walls.length === 0 ? undefined : walls.reduce((a, b) => (b.wood < a.wood ? b : a));
}

function sideToPlane(hole: DrilledHole, on: string, plane: Plane3): Wall {
  const nearest = farthestOfHole(hole, plane.normal);
  const wood = -heightOver(plane, nearest);
  return { wood, at: add3(nearest, scale3(plane.normal, wood)), on };
}

function bottomToPlane(hole: DrilledHole, on: string, plane: Plane3): readonly Wall[] {
  const approach = dot3(plane.normal, hole.along);
  // A line along the plane, or away from it, never comes out there.
  if (approach <= FLATTEST) return [];
  const nearest = farthestOfBottom(hole, plane.normal);
  const wood = -heightOver(plane, nearest) / approach;
  return [{ wood, at: add3(nearest, scale3(hole.along, wood)), on }];
}
