import { describe, expect, test } from 'vitest';
import type { MadePart, StandingBase } from '../../../src/base/index.ts';
import { joinBase } from '../../../src/base/joints/join-base.ts';
import { partsToMake } from '../../../src/base/made/parts-to-make.ts';
import { blankOfPart } from '../../../src/base/whole/blank-of-part.ts';
import { cutList } from '../../../src/base/whole/cut-list.ts';
import { cutsOfPart } from '../../../src/base/whole/cuts-of-part.ts';
import { errorsOfBase } from '../../../src/base/whole/errors-of-base.ts';
import { partForPattern } from '../../../src/base/whole/part-for-pattern.ts';
import { arc, type Outline, vec, vec3 } from '../../../src/geometry/index.ts';
import type { BasePlane, SketchedPart } from '../../../src/sketch/index.ts';
import { fourLegs } from '../four-legs.ts';
import { board, joint, partOf, place, shaped, stand } from '../hand-made.ts';

const degrees = (angle: number): number => (angle * Math.PI) / 180;
const none = { joints: [] };
const SAW = {
  swing: { left: degrees(45), right: degrees(45) },
  tilt: { left: degrees(45), right: 0 },
};

const through = (at: readonly [number, number, number], facing: readonly [number, number, number]) =>
  ({ kind: 'through', through: vec3(...at), facing: vec3(...facing) }) as const;

/** A part lying face up with its length along x from the origin and its left edge towards +y, cut by these planes. */
function lying(part: SketchedPart, planes: Readonly<Record<string, BasePlane>> = {}): StandingBase {
  return stand(
    [part],
    [
      place(part.name, part.name, {
        along: vec3(1, 0, 0),
        face: vec3(0, 0, 1),
        trims: Object.keys(planes).map((plane) => ({ plane, otherSide: false })),
      }),
    ],
    { planes },
  );
}

const madeOf = (base: StandingBase): MadePart => partsToMake(base, none)[0]!;
const made = (part: SketchedPart, planes: Readonly<Record<string, BasePlane>> = {}): MadePart =>
  madeOf(lying(part, planes));

const ENDS = { near: through([100, 0, 0], [-1, 0, 0]), far: through([600, 0, 0], [1, 0, 0]) };

/** A board 60 × 700 both of whose edges are hollow. */
function hollow(): SketchedPart {
  const tag = (id: string) => ({ id, role: 'routed' }) as const;
  const { edges } = board('hollow', 60, 700, 30).region.outer;
  const bent = [
    edges[0]!,
    arc(vec(60, 0), vec(60, 700), vec(60 + 6125, 350), -1, tag('right')),
    edges[2]!,
    arc(vec(0, 700), vec(0, 0), vec(-6125, 350), -1, tag('left')),
  ];
  return partOf('hollow', { edges: bent } as Outline, 30);
}

describe('how a part lies at the saw', () => {
  test('a board lies on either edge, and its cut is counted from the other', () => {
    const rail = made(board('rail', 60, 700, 30), ENDS);
    const { blank, edge } = blankOfPart(
      rail,
      rail.cuts.find(({ name }) => name === 'far'),
    );
    expect(edge).toBe('left');
    expect(blank).toMatchObject({
      left: expect.closeTo(0, 9),
      right: expect.closeTo(60, 9),
      thickness: 30,
      straight: 'both',
      faceEdge: 'left',
    });
    expect(blank.fenceAngle).toBeCloseTo(Math.PI / 2, 12);
    expect(blank.reference).toMatchObject({ kind: 'cut', plane: { point: { y: expect.closeTo(100, 9) } } });
  });

  test('a taper lies on its straight edge only, the one that joints are measured from', () => {
    // The right edge is full length, the left one leans 20 over 500 and is straight above that, too short for a fence.
    const corners = [vec(0, 500), vec(20, 0), vec(60, 0), vec(60, 700), vec(0, 700)];
    const tags = ['taper', 'bottom', 'right', 'top', 'left'];
    const leg = partOf(
      'leg',
      {
        edges: corners.map((from, i) => ({
          kind: 'line' as const,
          from,
          to: corners[(i + 1) % corners.length]!,
          tag: { id: tags[i]!, role: 'routed' as const },
        })),
      },
      30,
    );
    const { blank, edge } = blankOfPart(made(leg));
    expect(edge).toBe('right');
    expect(blank).toMatchObject({ straight: 'right', faceEdge: 'right', left: 0, right: 60 });
  });

  test('a part with no straight edge is sawn in its blank, whose face edge runs along the grain', () => {
    const { blank, edge } = blankOfPart(made(hollow(), ENDS));
    expect(edge).toBeUndefined();
    expect(blank.fenceAngle).toBeCloseTo(Math.PI / 2, 12);
    expect(blank.straight).toBe('both');
  });
});

