import {
  type Edge,
  type EdgeRole,
  line,
  type Outline,
  type Region,
  reverseEdge,
  type Vec,
  vec,
} from '../../../src/geometry/index.ts';
import type { Tooling } from '../../../src/routing/index.ts';
import type { Opening, SketchedPart } from '../../../src/sketch/index.ts';
import { bulged } from '../../geometry/random-outlines.ts';

/** One edge of a loop: where it starts, its name, role and bulge (tangent of a quarter of its sweep). */
export type Step = readonly [x: number, y: number, id: string, role?: EdgeRole | undefined, bulge?: number];

/** A closed loop from steps; the last edge ends where the first starts. */
export function loopOf(steps: readonly Step[]): Outline {
  const edges = steps.map(([x, y, id, role = 'routed', bulge = 0], at): Edge => {
    const [toX, toY] = steps[(at + 1) % steps.length]!;
    const tag = { id, role };
    return bulge === 0 ? line(vec(x, y), vec(toX, toY), tag) : bulged(vec(x, y), vec(toX, toY), bulge, tag);
  });
  return { edges };
}

export function reversed({ edges }: Outline): Outline {
  return { edges: [...edges].reverse().map(reverseEdge) };
}

export function startingAt({ edges }: Outline, at: number): Outline {
  return { edges: [...edges.slice(at), ...edges.slice(0, at)] };
}

/** A part as a form would draw it; invented data. */
export function partOf(
  outer: Outline,
  more: Partial<SketchedPart> & { readonly holes?: readonly Outline[] } = {},
): SketchedPart {
  const { holes = [], ...rest } = more;
  const region: Region = { outer, holes };
  const ys = outer.edges.map(({ from }) => from.y);
  const xs = outer.edges.map(({ from }) => from.x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  return {
    name: 'part',
    label: 'Part',
    region,
    thickness: 20,
    grain: Math.PI / 2,
    up: Math.PI / 2,
    quantity: { left: 1, right: 0 },
    corners: [],
    openings: [],
    joints: [],
    dimensions: [],
    centreLine: { from: vec(middle, Math.min(...ys)), to: vec(middle, Math.max(...ys)) },
    ...rest,
  };
}

export function openingAt(hole: number, plunge: Vec): Opening {
  return { name: 'window', label: 'Window', hole, plunge };
}

/** A rectangle standing on the origin, its edges named foot, right, head, left. */
export function rectangle(
  width: number,
  height: number,
  roles: Partial<Record<'foot' | 'right' | 'head' | 'left', EdgeRole>> = {},
): Outline {
  return loopOf([
    [0, 0, 'foot', roles.foot],
    [width, 0, 'right', roles.right],
    [width, height, 'head', roles.head],
    [0, height, 'left', roles.left],
  ]);
}

/** A straight tapered leg: sawn foot and head, routed edges. */
export const LEG = loopOf([
  [20, 0, 'foot', 'sawn'],
  [60, 0, 'outer'],
  [90, 700, 'head', 'sawn'],
  [0, 700, 'inner'],
]);

/** A leg whose inner edge runs into an arm to the right through a quarter hollow of the radius given. */
export function hollowLeg(radius: number): Outline {
  return loopOf([
    [0, 0, 'foot', 'sawn'],
    [80, 0, 'inner'],
    [80, 400, 'knee', 'routed', -Math.tan(Math.PI / 8)],
    [80 + radius, 400 + radius, 'arm'],
    [400, 400 + radius, 'end', 'joint'],
    [400, 500 + radius, 'head'],
    [0, 500 + radius, 'outer'],
  ]);
}

/** A hand-held router with a pattern cutter whose bearing is as large as the cutter. */
export function bearingTooling(diameter: number, more: Partial<Tooling> = {}): Tooling {
  return {
    machine: 'hand-held',
    cutter: { diameter, cuttingLength: 40 },
    guide: { kind: 'bearing', diameter, at: 'shank' },
    templateThickness: 12,
    runOn: 50,
    sawAllowance: 2,
    cutters: [],
    blades: [],
    ...more,
  };
}

/** The same machine with a guide bushing. */
export function bushingTooling(diameter: number, outside: number, more: Partial<Tooling> = {}): Tooling {
  return bearingTooling(diameter, {
    guide: { kind: 'bushing', outsideDiameter: outside, barrelLength: 8 },
    ...more,
  });
}
