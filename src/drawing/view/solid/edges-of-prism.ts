import {
  cross3,
  dot3,
  type Edge,
  type EdgeTag,
  type Plane3,
  type Vec,
  type Vec3,
} from '../../../geometry/index.ts';
import type { EdgePlace } from '../api.ts';
import type { Facet, FlatPrism } from './flat-prism.ts';
import { lineInPrism, withinPlanes } from './line-in-prism.ts';

/** A straight piece of an edge of a solid, with the normals (out of the wood) of the two surfaces that meet there. */
export interface SolidPiece {
  readonly from: Vec3;
  readonly to: Vec3;
  readonly normals: readonly [Vec3, Vec3];
  /** The arc of the outline that the piece stands for. */
  readonly source?: Edge;
}

export interface SolidEdge {
  readonly tag: EdgeTag;
  readonly on: EdgePlace;
  /** Only where a curved wall turns away from the viewer is there anything to see of it. */
  readonly smooth: boolean;
  /** In order; where one ends the next begins, or the edge is interrupted. */
  readonly pieces: readonly SolidPiece[];
}

const FACE: Vec3 = { x: 0, y: 0, z: 1 };
const BACK: Vec3 = { x: 0, y: 0, z: -1 };
/** mm: a corner so near to a plane may lie on it. */
const NEAR = 1e-3;
/** Of a crossing's square sine: planes nearer to parallel do not cross. */
const PARALLEL = 1e-18;

/**
 * The edges of a prism cut by planes, in its own frame: round face and back, arrises between walls that meet in a corner, and what each cut makes with
 * faces, walls and other cuts. Each is a line between two bounding planes, kept where it lies within all others.
 */
export function sharpEdgesOfPrism(
  prism: FlatPrism,
  roles: Readonly<Record<string, EdgeTag['role']>>,
): readonly SolidEdge[] {
  return [
    ...prism.loops.flatMap((loop) => [...rims(prism, loop), ...arrises(prism, loop, isCorner)]),
    ...prism.cuts.flatMap((_, at) => cutEdges(prism, at, roles)),
  ];
}

/**
 * The arrises between facets of its curved walls: there are hundreds, and hardly one that is drawn; `isDrawn` tells, by the normals there,
 * which.
 */
export function smoothEdgesOfPrism(
  prism: FlatPrism,
  isDrawn: (normals: SolidPiece['normals']) => boolean,
): readonly SolidEdge[] {
  return prism.loops.flatMap((loop) =>
    arrises(prism, loop, ({ smooth }, normals) => smooth && isDrawn(normals)),
  );
}

const isCorner = ({ smooth }: Facet): boolean => !smooth;

/** Along an outline on face and back; runs that go on smoothly under one name are one edge. */
function rims(prism: FlatPrism, loop: readonly Facet[]): readonly SolidEdge[] {
  return (['face', 'back'] as const).flatMap((on) => {
    const z = on === 'face' ? 0 : -prism.thickness;
    return runsOf(loop).map((run) => ({
      tag: run[0]!.source.tag,
      on,
      smooth: false,
      pieces: run.flatMap(({ from, to, out, source }) =>
        clipped(prism, { ...from, z }, { ...to, z }, [on === 'face' ? FACE : BACK, { ...out, z: 0 }], source),
      ),
    }));
  });
}

function runsOf(loop: readonly Facet[]): readonly (readonly Facet[])[] {
  const starts = (facet: Facet, at: number): boolean => {
    const before = loop[(at + loop.length - 1) % loop.length]!;
    return !facet.smooth || before.source.tag.id !== facet.source.tag.id;
  };
  const first = Math.max(0, loop.findIndex(starts));
  const turned = [...loop.slice(first), ...loop.slice(0, first)];
  const runs: Facet[][] = [];
  for (const [at, facet] of turned.entries()) {
    if (at === 0 || starts(facet, (at + first) % loop.length)) runs.push([]);
    runs.at(-1)!.push(facet);
  }
  return runs;
}

function arrises(
  prism: FlatPrism,
  loop: readonly Facet[],
  isWanted: (facet: Facet, normals: SolidPiece['normals']) => boolean,
): readonly SolidEdge[] {
  return loop.flatMap((facet, at) => {
    const before = loop[(at + loop.length - 1) % loop.length]!;
    const [a, b] = [before.source.tag, facet.source.tag];
    const normals = [
      { ...before.out, z: 0 },
      { ...facet.out, z: 0 },
    ] as const;
    if (!isWanted(facet, normals)) return [];
    return {
      tag: a.id === b.id ? b : { id: `${a.id}|${b.id}`, role: b.role },
      on: 'arris',
      smooth: facet.smooth,
      pieces: clipped(prism, { ...facet.from, z: 0 }, { ...facet.from, z: -prism.thickness }, normals),
    };
  });
}

