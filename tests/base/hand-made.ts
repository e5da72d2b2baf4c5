import { type StandingBase, standBase } from '../../src/base/index.ts';
import { type Outline, polygonOutline, type Vec, vec, vec3 } from '../../src/geometry/index.ts';
import type {
  JointSketch,
  PlacedSketch,
  Sketch,
  SketchedBase,
  SketchedPart,
} from '../../src/sketch/index.ts';

/** A part of any outline, its grain along +y. */
export function partOf(name: string, outer: Outline, thickness: number, holes: Outline[] = []): SketchedPart {
  return {
    name,
    label: name,
    region: { outer, holes },
    thickness,
    grain: Math.PI / 2,
    up: Math.PI / 2,
    quantity: { left: 1, right: 0 },
    corners: [],
    openings: [],
    joints: [],
    dimensions: [],
    centreLine: { from: vec(0, -1000), to: vec(0, 1000) },
  };
}

const SIDES = ['bottom', 'right', 'top', 'left'] as const;

/** A straight board, its lower left corner at the origin of its plane: edges bottom, right, top, left. */
export function board(name: string, width: number, length: number, thickness: number): SketchedPart {
  return shaped(name, [vec(0, 0), vec(width, 0), vec(width, length), vec(0, length)], thickness);
}

/** A part with four corners, its edges named bottom, right, top, left. */
export function shaped(name: string, corners: readonly Vec[], thickness: number): SketchedPart {
  const tags = SIDES.map(
    (id) => ({ id, role: id === 'bottom' || id === 'top' ? 'sawn' : 'routed' }) as const,
  );
  return partOf(name, polygonOutline(corners, tags), thickness);
}

/** A place: standing upright at the origin, its face to the sitter, unless said otherwise. */
export function place(name: string, part: string, more: Partial<PlacedSketch> = {}): PlacedSketch {
  return {
    name,
    label: name,
    part,
    pin: vec(0, 0),
    at: vec3(0, 0, 0),
    along: vec3(0, 0, 1),
    face: vec3(0, -1, 0),
    turns: [],
    pinDepth: 0,
    trims: [],
    copies: [],
    beam: false,
    ...more,
  };
}

export const joint = (
  name: string,
  kind: JointSketch['kind'],
  ...between: readonly [string, string]
): JointSketch => ({ name, label: name, kind, between });

/** Parts put up as a base. */
export function stand(
  parts: readonly SketchedPart[],
  places: readonly PlacedSketch[],
  more: Partial<Pick<SketchedBase, 'planes' | 'joints'>> = {},
): StandingBase {
  const sketch: Sketch = {
    form: 'by hand',
    version: 1,
    title: 'By hand',
    parameters: {},
    points: {},
    planes: {},
    parts,
    base: {
      use: 'table',
      top: { shape: 'rectangle', length: 1000, width: 600, thickness: 20, level: 700 },
      levellers: 0,
      planes: {},
      joints: [],
      places,
      ...more,
    },
  };
  const stood = standBase(sketch);
  if (!stood.ok) throw new RangeError(stood.problems.map(({ message }) => message).join('; '));
  return stood.value;
}