describe('the cuts of a part', () => {
  test('square ends need nothing but a square saw, and their lengths are those of the part', () => {
    const [near, far] = cutsOfPart(made(board('rail', 60, 700, 30), ENDS), SAW);
    for (const { cut } of [near!, far!]) {
      if (cut.kind !== 'end') throw new Error('an end');
      expect(cut.square).toBe(true);
      for (const { length } of cut.arrises.all) expect(length).toBeCloseTo(500, 9);
    }
    expect(near!.next).toBeUndefined();
    expect(far!.next?.kind).toBe('turn');
  });

  test('a plane turned by 8° in plan is a mitre of 8°, its arrises 60 tan 8° apart', () => {
    const angle = degrees(8);
    const rail = made(board('rail', 60, 700, 30), {
      near: ENDS.near,
      far: through([600, 0, 0], [Math.cos(angle), Math.sin(angle), 0]),
    });
    const { cut, error, length } = cutsOfPart(rail, SAW)[1]!;
    if (cut.kind !== 'end') throw new Error('an end');
    expect(Math.abs(cut.mitre)).toBeCloseTo(angle, 12);
    expect(cut.bevel).toBeCloseTo(0, 12);
    const lengths = cut.arrises.all.map((each) => each.length);
    expect(Math.max(...lengths) - Math.min(...lengths)).toBeCloseTo(60 * Math.tan(angle), 9);
    expect(error).toBeDefined();
    expect(length).toBeCloseTo(Math.max(...lengths), 6);
  });

  test('a plane tipped by 5° is a bevel of 5°', () => {
    const angle = degrees(5);
    const rail = made(board('rail', 60, 700, 30), {
      far: through([600, 0, 0], [Math.cos(angle), 0, Math.sin(angle)]),
    });
    const { cut, ways } = cutsOfPart(rail, SAW)[0]!;
    if (cut.kind !== 'end') throw new Error('an end');
    expect(Math.abs(cut.bevel)).toBeCloseTo(angle, 12);
    expect(cut.mitre).toBeCloseTo(0, 12);
    expect(ways[0]?.kind).toBe('direct');
  });

  test('a plane along the part is a rip, not an end', () => {
    const strip = made(board('rail', 60, 700, 30), { along: through([0, -10, 0], [0, 1, 0]) });
    expect(cutsOfPart(strip, SAW).map(({ cut, ways }) => [cut.kind, ways])).toEqual([['rip', []]]);
  });

  test('planes that miss the part are no cuts', () => {
    const rail = made(board('rail', 60, 700, 30), { far: through([900, 0, 0], [1, 0, 0]) });
    expect(cutsOfPart(rail, SAW)).toEqual([]);
  });

  test('of a part in two hands come with how the other hand is made', () => {
    const angle = degrees(8);
    const planes = { far: through([600, 0, 0], [Math.cos(angle), Math.sin(angle), 0]) };
    const one = lying(board('rail', 60, 700, 30), planes);
    expect(cutsOfPart(madeOf(one), SAW)[0]!.mirrored).toBeUndefined();
    const leg = shaped('leg', [vec(0, 0), vec(60, 0), vec(100, 700), vec(40, 700)], 40);
    const pair = stand(
      [leg],
      [
        place('leg', 'leg', {
          at: vec3(-300, 0, -20),
          trims: [{ plane: 'floor', otherSide: false }],
          copies: [{ kind: 'mirror', across: 'left-right' }],
        }),
      ],
      { planes: { floor: through([0, 0, 0], [0, 0, -1]) } },
    );
    const part = madeOf(pair);
    expect(part.sketch.quantity).toEqual({ left: 1, right: 1 });
    const [floor] = cutsOfPart(part, SAW);
    if (floor!.cut.kind !== 'end') throw new Error('an end');
    const swing = floor!.cut.onBack.setting.swing;
    expect(Math.abs(swing)).toBeCloseTo(Math.atan2(40, 700), 9);
    expect(Math.abs(floor!.mirrored!.laid.setting.swing)).toBeCloseTo(Math.abs(swing), 9);
  });
});

