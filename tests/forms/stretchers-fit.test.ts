import { describe, expect, test } from 'vitest';
import {
  areaOfRegions,
  intersectRegions,
  lengthOf,
  moveBy,
  nearestOnEdges,
  pointAt,
  type Region,
  STAY,
  transformPoint,
  transformRegion,
  turnBy,
  type Vec,
} from '../../src/geometry/index.ts';
import type { SketchedPart } from '../../src/sketch/index.ts';
import {
  DEGREE,
  edgeCalled,
  edgesCalled,
  partOf,
  refusalOf,
  sketchOf,
  standing,
  type Values,
} from './forms.ts';

const EXACT = 9;
const SPREAD = 900;
const HEIGHTS = { overall_height: 744, top_thickness: 24, levellers: 7 };

/** Where the stretcher stands in the frame: its middle between the legs, its lower corners at a height above the feet. */
function placed(stretcher: SketchedPart, level: number): SketchedPart {
  const upright = standing(stretcher);
  const low = upright.region.outer.edges.find(({ tag }) => tag.id === 'lower' || tag.id === 'arch')!;
  const { x } = pointAt(low, 0.5);
  // The lower corner of a shoulder is the origin, and a turn about it leaves it there.
  return { ...upright, region: transformRegion(upright.region, moveBy(SPREAD / 2 - x, level)) };
}

/** A left leg and the right one, as they stand: outside to outside at the spread. */
function pairOfLegs(leg: SketchedPart): readonly [SketchedPart, SketchedPart] {
  const left = standing(leg);
  const other = transformRegion(left.region, { ...STAY, mirrored: true, shift: { x: SPREAD, y: 0 } });
  return [left, { ...left, region: other }];
}

function overlap(a: Region, b: Region): number {
  return areaOfRegions(intersectRegions([a], [b]));
}

/** How far the ends of a stretcher's shoulders lie from the inner edges of the legs. */
function gaps(
  stretcher: SketchedPart,
  legs: readonly SketchedPart[],
  ids: readonly string[],
): readonly number[] {
  const inner = legs.flatMap((leg) => edgesCalled(leg, 'inner'));
  const corners: readonly Vec[] = ids
    .flatMap((id) => edgesCalled(stretcher, id))
    .flatMap(({ from, to }) => [from, to]);
  return corners.map((corner) => nearestOnEdges(inner, corner).distance);
}

/** Lean of a leg's inner edge from plumb and the level length of its foot, as the leg's pattern gives them. */
function figuresFor(leg: SketchedPart): Values {
  const given = (name: string) => leg.dimensions.find((one) => one.name === name)!.value;
  return { splay: given('foot_inner') - Math.PI / 2, foot_length: given('foot') };
}

const LEGS: readonly Values[] = [
  { taper: 'none', splay: 6 * DEGREE },
  { taper: 'none', splay: 0 },
  { taper: 'inner', splay: 4 * DEGREE },
  { taper: 'both', splay: 9 * DEGREE },
];

describe.each(LEGS.map((values) => [JSON.stringify(values), values] as const))(
  'between legs %s',
  (_, values) => {
    const leg = partOf('splayed-leg', { ...HEIGHTS, ...values, rail: false, straight: 0 });
    const legs = pairOfLegs(leg);
    const shared = { ...HEIGHTS, ...figuresFor(leg), foot_spread: SPREAD, height: 160 };

    test('a straight stretcher fits without a gap and without a clash', () => {
      const stretcher = placed(partOf('straight-stretcher', shared), 160 - HEIGHTS.levellers);
      for (const gap of gaps(stretcher, legs, ['shoulder', 'shoulder_far'])) expect(gap).toBeCloseTo(0, 8);
      for (const { region } of legs) expect(overlap(region, stretcher.region)).toBeLessThan(1e-4);
    });

    test('an arched stretcher fits as well', () => {
      const stretcher = placed(partOf('arched-stretcher', shared), 160 - HEIGHTS.levellers);
      for (const gap of gaps(stretcher, legs, ['end', 'end_far'])) expect(gap).toBeCloseTo(0, 8);
    });

    test('directly under the top they reach up to it', () => {
      const base = 744 - 24 - 7;
      for (const form of ['straight-stretcher', 'arched-stretcher']) {
        const sketch = partOf(form, { ...shared, place: 'high' });
        const depth = sketch.dimensions.find(({ name }) => name === 'depth')!.value;
        const stretcher = placed(sketch, base - depth);
        const ids = form === 'arched-stretcher' ? ['end', 'end_far'] : ['shoulder', 'shoulder_far'];
        for (const gap of gaps(stretcher, legs, ids)) expect(gap).toBeCloseTo(0, 8);
        for (const { from, to } of edgesCalled(stretcher, 'upper')) {
          expect([from.y, to.y].every((y) => Math.abs(y - base) < 1e-9)).toBe(true);
        }
      }
    });

    test('is shorter above than below by twice its depth times the tangent of the splay', () => {
      const stretcher = partOf('straight-stretcher', { ...shared, depth: 90 });
      const [lower, upper] = ['lower', 'upper'].map((id) => lengthOf(edgeCalled(stretcher, id)));
      const splay = figuresFor(leg).splay as number;
      expect(lower! - upper!).toBeCloseTo(2 * 90 * Math.tan(splay), EXACT);
    });
  },
);

