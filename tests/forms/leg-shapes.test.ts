import { describe, expect, test } from 'vitest';
import {
  type Arc,
  directionAt,
  distance,
  lengthOf,
  nearestOnEdges,
  pointAt,
  type Vec,
} from '../../src/geometry/index.ts';
import { DEGREE, edgeCalled, edgesCalled, partOf, refusalOf, sketchOf, standing } from './forms.ts';

const EXACT = 9;
/** A turn (rad) from which a hand would feel a corner; curves must turn far less where their arcs meet. */
const CORNER = 1e-6;

function dimension(form: string, name: string, values = {}): number {
  const found = partOf(form, values).dimensions.find((one) => one.name === name);
  if (found === undefined) throw new Error(`no dimension ${name}`);
  return found.value;
}

describe('a splayed leg', () => {
  test('straight is a parallelogram as wide as its head', () => {
    const { region } = partOf('splayed-leg', { taper: 'none', rail: false });
    expect(region.outer.edges).toHaveLength(4);
    const [foot, head] = ['foot', 'head'].map((id) =>
      lengthOf(edgeCalled(partOf('splayed-leg', { taper: 'none' }), id)),
    );
    expect(foot).toBeCloseTo(64 / Math.cos(6 * DEGREE), EXACT);
    expect(head).toBeCloseTo(foot!, EXACT);
    expect(dimension('splayed-leg', 'outer', { taper: 'none' })).toBeCloseTo(
      dimension('splayed-leg', 'inner', { taper: 'none' }),
      EXACT,
    );
  });

  test.each(['inner', 'outer', 'both'])(
    'tapered on %s has the widths asked for, square to its length',
    (taper) => {
      const { points } = sketchOf('splayed-leg', { taper, head_width: 71, foot_width: 33 });
      expect(points.head_inner!.x - points.head_outer!.x).toBeCloseTo(71, EXACT);
      expect(points.foot_inner!.x - points.foot_outer!.x).toBeCloseTo(33, EXACT);
    },
  );

  test('keeps the untapered edge along its length and moves the other', () => {
    const inner = sketchOf('splayed-leg', { taper: 'inner' }).points;
    expect(inner.head_outer!.x).toBeCloseTo(inner.foot_outer!.x, EXACT);
    expect(inner.head_inner!.x).toBeGreaterThan(inner.foot_inner!.x + 20);
    const outer = sketchOf('splayed-leg', { taper: 'outer' }).points;
    expect(outer.head_inner!.x).toBeCloseTo(outer.foot_inner!.x, EXACT);
    expect(outer.head_outer!.x).toBeLessThan(outer.foot_outer!.x - 20);
  });

  test('stays straight beside the rail and the straight below it, both measured plumb', () => {
    const leg = standing(partOf('splayed-leg', { rail_depth: 80, straight: 25 }));
    const shoulder = edgeCalled(leg, 'shoulder');
    expect(Math.abs(shoulder.to.y - shoulder.from.y)).toBeCloseTo(80, EXACT);
    const straight = edgeCalled(leg, 'inner_head');
    expect(Math.abs(straight.to.y - straight.from.y)).toBeCloseTo(25, EXACT);
    expect(shoulder.tag.role).toBe('joint');
  });

  test('marks the middles of rail and stretcher level, from edge to edge', () => {
    const part = partOf('splayed-leg', {
      stretcher: true,
      stretcher_height: 200,
      levellers: 10,
      taper: 'both',
    });
    const leg = standing(part);
    const turn = Math.PI / 2 - part.up;
    const heightOf = ({ x, y }: { x: number; y: number }) => x * Math.sin(turn) + y * Math.cos(turn);
    const lines = new Map(part.joints.map((joint) => [joint.name, joint]));
    for (const [name, height] of [
      ['rail', 735 - 25 - 10 - 45],
      ['stretcher', 190],
    ] as const) {
      const { from, to } = lines.get(name)!;
      expect(heightOf(from)).toBeCloseTo(height, EXACT);
      expect(heightOf(to)).toBeCloseTo(height, EXACT);
      for (const end of [from, to])
        expect(nearestOnEdges(part.region.outer.edges, end).distance).toBeCloseTo(0, EXACT);
      expect(from.x).toBeLessThan(to.x);
    }
    expect(leg.joints).toHaveLength(2);
  });

  test('gives end angles that add up: 90° less and more the splay', () => {
    expect(dimension('splayed-leg', 'foot_outer')).toBeCloseTo(84 * DEGREE, EXACT);
    expect(dimension('splayed-leg', 'head_outer')).toBeCloseTo(96 * DEGREE, EXACT);
    expect(dimension('splayed-leg', 'foot_inner', { taper: 'none' })).toBeCloseTo(96 * DEGREE, EXACT);
  });

  test('refuses a foot wider than its head, and a stretcher in the rail, saying what is possible', () => {
    expect(refusalOf('splayed-leg', { foot_width: 80 })).toBe(
      'the foot, 80 mm, must not be wider than the head, 64 mm',
    );
    expect(refusalOf('splayed-leg', { stretcher: true, stretcher_height: 650 })).toMatch(
      /588 mm high at most/,
    );
    expect(sketchOf('splayed-leg', { stretcher: true, stretcher_height: 588 }).parts).toHaveLength(1);
  });
});