describe('the cut list', () => {
  const allowance = { edge: 2, end: 25, thickness: 3 };
  const listOf = (base: StandingBase, joints: Parameters<typeof partsToMake>[1] = none) =>
    cutList(partsToMake(base, joints), () => 'oak', allowance);

  test('gives each board finished and rough, thickest and then longest first', () => {
    const lines = listOf(fourLegs());
    expect(lines.map(({ part, count, finished }) => [part, count, finished])).toEqual([
      ['leg', 4, { thickness: 50, width: expect.closeTo(50, 9), length: expect.closeTo(700, 9) }],
      ['long', 2, { thickness: 20, width: expect.closeTo(80, 9), length: expect.closeTo(800, 9) }],
      ['end', 2, { thickness: 20, width: expect.closeTo(80, 9), length: expect.closeTo(400, 9) }],
    ]);
    const [leg] = lines;
    expect(leg!.rough).toEqual({
      thickness: 53,
      width: expect.closeTo(54, 9),
      length: expect.closeTo(750, 9),
    });
    expect([...leg!.marks].sort()).toEqual(['BL', 'BR', 'FL', 'FR']);
  });

  test('counts length along the grain, even where that is the shorter way', () => {
    const panel = { ...board('panel', 300, 200, 20), grain: Math.PI / 2 };
    expect(listOf(lying(panel))[0]!.finished).toMatchObject({ length: 200, width: 300 });
    const across = { ...panel, grain: 0 };
    expect(listOf(lying(across))[0]!.finished).toMatchObject({
      length: expect.closeTo(300, 9),
      width: expect.closeTo(200, 9),
    });
    // At 45° a square's length and width are its diagonals.
    const askew = { ...board('panel', 200, 200, 20), grain: Math.PI / 4 };
    expect(listOf(lying(askew))[0]!.finished.length).toBeCloseTo(200 * Math.SQRT2, 9);
  });

  test('leaves the wood for tenons on', () => {
    const base = fourLegs('mortise-and-tenon');
    const joints = joinBase(base);
    const tenon = joints.joints
      .find(({ name }) => name === 'long leg')!
      .sides[0].work.find((each) => each.kind === 'tenon')!;
    const long = listOf(base, joints).find(({ part }) => part === 'long')!;
    expect(long.finished.length).toBeCloseTo(800 + 2 * (tenon.kind === 'tenon' ? tenon.length : 0), 6);
  });
});

describe('what usual errors do', () => {
  test('at a joint: half a degree over its section; at the foot: over the way down to it', () => {
    const base = fourLegs();
    const { joints, rock } = errorsOfBase(base, joinBase(base).joints);
    const long = joints.find(({ name }) => name === 'long leg')!;
    expect(long.section).toBeCloseTo(80, 9);
    // From the middle of the rail's end to a corner of the foot.
    expect(long.arm).toBeGreaterThan(660);
    expect(long.arm).toBeLessThan(Math.hypot(660, 50, 50));
    const half = degrees(0.5);
    expect(long.errors.gap.worst).toBeCloseTo(80 * Math.tan(half) + 0.2, 9);
    expect(long.errors.foot.worst).toBeCloseTo(2 * long.arm * Math.sin(half / 2) + 0.5 + 0.2, 9);
    // Four feet in a rectangle: four times what each leg may be off at worst, twice as the root of the sum of squares.
    expect([rock!.worst, rock!.likely]).toEqual([expect.closeTo(2, 9), expect.closeTo(1, 9)]);
  });

  test('of parts off the floor count to the farthest corner of what is joined', () => {
    const base = stand(
      [board('post', 60, 400, 40), board('rail', 90, 500, 24)],
      [
        place('post', 'post'),
        place('rail', 'rail', { pin: vec(90, 0), at: vec3(60, 8, 200), along: vec3(1, 0, 0) }),
      ],
      { joints: [joint('rail post', 'glued', 'rail', 'post')] },
    );
    const [only] = errorsOfBase(base, joinBase(base).joints).joints;
    // The middle of the contact is half way up 200 to 290; the far end of the rail is 500 away, 12 and 45 off its middle.
    expect(only!.arm).toBeCloseTo(Math.hypot(500, 12, 45), 6);
  });
});

