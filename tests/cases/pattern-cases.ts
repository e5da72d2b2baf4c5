import {
  add,
  arc,
  directionAt,
  dot,
  type Edge,
  type EdgeRole,
  leftOf,
  line,
  type Outline,
  offsetRegions,
  type Region,
  reverseEdge,
  scale,
  subtract,
  type Vec,
  vec,
} from '../../src/geometry/index.ts';
import type { FeedRun, Routing, Tooling } from '../../src/routing/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';

/** Parts laid out by hand, with the routing that follows from the simplest reading of the rules; for drawings only. */
export interface PatternCase {
  readonly part: SketchedPart;
  readonly routing: Routing;
}

const edge = (from: Vec, to: Vec, id: string, role: EdgeRole): Edge => line(from, to, { id, role });

function loop(points: readonly (readonly [number, number, string, EdgeRole])[]): Outline {
  return {
    edges: points.map(([x, y, id, role], i) => {
      const [nx, ny] = points[(i + 1) % points.length]!;
      return edge(vec(x, y), vec(nx, ny), id, role);
    }),
  };
}

/** A leg that leans 7.5° and tapers towards the foot, 705 mm long. */
export function splayedLeg(): PatternCase {
  const lean = Math.tan((7.5 * Math.PI) / 180);
  const region: Region = {
    outer: loop([
      [0, 0, 'foot', 'sawn'],
      [38, -38 * lean, 'inner', 'routed'],
      [66, 700 - 66 * lean, 'head', 'sawn'],
      [-2, 700 + 2 * lean, 'outer', 'routed'],
    ]),
    holes: [],
  };
  const corners = region.outer.edges.map(({ from }) => from);
  const [footOuter, footInner, headInner, headOuter] = corners as [Vec, Vec, Vec, Vec];
  return withRouting({
    name: 'splayed-leg',
    label: 'Splayed leg',
    region,
    thickness: 32,
    grain: Math.PI / 2,
    up: Math.PI / 2 - (7.5 * Math.PI) / 180,
    quantity: { left: 2, right: 2 },
    corners: corners.map((at, i) => ({ name: ['foot', 'heel', 'shoulder', 'head'][i]!, at })),
    openings: [],
    joints: [{ name: 'rail', label: 'rail', from: vec(-8, 600), to: vec(72, 600) }],
    dimensions: [
      length('foot', 'foot', footOuter, footInner),
      length('head', 'head', headOuter, headInner),
      length('outer', 'outer edge', footOuter, headOuter),
      length('tall', 'square to the floor', footOuter, headInner, Math.PI / 2 - (7.5 * Math.PI) / 180),
      length('rail', 'to the rail', footOuter, vec(0, 600), Math.PI / 2),
      {
        kind: 'angle',
        name: 'splay',
        label: 'at the foot',
        at: footOuter,
        value: angleBetween(subtract(footInner, footOuter), subtract(headOuter, footOuter)),
      },
    ],
    centreLine: { from: vec(19, 0), to: vec(32, 695) },
  });
}

/** A broad panel leg with a window whose corners are rounded. */
export function panelLeg(): PatternCase {
  const r = 12;
  const window = roundedHole(110, 180, 290, 520, r, 'window');
  const region: Region = {
    outer: loop([
      [0, 0, 'foot', 'sawn'],
      [400, 0, 'right', 'routed'],
      [360, 690, 'head', 'joint'],
      [40, 690, 'left', 'routed'],
    ]),
    holes: [window],
  };
  return withRouting({
    name: 'panel-leg',
    label: 'Panel leg',
    region,
    thickness: 28,
    grain: Math.PI / 2,
    up: Math.PI / 2,
    quantity: { left: 2, right: 0 },
    corners: [],
    openings: [{ name: 'window', label: 'window', hole: 0, plunge: vec(200, 350) }],
    joints: [{ name: 'top', label: 'bearer', from: vec(60, 660), to: vec(340, 660) }],
    dimensions: [
      length('foot', 'foot', vec(0, 0), vec(400, 0)),
      length('head', 'head', vec(40, 690), vec(360, 690)),
      length('height', 'height', vec(0, 0), vec(40, 690), Math.PI / 2),
      length('window', 'window', vec(110, 350), vec(290, 350)),
      length('sill', 'below the window', vec(200, 0), vec(200, 180)),
      {
        kind: 'radius',
        name: 'corner',
        label: 'window corners',
        edge: 'window.corner',
        at: vec(290 - r + r * Math.SQRT1_2, 520 - r + r * Math.SQRT1_2),
        value: r,
      },
    ],
    centreLine: { from: vec(200, 0), to: vec(200, 690) },
  });
}