describe('a knee leg', () => {
  test('carries a level arm with a plumb end of the length and depth asked for', () => {
    const leg = standing(partOf('knee-leg', { arm_length: 310, arm_end: 50, knee_round: 0 }));
    const head = edgeCalled(leg, 'head');
    expect(Math.abs(head.to.y - head.from.y)).toBeCloseTo(0, EXACT);
    expect(lengthOf(head)).toBeCloseTo(310, EXACT);
    const end = edgeCalled(leg, 'arm');
    expect(Math.abs(end.to.x - end.from.x)).toBeCloseTo(0, EXACT);
    expect(lengthOf(end)).toBeCloseTo(50, EXACT);
  });

  test('rounds the outer corner of the knee by the radius asked for, running smoothly into edge and head', () => {
    const leg = partOf('knee-leg', { knee_round: 40 });
    const knee = edgeCalled(leg, 'knee') as Arc;
    expect(knee.radius).toBeCloseTo(40, EXACT);
    expect(knee.tag.role).toBe('routed');
    expect(turnBetween(edgeCalled(leg, 'head'), knee)).toBeCloseTo(0, EXACT);
    expect(turnBetween(knee, edgeCalled(leg, 'outer'))).toBeCloseTo(0, EXACT);
  });

  test('sweeps from leg to arm without a corner', () => {
    const leg = partOf('knee-leg');
    const sweep = ['inner', 'hollow', 'under'].flatMap((id) => edgesCalled(leg, id));
    for (const [index, edge] of sweep.slice(1).entries()) {
      expect(Math.abs(turnBetween(sweep[index]!, edge))).toBeLessThan(CORNER);
    }
  });

  test('turns its grain from the leg towards the arm, to the right, as far as asked', () => {
    expect(partOf('knee-leg', { grain_turn: 30 * DEGREE }).grain).toBeCloseTo(60 * DEGREE, EXACT);
  });

  test('is hollow enough for a large cutter', () => {
    for (const edge of edgesCalled(partOf('knee-leg'), 'hollow')) {
      if (edge.kind === 'arc') expect(edge.radius).toBeGreaterThan(60);
    }
  });
});

describe('a curved leg', () => {
  test('passes through its nails, with the widths asked for', () => {
    const asked = { belly_width: 61, ankle_width: 31, belly_out: 9, ankle_in: 13 };
    const { points, parts } = sketchOf('curved-leg', asked);
    const [leg] = parts;
    for (const nail of ['belly_outer', 'ankle_outer']) {
      expect(nearestOnEdges(edgesCalled(leg!, 'outer'), points[nail]!).distance).toBeCloseTo(0, 6);
    }
    for (const nail of ['belly_inner', 'ankle_inner']) {
      expect(nearestOnEdges(edgesCalled(leg!, 'inner'), points[nail]!).distance).toBeCloseTo(0, 6);
    }
    expect(points.belly_outer!.x).toBeCloseTo(-9, EXACT);
    expect(points.belly_inner!.x).toBeCloseTo(52, EXACT);
    expect(points.ankle_outer!.x).toBeCloseTo(13, EXACT);
    expect(points.ankle_inner!.x).toBeCloseTo(44, EXACT);
  });

  test('has its nails at the shares of the base height asked for, on level lines', () => {
    const asked = { belly_height: 0.66, ankle_height: 0.24, belly_out: 14, splay: 9 * DEGREE };
    const { points } = sketchOf('curved-leg', asked);
    const up = partOf('curved-leg', asked).up;
    const heightOf = ({ x, y }: Vec) => x * Math.cos(up) + y * Math.sin(up);
    for (const side of ['outer', 'inner']) {
      expect(heightOf(points[`belly_${side}`]!)).toBeCloseTo(0.66 * 715, EXACT);
      expect(heightOf(points[`ankle_${side}`]!)).toBeCloseTo(0.24 * 715, EXACT);
    }
  });

  test('has no corner along its curves, nor where the inner one meets the flat for the rail', () => {
    const leg = partOf('curved-leg');
    for (const run of [
      edgesCalled(leg, 'outer'),
      [...edgesCalled(leg, 'inner'), edgeCalled(leg, 'shoulder')],
    ]) {
      for (const [index, edge] of run.slice(1).entries()) {
        expect(Math.abs(turnBetween(run[index]!, edge))).toBeLessThan(CORNER);
      }
    }
  });
});

