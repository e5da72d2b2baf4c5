import { describe, expect, test } from 'vitest';
import {
  type Bore,
  type JointWork,
  joinBase,
  type Pocket,
  partsToMake,
  type StandingBase,
  type Tenon,
} from '../../../src/base/index.ts';
import { areaOfRegions, boundsOfRegions, polygonOutline, vec, vec3 } from '../../../src/geometry/index.ts';
import type { JointSketch } from '../../../src/sketch/index.ts';
import { board, joint, partOf, place, shaped, stand } from '../hand-made.ts';

const degrees = (angle: number): number => (angle * Math.PI) / 180;

/** A rail 90 deep and 24 thick whose square end butts on the right edge of an upright post 60 wide and 40 thick, 8 back from its face. */
function postAndRail(kind: JointSketch['kind'], apart = 0, rail = board('rail', 90, 500, 24)): StandingBase {
  return stand(
    [board('post', 60, 700, 40), rail],
    [
      place('post', 'post', { label: 'Post' }),
      place('rail', 'rail', {
        label: 'Rail',
        at: vec3(60 + apart, 8, 400),
        along: vec3(1, 0, 0),
        pin: vec(90, 0),
      }),
    ],
    { joints: [joint('rail joint', kind, 'rail', 'post')] },
  );
}

const workOf = (base: StandingBase, options: Parameters<typeof joinBase>[1] = {}) => {
  const { joints, findings } = joinBase(base, options);
  const [first, second] = joints[0]?.sides.map(({ work }) => work) ?? [];
  return { joint: joints[0]!, first: first ?? [], second: second ?? [], findings };
};

const measure = (work: JointWork, from: string, to: string): number | undefined =>
  work.kind === 'pocket'
    ? undefined
    : work.measures.find((each) => each.from === from && each.to === to)?.value;

describe('loose tenons', () => {
  const looseTenons = [{ thickness: 8, width: 40, length: 40 }];

  test('lie in the middle of the contact, and are marked out from face side, face edge and end', () => {
    const { joint: made, first, second, findings } = workOf(postAndRail('loose-tenons'), { looseTenons });
    expect(findings).toEqual([]);
    expect(made.loose).toEqual({ kind: 'tenon', size: looseTenons[0], count: 1 });
    const [inRail, inPost] = [first[0] as Bore, second[0] as Bore];
    // In the rail: middle of 24 thick, middle of 90 deep.
    expect(inRail.face).toBe('bottom');
    expect(measure(inRail, 'face side', 'centre')).toBeCloseTo(12, 9);
    expect(measure(inRail, 'face side', 'near side')).toBeCloseTo(8, 9);
    expect(measure(inRail, 'face edge', 'near side')).toBeCloseTo(25, 9);
    // In the post: 8 back and half of 24; its upper end stands 700 high, the rail from 400 to 490.
    expect(inPost.face).toBe('right');
    expect(measure(inPost, 'face side', 'centre')).toBeCloseTo(20, 9);
    expect(measure(inPost, 'end', 'centre')).toBeCloseTo(700 - 445, 9);
    expect(measure(inPost, 'end', 'near side')).toBeCloseTo(700 - 445 - 20, 9);
  });

  test('that do not fit are named, with what would', () => {
    const thin = board('rail', 90, 500, 16);
    const { first, findings } = workOf(postAndRail('loose-tenons', 0, thin), {
      looseTenons: [{ thickness: 12, width: 40, length: 60 }],
    });
    expect(first).toEqual([]);
    expect(findings).toMatchObject([{ code: 'joint.none-fits', severity: 'stop', measured: { value: 12 } }]);
    const would = /made to measure, ([\d.]+) mm × ([\d.]+) mm × ([\d.]+) mm/.exec(findings[0]!.cure!)!;
    const [thickness, width, length] = would.slice(1).map(Number);
    const cured = workOf(postAndRail('loose-tenons', 0, thin), {
      looseTenons: [{ thickness: thickness!, width: width!, length: length! }],
    });
    expect(cured.findings).toEqual([]);
    expect(cured.first).toHaveLength(1);
  });

  test('that come out into a window behind the joint are a stop, with the depth that would do', () => {
    // A window whose near side stands 15 behind the mating edge, as high as the mortise, but not behind the places first asked.
    const window = polygonOutline([vec(30, 447), vec(30, 450), vec(45, 450), vec(45, 447)], {
      id: 'window',
      role: 'routed',
    });
    const post = partOf('post', board('post', 60, 700, 40).region.outer, 40, [window]);
    const base = stand(
      [post, board('rail', 90, 500, 24)],
      [
        place('post', 'post', { label: 'Post' }),
        place('rail', 'rail', { label: 'Rail', at: vec3(60, 8, 400), along: vec3(1, 0, 0), pin: vec(90, 0) }),
      ],
      { joints: [joint('rail joint', 'loose-tenons', 'rail', 'post')] },
    );
    const { second, findings } = workOf(base, { looseTenons });
    const depth = (second[0] as Bore).depth;
    expect(depth).toBeCloseTo(20 + 1.5875, 9);
    expect(findings).toMatchObject([
      { code: 'joint.breaks-through', severity: 'stop', part: 'post', edges: ['window'] },
    ]);
    expect(findings[0]!.measured!.value).toBeCloseTo(15 - depth, 6);
    // 15 less the wall of 1/4 in.
    expect(findings[0]!.cure).toContain('8.7 mm deep');
  });
});