function cutEdges(
  prism: FlatPrism,
  at: number,
  roles: Readonly<Record<string, EdgeTag['role']>>,
): readonly SolidEdge[] {
  const { name, plane } = prism.cuts[at]!;
  const others = prism.cuts.filter((_, i) => i !== at).map((other) => other.plane);
  const make = (on: EdgePlace, pieces: readonly SolidPiece[]): SolidEdge => ({
    tag: { id: name, role: roles[name] ?? 'sawn' },
    on,
    smooth: false,
    pieces,
  });
  const onFaces = [0, -prism.thickness].map((z) => {
    const facing = z === 0 ? FACE : BACK;
    const line = crossing(plane.normal, plane.offset, FACE, z);
    if (line === undefined) return make('cut', []);
    const range = withinPlanes(line.o, line.d, [-Infinity, Infinity], others);
    // Just under the surface, so that the line is not held to be outside it.
    const inside = { ...line.o, z: z - facing.z * 1e-9 };
    const stretches = range === undefined ? [] : lineInPrism({ ...prism, cuts: [] }, inside, line.d);
    return make(
      'cut',
      stretches.flatMap(([a, b]) => {
        const [t0, t1] = [Math.max(a, range![0]), Math.min(b, range![1])];
        return t0 < t1 ? [pieceOn(line, t0, t1, [facing, plane.normal])] : [];
      }),
    );
  });
  const onWalls = prism.loops.flatMap((loop) =>
    runsOf(loop).map((run) =>
      make(
        'cut',
        run.flatMap((facet) => wallPiece(prism, facet, plane, others)),
      ),
    ),
  );
  const withCuts = prism.cuts.slice(at + 1).map((other) => {
    const line = crossing(plane.normal, plane.offset, other.plane.normal, other.plane.offset);
    if (line === undefined) return make('cut', []);
    const rest = prism.cuts.filter((cut) => cut !== other && cut.plane !== plane);
    const stretches = lineInPrism({ ...prism, cuts: rest }, line.o, line.d);
    return make(
      'cut',
      stretches.map(([a, b]) => pieceOn(line, a, b, [plane.normal, other.plane.normal])),
    );
  });
  return [...onFaces, ...onWalls, ...withCuts];
}

/** What a cut makes on one wall. */
function wallPiece(
  prism: FlatPrism,
  { from, to, out, source }: Facet,
  plane: Plane3,
  others: readonly Plane3[],
): readonly SolidPiece[] {
  if (!mayMeet(prism, from, to, plane)) return [];
  const wall: Vec3 = { ...out, z: 0 };
  const line = crossing(plane.normal, plane.offset, wall, out.x * from.x + out.y * from.y);
  if (line === undefined) return [];
  const along: Vec = { x: -out.y, y: out.x };
  const sides = [
    { normal: { x: along.x, y: along.y, z: 0 }, offset: along.x * to.x + along.y * to.y },
    { normal: { x: -along.x, y: -along.y, z: 0 }, offset: -(along.x * from.x + along.y * from.y) },
    { normal: FACE, offset: 0 },
    { normal: BACK, offset: prism.thickness },
  ];
  const range = withinPlanes(line.o, line.d, [-Infinity, Infinity], [...sides, ...others]);
  if (range === undefined || !(range[0] < range[1])) return [];
  const piece = pieceOn(line, range[0], range[1], [wall, plane.normal], source);
  // In the order of the outline.
  const forward = dot3(line.d, { ...along, z: 0 });
  return [forward >= 0 ? piece : { ...piece, from: piece.to, to: piece.from }];
}

/** Are the corners of a wall on both sides of a plane, or near it? Most walls are far from most cuts. */
function mayMeet({ thickness }: FlatPrism, from: Vec, to: Vec, { normal, offset }: Plane3): boolean {
  const a = normal.x * from.x + normal.y * from.y - offset;
  const b = normal.x * to.x + normal.y * to.y - offset;
  const down = -thickness * normal.z;
  return Math.min(a, b) + Math.min(0, down) < NEAR && Math.max(a, b) + Math.max(0, down) > -NEAR;
}

function clipped(
  prism: FlatPrism,
  from: Vec3,
  to: Vec3,
  normals: readonly [Vec3, Vec3],
  source?: Edge,
): readonly SolidPiece[] {
  const d = { x: to.x - from.x, y: to.y - from.y, z: to.z - from.z };
  const range = withinPlanes(
    from,
    d,
    [0, 1],
    prism.cuts.map(({ plane }) => plane),
  );
  if (range === undefined || !(range[0] < range[1])) return [];
  const [a, b] = range;
  const whole = pieceOn({ o: from, d }, a, b, normals, source);
  return [{ ...whole, from: a === 0 ? from : whole.from, to: b === 1 ? to : whole.to }];
}

interface SpaceLine {
  readonly o: Vec3;
  readonly d: Vec3;
}

function pieceOn(
  { o, d }: SpaceLine,
  a: number,
  b: number,
  normals: readonly [Vec3, Vec3],
  source?: Edge,
): SolidPiece {
  const at = (t: number): Vec3 => ({ x: o.x + t * d.x, y: o.y + t * d.y, z: o.z + t * d.z });
  return { from: at(a), to: at(b), normals, ...(source === undefined ? {} : { source }) };
}

/** The line where two planes cross, its direction of unit length. */
function crossing(n: Vec3, a: number, m: Vec3, b: number): SpaceLine | undefined {
  const along = cross3(n, m);
  const square = dot3(along, along);
  if (square < PARALLEL) return undefined;
  const p = cross3(m, along);
  const q = cross3(along, n);
  const o = {
    x: (p.x * a + q.x * b) / square,
    y: (p.y * a + q.y * b) / square,
    z: (p.z * a + q.z * b) / square,
  };
  const length = Math.sqrt(square);
  return { o, d: { x: along.x / length, y: along.y / length, z: along.z / length } };
}