describe('a panel leg', () => {
  test('is as wide at the foot as asked and narrower at the head by the lean of both sides', () => {
    const panel = partOf('panel-leg', { splay: 5 * DEGREE, foot_spread: 600 });
    expect(lengthOf(edgeCalled(panel, 'head'))).toBeCloseTo(600 - 2 * 710 * Math.tan(5 * DEGREE), EXACT);
    const feet = ['foot', 'foot_right'].map((id) => edgeCalled(panel, id));
    expect(Math.max(...feet.map(({ to, from }) => Math.max(to.x, from.x)))).toBeCloseTo(600, EXACT);
  });

  test('leaves the wood asked for beside, above and below the window', () => {
    const panel = partOf('panel-leg', { stile: 88, above: 104, below: 150 });
    const [window] = panel.region.holes;
    const ys = window!.edges.flatMap(({ from, to }) => [from.y, to.y]);
    expect(Math.min(...ys)).toBeCloseTo(150, EXACT);
    expect(Math.max(...ys)).toBeCloseTo(710 - 104, EXACT);
    for (const [side, edge] of [
      ['window.side', 'outer'],
      ['window.side_right', 'outer_right'],
    ] as const) {
      const middle = pointAt(edgeCalled(panel, side), 0.5);
      expect(nearestOnEdges([edgeCalled(panel, edge)], middle).distance).toBeCloseTo(88, EXACT);
    }
  });

  test('rounds the window and the hollow by the radii asked for, which a cutter of 20 mm reaches by default', () => {
    const panel = partOf('panel-leg', { window_round: 37, hollow_round: 22 });
    const radii = [...panel.region.outer.edges, ...panel.region.holes.flatMap(({ edges }) => edges)].flatMap(
      (edge) => (edge.kind === 'arc' ? [edge.radius] : []),
    );
    expect(radii.map((radius) => Number(radius.toFixed(EXACT))).sort()).toEqual([22, 22, 37, 37, 37, 37]);
    const { outer, holes } = partOf('panel-leg').region;
    const least = [outer, ...holes].flatMap(({ edges }) =>
      edges.flatMap((edge) => (edge.kind === 'arc' ? [edge.radius] : [])),
    );
    expect(Math.min(...least)).toBeGreaterThan(10);
  });

  test('starts the window in its middle and marks the stretcher in the wood above or below it', () => {
    const panel = partOf('panel-leg');
    const { points } = sketchOf('panel-leg');
    expect(distance(panel.openings[0]!.plunge, points.window_middle!)).toBeCloseTo(0, EXACT);
    expect(panel.joints[0]!.from.y).toBeCloseTo(710 - 60, EXACT);
    expect(partOf('panel-leg', { stretcher: 'below' }).joints[0]!.from.y).toBeCloseTo((30 + 170) / 2, EXACT);
    expect(partOf('panel-leg', { stretcher: 'none' }).joints).toEqual([]);
  });

  test('stands on two feet of the length asked for, or on the whole width', () => {
    const hollowed = partOf('panel-leg', { foot_length: 99, hollow: 40 });
    expect(lengthOf(edgeCalled(hollowed, 'foot'))).toBeCloseTo(99, EXACT);
    expect(edgeCalled(hollowed, 'hollow').from.y).toBeCloseTo(40, EXACT);
    const arched = partOf('panel-leg', { foot: 'arched', foot_length: 99, hollow: 40 });
    expect(pointAt(edgeCalled(arched, 'arch'), 0.5).y).toBeCloseTo(40, EXACT);
    expect(lengthOf(edgeCalled(partOf('panel-leg', { foot: 'straight' }), 'foot'))).toBeCloseTo(560, EXACT);
  });

  test('gives the largest round that fits the window, and takes it', () => {
    const largest = /(\S+) mm is the largest/.exec(refusalOf('panel-leg', { window_round: 300 }))?.[1];
    expect(refusalOf('panel-leg', { window_round: Number(largest) })).toBe('');
    expect(refusalOf('panel-leg', { window_round: Number(largest) + 0.2 })).toMatch(/does not fit/);
  });
});

/** By how much the way turns from one edge to the next, rad. */
function turnBetween(
  first: Parameters<typeof directionAt>[0],
  second: Parameters<typeof directionAt>[0],
): number {
  const [a, b] = [directionAt(first, 1), directionAt(second, 0)];
  return Math.atan2(a.x * b.y - a.y * b.x, a.x * b.x + a.y * b.y);
}