describe('a made part on its pattern', () => {
  const label = (joint: string) => `Joint ${joint}`;

  test('shows where the back of a bevelled end runs, as far from its face as the bevel takes it', () => {
    const angle = degrees(5);
    const rail = made(board('rail', 60, 700, 30), {
      far: through([600, 0, 0], [Math.cos(angle), 0, Math.sin(angle)]),
    });
    const { layouts = [] } = partForPattern(rail, label);
    const [back, ...more] = layouts;
    expect(more).toEqual([]);
    expect(back).toMatchObject({ name: 'back far', hidden: true, closed: false });
    const face = rail.face[0]!.outer.edges.find(({ tag }) => tag.id === 'far')!;
    expect(Math.abs(back!.edges[0]!.from.y - face.from.y)).toBeCloseTo(30 * Math.tan(angle), 9);
  });

  test('shows no second line for a square end', () => {
    expect(partForPattern(made(board('rail', 60, 700, 30), ENDS), label).layouts).toEqual([]);
  });

  test('gives the figures to lay its ends out by: both edges corner to corner, and its angles', () => {
    const angle = degrees(8);
    const rail = made(board('rail', 60, 700, 30), {
      near: ENDS.near,
      far: through([600, 0, 0], [Math.cos(angle), Math.sin(angle), 0]),
    });
    const { dimensions } = partForPattern(rail, label);
    const sides = dimensions.filter(({ kind }) => kind === 'length').map(({ value }) => value);
    expect(Math.abs(sides[0]! - sides[1]!)).toBeCloseTo(60 * Math.tan(angle), 9);
    const angles = dimensions.filter(({ kind }) => kind === 'angle');
    expect(angles.map(({ name }) => name).sort()).toEqual(['far angle', 'near angle']);
    const far = angles.find(({ name }) => name === 'far angle')!.value;
    expect(Math.abs(far - Math.PI / 2)).toBeCloseTo(angle, 9);
    expect(angles.find(({ name }) => name === 'near angle')!.value).toBeCloseTo(Math.PI / 2, 9);
  });

  test('shows every bore of its joints and a centre line for each, under the joint’s own label', () => {
    const base = fourLegs('loose-tenons');
    const joints = joinBase(base);
    const leg = partsToMake(base, joints).find(({ sketch }) => sketch.thickness === 50)!;
    const drawn = partForPattern(leg, label);
    expect(leg.work.length).toBeGreaterThan(1);
    expect(drawn.layouts).toHaveLength(leg.work.length);
    const own = new Set(leg.work.map((each) => each.joint));
    expect(drawn.joints.map(({ name }) => name).sort()).toEqual([...own].sort());
    for (const { label: said } of drawn.joints) expect(said).toMatch(/^Joint /);
  });

  test('names each of its dimensions once, also where a cut leaves two feet', () => {
    const edges = [
      vec(0, 0),
      vec(100, 0),
      vec(150, 60),
      vec(200, 0),
      vec(300, 0),
      vec(300, 500),
      vec(0, 500),
    ];
    const tags = ['foot', 'in', 'out', 'foot2', 'right', 'top', 'left'];
    const panel = partOf(
      'panel',
      {
        edges: edges.map((from, i) => ({
          kind: 'line' as const,
          from,
          to: edges[(i + 1) % edges.length]!,
          tag: { id: tags[i]!, role: 'routed' as const },
        })),
      },
      30,
    );
    const { dimensions } = partForPattern(made(panel, { floor: through([20, 0, 0], [-1, 0, 0]) }), label);
    const names = dimensions.map(({ name }) => name);
    expect(names).toContain('floor angle 2');
    expect(new Set(names).size).toBe(names.length);
  });
});