test('dowels stand in pairs', () => {
  const {
    joint: made,
    first,
    second,
  } = workOf(postAndRail('dowels'), { dowels: [{ diameter: 8, length: 40 }] });
  expect(made.loose?.count).toBeGreaterThanOrEqual(2);
  expect(first.map(({ kind }) => kind)).toEqual(second.map(() => 'hole'));
  // Half of a round hole across the grain is end grain, all of one along it is not.
  expect(made.glue.longGrain).toBeCloseTo(0.5, 2);
});

test('a mortise and tenon makes the first part longer by the tenon', () => {
  const base = postAndRail('mortise-and-tenon');
  const joined = joinBase(base);
  const [tenon] = joined.joints[0]!.sides[0].work as readonly Tenon[];
  const [mortise] = joined.joints[0]!.sides[1].work as readonly Bore[];
  // A third of 24; five times as long, or as much as two thirds of 60 allow less 1/16 in.
  expect(tenon!.thickness).toBe(8);
  expect(tenon!.length).toBeCloseTo(40 - 1.5875, 9);
  expect(mortise!.depth).toBeCloseTo(40, 9);
  expect(mortise!.length).toBeCloseTo(tenon!.width, 9);
  const rail = partsToMake(base, joined).find(({ name }) => name === 'rail')!;
  const box = boundsOfRegions(rail.silhouette);
  expect(box.maxY - box.minY).toBeCloseTo(500 + tenon!.length, 9);
  expect(boundsOfRegions([rail.sketch.region]).minY).toBe(0);
});

test('a tenon square to a slanting shoulder is told to be short in its grain', () => {
  const lean = degrees(12);
  const slope = Math.tan(lean);
  const leg = shaped('leg', [vec(0, 0), vec(60, 0), vec(60 + 700 * slope, 700), vec(700 * slope, 700)], 40);
  const base = stand(
    [leg, board('rail', 90, 500, 24)],
    [
      place('leg', 'leg'),
      place('rail', 'rail', {
        at: vec3(60 + 400 * slope - 200, 8, 400),
        along: vec3(1, 0, 0),
        pin: vec(90, 0),
        trims: [{ plane: 'leg edge', otherSide: false }],
      }),
    ],
    {
      planes: {
        'leg edge': {
          kind: 'through',
          through: vec3(60, 0, 0),
          facing: vec3(-Math.cos(lean), 0, Math.sin(lean)),
        },
      },
      joints: [joint('rail joint', 'mortise-and-tenon', 'rail', 'leg')],
    },
  );
  const { findings } = joinBase(base);
  expect(findings).toMatchObject([{ code: 'joint.short-grain', part: 'rail' }]);
  expect(findings[0]!.measured!.value).toBeCloseTo(slope, 9);
});

describe('parts that do not meet', () => {
  test.each([
    [0.2, 'joint.no-contact', /0.2 mm longer/],
    [-3, 'joint.overlap', /3.0 mm shorter/],
  ])('by %d mm', (apart, code, cure) => {
    const { joints, findings } = joinBase(postAndRail('loose-tenons', apart));
    expect(joints).toEqual([]);
    expect(findings).toMatchObject([{ code, severity: 'stop', limit: { value: 0 } }]);
    expect(findings[0]!.measured!.value).toBeCloseTo(apart, 9);
    expect(findings[0]!.cure).toMatch(cure);
  });
});