/** A long stretcher with a shallow arch along its lower edge. */
export function archedStretcher(long = 1100, deep = 92, narrow = 48): PatternCase {
  const rise = deep - narrow;
  const half = long / 2 - 90;
  const radius = (half * half + rise * rise) / (2 * rise);
  const region: Region = {
    outer: {
      edges: [
        edge(vec(0, 0), vec(deep, 0), 'end', 'joint'),
        edge(vec(deep, 0), vec(deep, 90), 'lower', 'routed'),
        arc(vec(deep, 90), vec(deep, long - 90), vec(deep + radius - rise, long / 2), -1, {
          id: 'arch',
          role: 'routed',
        }),
        edge(vec(deep, long - 90), vec(deep, long), 'lower', 'routed'),
        edge(vec(deep, long), vec(0, long), 'far-end', 'joint'),
        edge(vec(0, long), vec(0, 0), 'upper', 'left'),
      ],
    },
    holes: [],
  };
  return withRouting({
    name: 'arched-stretcher',
    label: 'Arched stretcher',
    region,
    thickness: 25,
    grain: Math.PI / 2,
    up: Math.PI,
    quantity: { left: 2, right: 0 },
    corners: [],
    openings: [],
    joints: [],
    dimensions: [
      length('long', 'between shoulders', vec(0, 0), vec(0, long)),
      length('deep', 'at the ends', vec(0, 0), vec(deep, 0)),
      length('narrow', 'in the middle', vec(0, long / 2), vec(narrow, long / 2)),
      { kind: 'radius', name: 'arch', label: 'arch', edge: 'arch', at: vec(narrow, long / 2), value: radius },
    ],
    centreLine: { from: vec(narrow / 2, 0), to: vec(narrow / 2, long) },
  });
}

/** A leg with a sharp hollow knee that no cutter reaches into, its arm running off to the side. */
export function kneeLeg(): PatternCase {
  const region: Region = {
    outer: loop([
      [0, 0, 'foot', 'sawn'],
      [42, 0, 'inner', 'routed'],
      [60, 560, 'arm-lower', 'routed'],
      [330, 630, 'arm-end', 'joint'],
      [316, 690, 'arm-upper', 'routed'],
      [0, 700, 'outer', 'routed'],
    ]),
    holes: [],
  };
  const knee = vec(60, 560);
  const residue: Region = {
    outer: loop(
      [
        [60, 560, 'inner', 'routed'],
        [64.6, 561.2, 'arm-lower', 'routed'],
        [59.8, 555.2, 'inner', 'routed'],
      ].reverse() as [number, number, string, EdgeRole][],
    ),
    holes: [],
  };
  const made = withRouting({
    name: 'knee-leg',
    label: 'Knee leg',
    region,
    thickness: 35,
    grain: Math.PI / 2,
    up: Math.PI / 2,
    quantity: { left: 2, right: 2 },
    corners: [{ name: 'knee', at: knee }],
    openings: [],
    joints: [],
    dimensions: [
      length('foot', 'foot', vec(0, 0), vec(42, 0)),
      length('height', 'height', vec(0, 0), vec(0, 700)),
      length('reach', 'reach of the arm', vec(0, 700), vec(330, 630), 0),
    ],
    centreLine: { from: vec(24, 0), to: vec(24, 700) },
  });
  return {
    part: made.part,
    routing: {
      ...made.routing,
      differences: [
        { kind: 'left', region: residue, at: knee, reach: 2.1, area: 9, edges: ['inner', 'arm-lower'] },
      ],
      tightest: { radius: 0, at: knee, edge: 'inner' },
    },
  };
}

export const BEARING_TOOLING: Tooling = {
  machine: 'hand-held',
  cutter: { diameter: 12.7, cuttingLength: 38 },
  guide: { kind: 'bushing', outsideDiameter: 19, barrelLength: 5 },
  templateThickness: 9,
  runOn: 40,
  sawAllowance: 2,
  cutters: [],
  blades: [{ width: 10 }],
};

function length(name: string, label: string, from: Vec, to: Vec, along?: number) {
  const value =
    along === undefined
      ? Math.hypot(to.x - from.x, to.y - from.y)
      : Math.abs(dot(subtract(to, from), vec(Math.cos(along), Math.sin(along))));
  return { kind: 'length', name, label, from, to, value, ...(along === undefined ? {} : { along }) } as const;
}

