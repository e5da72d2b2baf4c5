import {
  type Box,
  boundsOfRegions,
  offsetRegions,
  type Region,
  transformRegion,
  type Vec,
} from '../../geometry/index.ts';
import type { Lying, ToLay } from '../boards/api.ts';
import { turnedOver } from '../boards/lay-at.ts';
import { sidesOf } from './sides.ts';
import { type Slabs, slabsOf } from './slabs.ts';

/** What keeps off something: cut across along x, and along y (with the axes exchanged). */
export interface Room {
  /** Unique in one search. */
  readonly key: number;
  readonly along: Slabs;
  readonly across: Slabs;
  readonly box: Box;
}

/** Something to lay, turned in one of its ways; its place is that of the near left corner of its true outline's box. */
export interface Shape {
  readonly turned: number;
  readonly mirrored: boolean;
  /** What must lie within the board. */
  readonly blank: Box;
  /** What keeps off neighbours: the blank grown by half of the room between two. */
  readonly room: Room;
  /** What keeps off defects: the true outline. */
  readonly part: Room;
}

export function shapeOf(
  toLay: ToLay,
  way: Pick<Lying, 'turned' | 'mirrored'>,
  between: number,
  nextKey: () => number,
): Shape {
  const turned = turnedOver(toLay, way);
  const box = boundsOfRegions([transformRegion(toLay.region, turned)]);
  const by = { ...turned, shift: { x: -box.minX, y: -box.minY } };
  const blank = solid(transformRegion(toLay.blank, by));
  return {
    turned: way.turned,
    mirrored: way.mirrored,
    blank: boundsOfRegions([blank]),
    room: roomOf(between > 0 ? offsetRegions([blank], between / 2) : [blank], nextKey()),
    part: roomOf([solid(transformRegion(toLay.region, by))], nextKey()),
  };
}

export function roomOf(regions: readonly Region[], key: number): Room {
  const polygons = regions.map(({ outer }) => sidesOf(outer, 'around'));
  return {
    key,
    along: slabsOf(polygons),
    across: slabsOf(polygons.map((points) => points.map(exchanged))),
    box: boundsOfRegions(regions),
  };
}

function exchanged({ x, y }: Vec): Vec {
  return { x: y, y: x };
}

function solid({ outer }: Region): Region {
  return { outer, holes: [] };
}