describe('a stretcher tenoned through its legs', () => {
  const leg = partOf('splayed-leg', { ...HEIGHTS, taper: 'none', splay: 7 * DEGREE });
  const across = 64 / Math.cos(7 * DEGREE);
  const asked = {
    ...HEIGHTS,
    ...figuresFor(leg),
    foot_spread: SPREAD,
    height: 200,
    leg_across: across,
    projection: 48,
    ends: 'wedged',
  };
  const sketch = partOf('straight-stretcher', asked);
  const stretcher = placed(sketch, 200 - HEIGHTS.levellers);
  const legs = pairOfLegs(leg);

  test('has its shoulders on the legs', () => {
    const shoulders = ['shoulder', 'shoulder_low', 'shoulder_far', 'shoulder_low_far'];
    for (const gap of gaps(stretcher, legs, shoulders)) expect(gap).toBeCloseTo(0, 8);
  });

  test('stands out of them by what was asked, level', () => {
    const outer = edgeCalled(legs[1], 'outer');
    const tips = ['tip', 'tip_far'].map((id) => edgeCalled(stretcher, id));
    const right = tips.find(({ from }) => from.x > SPREAD / 2)!;
    for (const corner of [right.from, right.to]) {
      const apart = nearestOnEdges([outer], corner).distance;
      expect(apart / Math.cos(7 * DEGREE)).toBeCloseTo(48, EXACT);
    }
  });

  test('has slots for wedges that start just inside the outer faces of the legs, so that they draw', () => {
    expect(sketch.openings.map(({ name }) => name)).toEqual(['wedge', 'wedge_far']);
    const { points } = sketchOf('straight-stretcher', asked);
    const face = transformPoint(points.tenon_at!, moveBy(0, -across));
    expect(points.wedge_in!.y + 14 / 2 - face.y).toBeCloseTo(3, EXACT);
    expect(points.wedge_out!.y - 14 / 2 - face.y).toBeCloseTo(-24, EXACT);
  });

  test('must stand out far enough for the wedge', () => {
    expect(refusalOf('straight-stretcher', { ...asked, projection: 20 })).toMatch(/36 mm is the least/);
    expect(refusalOf('straight-stretcher', { ...asked, projection: 36 })).toBe('');
  });
});

describe('an arched stretcher', () => {
  const asked = { arch_rise: 52, landing: 60, spring_round: 0, depth: 118 };

  test('rises by what was asked in the middle, between springs where they were asked', () => {
    const stretcher = partOf('arched-stretcher', asked);
    const arch = edgeCalled(stretcher, 'arch');
    expect(pointAt(arch, 0.5).x).toBeCloseTo(52, EXACT);
    expect(lengthOf(edgeCalled(stretcher, 'lower'))).toBeCloseTo(60, EXACT);
    expect(stretcher.dimensions.find(({ name }) => name === 'waist')?.value).toBeCloseTo(118 - 52, EXACT);
  });

  test('is alike both ways: turned over end for end nothing changes', () => {
    const { region } = partOf('arched-stretcher', { ...asked, upper_rise: 24, spring_round: 70 });
    const length = lengthBetweenEnds(region);
    const over = transformRegion(transformRegion(region, { ...STAY, mirrored: true }), {
      ...turnBy(Math.PI),
      shift: { x: 0, y: length },
    });
    expect(overlap(region, over)).toBeCloseTo(areaOfRegions([region]), 4);
    expect(areaOfRegions([over])).toBeCloseTo(areaOfRegions([region]), 6);
  });

  test('springs straight from its ends where no landing is asked', () => {
    const ids = partOf('arched-stretcher', { landing: 0 }).region.outer.edges.map(({ tag }) => tag.id);
    expect(ids.sort()).toEqual(['arch', 'end', 'end_far', 'upper']);
  });

  test('must leave 20 mm of wood over the arch', () => {
    expect(refusalOf('arched-stretcher', { depth: 60 })).toBe(
      'an arch of 42 mm leaves 18 mm in the middle: a rise of 40 mm is the most',
    );
    expect(refusalOf('arched-stretcher', { depth: 60, arch_rise: 40 })).toBe('');
  });
});

test('lower corners are cut as asked, at both ends', () => {
  const rounded = partOf('straight-stretcher', { corners: 'rounded', corner_size: 18 });
  const rounds = rounded.region.outer.edges.flatMap((edge) => (edge.kind === 'arc' ? [edge.radius] : []));
  expect(rounds).toHaveLength(2);
  for (const radius of rounds) expect(radius).toBeCloseTo(18, EXACT);
  const chamfered = partOf('straight-stretcher', { corners: 'chamfered', corner_size: 18, splay: 0 });
  for (const id of ['corner', 'corner_far']) {
    expect(lengthOf(edgeCalled(chamfered, id))).toBeCloseTo(18 * Math.SQRT2, EXACT);
  }
});

test('a long slot is centred and as long and wide as asked', () => {
  const stretcher = partOf('straight-stretcher', { slot: true, slot_width: 26, slot_length: 0.5 });
  const length = lengthOf(edgeCalled(stretcher, 'lower'));
  const [slot] = stretcher.region.holes;
  const ys = slot!.edges.flatMap((edge) => [pointAt(edge, 0).y, pointAt(edge, 0.5).y]);
  expect(Math.min(...ys)).toBeCloseTo(length / 4, EXACT);
  expect(Math.max(...ys)).toBeCloseTo((length * 3) / 4, EXACT);
  expect(lengthOf(edgeCalled(stretcher, 'slot.end'))).toBeCloseTo((Math.PI * 26) / 2, EXACT);
});

function lengthBetweenEnds({ outer }: Region): number {
  return Math.max(...outer.edges.map(({ from }) => from.y));
}