function angleBetween(a: Vec, b: Vec): number {
  return Math.acos(dot(a, b) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y)));
}

function roundedHole(x0: number, y0: number, x1: number, y1: number, r: number, name: string): Outline {
  const side = (from: Vec, to: Vec, which: string): Edge => edge(from, to, `${name}.${which}`, 'routed');
  const corner = (from: Vec, to: Vec, centre: Vec): Edge =>
    arc(from, to, centre, 1, { id: `${name}.corner`, role: 'routed' });
  const anticlockwise = [
    side(vec(x0 + r, y0), vec(x1 - r, y0), 'bottom'),
    corner(vec(x1 - r, y0), vec(x1, y0 + r), vec(x1 - r, y0 + r)),
    side(vec(x1, y0 + r), vec(x1, y1 - r), 'right'),
    corner(vec(x1, y1 - r), vec(x1 - r, y1), vec(x1 - r, y1 - r)),
    side(vec(x1 - r, y1), vec(x0 + r, y1), 'top'),
    corner(vec(x0 + r, y1), vec(x0, y1 - r), vec(x0 + r, y1 - r)),
    side(vec(x0, y1 - r), vec(x0, y0 + r), 'left'),
    corner(vec(x0, y0 + r), vec(x0 + r, y0), vec(x0 + r, y0 + r)),
  ];
  return { edges: anticlockwise.reverse().map(reverseEdge) };
}

/** A template moved in by the offset all round, a blank moved out by the allowance, feed by the hand-held rule. */
export function withRouting(part: SketchedPart, tooling: Tooling = BEARING_TOOLING): PatternCase {
  const guide = tooling.guide.kind === 'bearing' ? tooling.guide.diameter : tooling.guide.outsideDiameter;
  const offset = (guide - tooling.cutter.diameter) / 2;
  const routed = (loopOf: Outline) => loopOf.edges.filter((e) => e.tag.role === 'routed');
  const grain = vec(Math.cos(part.grain), Math.sin(part.grain));
  const ids = (edges: readonly Edge[]) => [...new Set(edges.map((e) => e.tag.id))];
  const routing: Routing = {
    tooling,
    offset,
    template: offsetRegions([part.region], -offset),
    asRouted: [part.region],
    differences: [],
    blank: offsetRegions([{ ...part.region, holes: [] }], tooling.sawAllowance),
    endAllowance: 0,
    offsets: [
      ...ids(routed(part.region.outer)).map((id) => ({ edge: id, offset })),
      ...part.region.holes.flatMap((hole) =>
        ids(routed(hole)).map((id) => ({ edge: id, offset, across: 2 * offset })),
      ),
    ],
    gaps: [],
    openings: [],
    templateSide: 'above',
    feed: [part.region.outer, ...part.region.holes].flatMap((each) =>
      routed(each).map((path): FeedRun => ({ edge: path.tag.id, path, grain: meeting(path, grain) })),
    ),
    fixings:
      part.region.holes.length > 0
        ? [{ kind: 'waste', at: vec(200, 250), width: 8, height: 8, turn: 0 }]
        : [{ kind: 'tape', at: pointBetween(part.centreLine, 0.3), width: 20, height: 90, turn: 0 }],
    depth: { possible: true, passes: [], remarks: [] },
  };
  return { part, routing };
}

function meeting(path: Edge, grain: Vec): FeedRun['grain'] {
  const f = directionAt(path, 0.5);
  const g = dot(grain, f) < 0 ? scale(grain, -1) : grain;
  const n = scale(leftOf(f), -1);
  const sine = dot(g, n);
  if (Math.abs(sine) < Math.sin((2 * Math.PI) / 180)) return 'neutral';
  if (Math.abs(sine) > Math.sin((75 * Math.PI) / 180)) return 'end';
  return sine > 0 ? 'with' : 'against';
}

function pointBetween({ from, to }: { from: Vec; to: Vec }, t: number): Vec {
  return add(from, scale(subtract(to, from), t));
}

export const PATTERN_CASES: Readonly<Record<string, () => PatternCase>> = {
  'splayed-leg': splayedLeg,
  'panel-leg': panelLeg,
  'arched-stretcher': () => archedStretcher(),
  'knee-leg': kneeLeg,
};