describe('two rails that meet in a post', () => {
  // Both at one height, their joints in the middle of a post 45 square.
  const cornerOf = (kind: 'loose-tenons' | 'dowels'): StandingBase =>
    stand(
      [board('post', 45, 700, 45), board('rail', 90, 500, 24)],
      [
        place('post', 'post', { label: 'Post' }),
        place('side', 'rail', { at: vec3(45, 10.5, 400), along: vec3(1, 0, 0), pin: vec(90, 0) }),
        place('back', 'rail', {
          at: vec3(10.5, 45, 490),
          along: vec3(0, 1, 0),
          face: vec3(-1, 0, 0),
          pin: vec(90, 0),
        }),
      ],
      {
        joints: [joint('side', kind, 'side', 'post'), joint('back', kind, 'back', 'post')],
      },
    );

  test('mortises: tenons can be mitred, or be as short as keeps a wall between them', () => {
    const { findings } = joinBase(cornerOf('loose-tenons'), {
      looseTenons: [{ thickness: 8, width: 40, length: 40 }],
    });
    expect(findings).toMatchObject([
      {
        code: 'joint.meets-other',
        severity: 'caution',
        part: 'post',
        joint: 'side back',
        measured: { value: 0 },
      },
    ]);
    // Each comes to within 18.5 of the other's face; corner to corner a wall of 6.35 is left at 18.5 − 6.35 / √2 = 14.01.
    expect(findings[0]!.cure).toMatch(/14.0 mm and 14.0 mm deep.*mitre/);
  });

  test('holes: one would be drilled through the dowels of the other', () => {
    const { findings } = joinBase(cornerOf('dowels'), { dowels: [{ diameter: 8, length: 50 }] });
    expect(findings).toMatchObject([
      {
        code: 'joint.meets-other',
        severity: 'stop',
        part: 'post',
        joint: 'side back',
        measured: { value: 0 },
      },
    ]);
    expect(findings[0]!.message).toMatch(/cut through/);
    expect(findings[0]!.cure).not.toContain('mitre');
  });

  test('shorter dowels of the list are taken where longer ones would be drilled through', () => {
    const dowels = [
      { diameter: 8, length: 50 },
      { diameter: 6, length: 26 },
    ];
    const { joints, findings } = joinBase(cornerOf('dowels'), { dowels });
    expect(joints.map(({ loose }) => loose?.size)).toEqual([dowels[1], dowels[1]]);
    expect(findings).toEqual([]);
  });
});

describe('halved', () => {
  /** Two bars crossing at right angles, lying level; the second lies `raised` higher. */
  const cross = (thick: number, other: number, raised: number, long = 400): StandingBase =>
    stand(
      [board('lower', 60, 400, thick), board('upper', 50, long, other)],
      [
        place('lower', 'lower', { at: vec3(-30, -200, 0), along: vec3(0, 1, 0), face: vec3(0, 0, 1) }),
        place('upper', 'upper', {
          at: vec3(-200, 25, raised),
          along: vec3(1, 0, 0),
          face: vec3(0, 0, 1),
        }),
      ],
      { joints: [joint('crossing', 'halved', 'lower', 'upper')] },
    );

  test.each([
    ['level and alike', 30, 30, 0, 15, 15],
    ['one raised', 30, 30, 10, 10, 10],
    // The thin bar's middle lies 10 higher, flush on top: each loses half of its 20.
    ['a thinner one flush on top', 40, 20, 0, 10, 10],
    // 5 under the face of the thick one: the pocket in that reaches down to the thin one's middle.
    ['a thinner one sunk', 40, 20, -5, 15, 10],
  ])('%s', (_, thick, other, raised, first, second) => {
    const base = cross(thick, other, raised);
    const {
      joint: made,
      first: [a],
      second: [b],
      findings,
    } = workOf(base);
    const [lower, upper] = [a as Pocket, b as Pocket];
    expect(findings).toEqual([]);
    expect(areaOfRegions(lower.region)).toBeCloseTo(60 * 50, 9);
    expect(made.glue).toEqual({ area: expect.closeTo(3000, 9), longGrain: 1 });
    // The lower loses from its face side, the upper from its back.
    expect([lower.fromZ, lower.toZ]).toEqual([expect.closeTo(0, 9), expect.closeTo(-first, 9)]);
    expect([upper.fromZ, upper.toZ]).toEqual([expect.closeTo(second - other, 9), expect.closeTo(-other, 9)]);
    expect([...lower.corners, ...upper.corners]).toEqual([]);
  });

  test('an end let into a bar leaves round corners: the cutter cannot square them', () => {
    // The upper bar ends 20 inside the lower one.
    const {
      first: [a],
    } = workOf(cross(30, 30, 0, 190), { cutter: 12 });
    const { corners } = a as Pocket;
    expect(corners).toHaveLength(2);
    for (const { angle, residue } of corners) {
      expect(angle).toBeCloseTo(Math.PI / 2, 9);
      // A quarter of what a circle leaves of its square (design of the craft): r² (1 − π/4), r (√2 − 1).
      expect(residue.area).toBeCloseTo(36 * (1 - Math.PI / 4), 9);
      expect(residue.reach).toBeCloseTo(6 * (Math.SQRT2 - 1), 9);
    }
  });

  test('its section shows the halves filling each other, none twice', () => {
    const { joint: made } = workOf(cross(30, 30, 0));
    const [first, second] = made.section!.parts;
    const left = ({ regions, bores }: typeof first & object) => areaOfRegions(regions) - areaOfRegions(bores);
    // Along the joint's long direction the plane runs along the first bar's width: 60 × 30 less its half, and the whole second bar.
    expect(left(first!) + left(second!)).toBeCloseTo(areaOfRegions(second!.regions), 6);
  });
});

