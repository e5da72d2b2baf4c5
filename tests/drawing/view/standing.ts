import type { Pocket, ViewedPart } from '../../../src/drawing/view/api.ts';
import {
  add3,
  arc,
  directionToWorld,
  type Edge,
  type Frame,
  frameAlong,
  line,
  type Outline,
  type Plane3,
  planeThrough,
  planeToFrame,
  polygonOutline,
  type Region,
  type Vec,
  type Vec3,
  WORLD,
} from '../../../src/geometry/index.ts';

/** Parts set up by hand, for views. Millimetres, radians. */

export const region = (outer: Outline, ...holes: Outline[]): Region => ({ outer, holes });

export const rectangle = (width: number, length: number, at: Vec = { x: 0, y: 0 }): Region =>
  region(
    polygonOutline(
      [
        at,
        { x: at.x + width, y: at.y },
        { x: at.x + width, y: at.y + length },
        { x: at.x, y: at.y + length },
      ],
      { id: 'side', role: 'routed' },
    ),
  );

export interface Standing {
  readonly id?: string;
  readonly frame?: Frame;
  readonly region: Region;
  readonly thickness: number;
  /** In the world; their normals out of the wood that stays. */
  readonly cuts?: Readonly<Record<string, Plane3>>;
  readonly pockets?: readonly Pocket[];
}

export function standing({ id = 'part', frame = WORLD, cuts = {}, pockets, ...drawn }: Standing): ViewedPart {
  return {
    id,
    frame,
    drawn,
    cuts: Object.entries(cuts).map(([name, plane]) => ({
      name,
      role: 'sawn',
      plane: planeToFrame(frame, plane),
    })),
    ...(pockets === undefined ? {} : { pockets }),
  };
}

/** A box from a corner, along the axes of the world; its face side up. */
export const box = (id: string, at: Vec3, size: Vec3): ViewedPart =>
  standing({
    id,
    frame: { ...WORLD, origin: add3(at, { x: 0, y: 0, z: size.z }) },
    region: rectangle(size.x, size.y),
    thickness: size.z,
  });

/** A frame by where the pin of the part's plane stands and where its length and face look. */
export function frameAt(at: Vec3, along: Vec3, face: Vec3, pin: Vec = { x: 0, y: 0 }): Frame {
  const frame = frameAlong(at, along, face)!;
  const away = directionToWorld(frame, { x: -pin.x, y: -pin.y, z: 0 });
  return { ...frame, origin: add3(at, away) };
}

/** A leg 60 wide below and 110 above, hollow inside, 40 thick, that leans by splay (outwards) and rake (to the front), between floor and top. */
export function leaningLeg(id: string, foot: Vec3, splay: number, rake: number, level: number): ViewedPart {
  const along = { x: -Math.tan(splay) * Math.sign(foot.x), y: -Math.tan(rake) * Math.sign(foot.y), z: 1 };
  const frame = frameAt(foot, along, { x: 0, y: Math.sign(foot.y), z: 0 });
  const inner = Math.sign(frame.x.x) === -Math.sign(foot.x) ? 1 : -1;
  return standing({
    id,
    frame,
    region: region(legOutline(inner)),
    thickness: 40,
    cuts: {
      floor: planeThrough({ x: 0, y: 0, z: 0 }, { x: 0, y: 0, z: -1 }),
      top: planeThrough({ x: 0, y: 0, z: level }, { x: 0, y: 0, z: 1 }),
    },
  });
}

/** Straight on its outside (x = −30), hollow by an arc on its inside; `inner` says to which side of the plane the hollow looks. */
function legOutline(inner: 1 | -1): Outline {
  const points: readonly Vec[] = [
    { x: -30, y: -60 },
    { x: 30, y: -60 },
    { x: 30, y: 60 },
    { x: 80, y: 760 },
    { x: 80, y: 860 },
    { x: -30, y: 860 },
  ];
  const [a, b, c, d, e, f] = points as readonly [Vec, Vec, Vec, Vec, Vec, Vec];
  const radius = 1500;
  const [mx, my] = [(c.x + d.x) / 2, (c.y + d.y) / 2];
  const half = Math.hypot(d.x - c.x, d.y - c.y) / 2;
  const rise = Math.sqrt(radius * radius - half * half);
  const out = { x: (d.y - c.y) / (2 * half), y: -(d.x - c.x) / (2 * half) };
  const tag = (id: string) => ({ id, role: 'routed' as const });
  const edges: readonly Edge[] = [
    line(a, b, tag('foot')),
    line(b, c, tag('inner-low')),
    arc(c, d, { x: mx + out.x * rise, y: my + out.y * rise }, -1, tag('hollow')),
    line(d, e, tag('inner-high')),
    line(e, f, tag('head')),
    line(f, a, tag('outer')),
  ];
  if (inner === 1) return { edges };
  const flip = (p: Vec): Vec => ({ x: -p.x, y: p.y });
  return {
    edges: edges
      .map(
        (edge): Edge =>
          edge.kind === 'line'
            ? { ...edge, from: flip(edge.to), to: flip(edge.from) }
            : { ...edge, from: flip(edge.to), to: flip(edge.from), centre: flip(edge.centre) },
      )
      .reverse(),
  };
}

/** Four leaning legs, two end rails, two long rails and a tie. */
export function leaningTable(splay = 0.14, rake = 0.1): readonly ViewedPart[] {
  const level = 700;
  const legs = [
    [-1, -1],
    [1, -1],
    [-1, 1],
    [1, 1],
  ].map(([x, y], i) => leaningLeg(`leg-${i + 1}`, { x: x! * 600, y: y! * 300, z: 0 }, splay, rake, level));
  const long = [-1, 1].map((y) =>
    standing({
      id: `rail${y}`,
      frame: frameAt(
        { x: -300, y: y * 230, z: 600 },
        { x: 1, y: 0, z: 0 },
        { x: 0, y, z: 0 },
        { x: 0, y: 0 },
      ),
      region: rectangle(70, 600),
      thickness: 25,
    }),
  );
  const tie = standing({
    id: 'tie',
    frame: frameAt({ x: 0, y: -250, z: 700 }, { x: 0, y: 1, z: 0 }, { x: 0, y: 0, z: 1 }, { x: 30, y: 0 }),
    region: rectangle(60, 500),
    thickness: 30,
  });
  return [...legs, ...long, tie];
}
