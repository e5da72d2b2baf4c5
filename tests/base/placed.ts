import type { PlacedPart } from '../../src/base/index.ts';
import { cutPart } from '../../src/base/stand/stand-part.ts';
import { type Frame, type Plane3, vec3, WORLD } from '../../src/geometry/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import { board } from './hand-made.ts';

interface Standing {
  readonly frame?: Frame;
  /** Planes of the world that it is cut by, their normals out of the wood. */
  readonly planes?: Readonly<Record<string, Plane3>>;
  readonly hand?: 'left' | 'right';
}

/** A part of any outline where its frame says, cut by planes of the world. */
export function placedPart(drawn: SketchedPart, standing: Standing = {}): PlacedPart {
  const { frame = WORLD, planes = {}, hand = 'left' } = standing;
  const cuts = Object.entries(planes).map(([name, plane]) => ({ name, plane }));
  const { name, label } = drawn;
  const made = { id: name, place: name, label, copy: 0, mark: '', hand, beam: false } as const;
  return { ...made, frame, drawn, ...cutPart(drawn, frame, cuts) };
}

/** A rectangular part: its width, length and thickness along x, y and −z of its frame, from its origin. */
export const placedBoard = (
  name: string,
  [width, length, thickness]: readonly [number, number, number],
  standing: Standing = {},
): PlacedPart => placedPart(board(name, width, length, thickness), standing);

/** A box along the axes of the world, from its lowest corner. */
export function placedBox(
  name: string,
  [x, y, z]: readonly [number, number, number],
  size: readonly [number, number, number],
): PlacedPart {
  return placedBoard(name, size, { frame: { ...WORLD, origin: vec3(x, y, z + size[2]) } });
}