test('what is halved away is no wood for a mortise from the other side', () => {
  // Two bars 30 thick crossing level, and a post under the crossing whose head butts on the back of the lower one.
  const base = stand(
    [board('lower', 60, 400, 30), board('upper', 50, 400, 30), board('post', 50, 300, 40)],
    [
      place('lower', 'lower', { at: vec3(-30, -200, 30), along: vec3(0, 1, 0), face: vec3(0, 0, 1) }),
      place('upper', 'upper', { at: vec3(-200, 25, 30), along: vec3(1, 0, 0), face: vec3(0, 0, 1) }),
      place('post', 'post', { at: vec3(-25, -20, -300) }),
    ],
    {
      joints: [
        joint('head', 'loose-tenons', 'post', 'lower'),
        joint('other head', 'loose-tenons', 'post', 'upper'),
        joint('crossing', 'halved', 'lower', 'upper'),
      ],
    },
  );
  const { joints } = joinBase(base, {
    looseTenons: [{ thickness: 5, width: 15, length: 25 }],
    tenonRules: { leastDepth: 1 },
  });
  // The upper bar has lost its back where the post stands: it touches nothing.
  expect(joints.map(({ id }) => id)).toEqual(['head', 'crossing']);
  const [mortise] = joints[0]!.sides[1].work as readonly Bore[];
  // 15 of the lower bar are left: less the wall of 1/4 in behind the mortise.
  expect(mortise!.depth).toBeCloseTo(15 - 6.35, 6);
  expect(joints[0]!.section!.walls.some(({ value }) => Math.abs(value - 6.35) < 1e-6)).toBe(true);
});

describe('glued and screwed', () => {
  test('glue on end grain is told to be weak, with the dowels that would hold', () => {
    const { joint: made, findings } = workOf(postAndRail('glued'));
    expect(made.glue).toEqual({ area: expect.closeTo(90 * 24, 6), longGrain: 0 });
    expect(findings).toMatchObject([{ code: 'joint.end-grain', severity: 'caution', part: 'rail' }]);
    expect(findings[0]!.cure).toMatch(/^[2-9] dowels of/);
  });

  test('boards glued edge to edge hold by long grain', () => {
    const base = stand(
      [board('left', 60, 400, 20), board('right', 60, 400, 20)],
      [place('left', 'left'), place('right', 'right', { at: vec3(60, 0, 0) })],
      { joints: [joint('glue line', 'glued', 'left', 'right')] },
    );
    const { joint: made, findings } = workOf(base);
    expect(made.glue).toEqual({ area: expect.closeTo(400 * 20, 6), longGrain: 1 });
    expect(findings).toEqual([]);
  });

  test('a screw takes the holes of the table', () => {
    const base = stand(
      [board('left', 60, 400, 20), board('right', 60, 400, 20)],
      [place('left', 'left'), place('right', 'right', { at: vec3(60, 0, 0) })],
      { joints: [joint('screws', 'screwed', 'left', 'right')] },
    );
    // No. 8: 11/64 in clearance, 7/64 in pilot in hardwood (wood-screw chart, plate 6B; source in shared/tables/wood-screws.json).
    const { joint: made } = workOf(base);
    expect(made.screw).toMatchObject({ number: 8 });
    expect(made.screw!.shank).toBeCloseTo((25.4 * 11) / 64, 9);
    expect(made.screw!.pilot.hardwood).toBeCloseTo((25.4 * 7) / 64, 9);
  });
});

test('the section along the drilled line carries the least walls', () => {
  const { joint: made } = workOf(postAndRail('loose-tenons'), {
    looseTenons: [{ thickness: 8, width: 40, length: 40 }],
  });
  const { parts, walls } = made.section!;
  expect(parts.map(({ bores }) => bores.length)).toEqual([1, 1]);
  const depth = 20 + 1.5875;
  for (const { bores } of parts) expect(areaOfRegions(bores)).toBeCloseTo(40 * depth, 6);
  const values = walls.map(({ value }) => Math.round(value * 1e4) / 1e4).sort((a, b) => a - b);
  // In the post: behind 60 − depth, above 700 − 465, below 425; in the rail: behind 500 − depth, 25 at either side.
  expect(values).toEqual([25, 25, 60 - depth, 235, 425, 500 - depth].map((v) => Math.round(v * 1e4) / 1e4));
});
