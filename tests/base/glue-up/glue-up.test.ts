import { describe, expect, test } from 'vitest';
import { caulAsPart, caulsOf } from '../../../src/base/glue-up/cauls-of.ts';
import { glueFindings } from '../../../src/base/glue-up/glue-findings.ts';
import { glueSteps } from '../../../src/base/glue-up/glue-steps.ts';
import type { StandingBase } from '../../../src/base/index.ts';
import { joinBase } from '../../../src/base/joints/join-base.ts';
import { angleOf, boundsOfRegions, subtract, vec, vec3 } from '../../../src/geometry/index.ts';
import type { JointKind } from '../../../src/sketch/index.ts';
import { fourLegs } from '../four-legs.ts';
import { board, joint, place, stand } from '../hand-made.ts';

const degrees = (angle: number): number => (angle * Math.PI) / 180;

function glued(base: StandingBase) {
  const { joints } = joinBase(base);
  return { joints, steps: glueSteps(base.parts, joints) };
}

/**
 * Two legs, 50 wide and 40 thick, that lean outwards to the floor by an angle, and a plumb-cut rail 80 deep and 20 thick between them with its
 * upper edge at 700. The outer edge of a leg stands 500 from the middle on the floor.
 */
function leaning(angle: number, kind: JointKind = 'glued'): StandingBase {
  return stand(
    [board('leg', 50, 740, 40), board('rail', 80, 1000, 20)],
    [
      place('leg', 'leg', {
        at: vec3(-500, -20, 0),
        along: vec3(Math.sin(angle), 0, Math.cos(angle)),
        copies: [{ kind: 'mirror', across: 'left-right' }],
      }),
      place('rail', 'rail', {
        pin: vec(0, 500),
        at: vec3(0, -10, 700),
        along: vec3(1, 0, 0),
        trims: [
          { plane: 'left_leg', otherSide: true },
          { plane: 'right_leg', otherSide: true },
        ],
      }),
    ],
    {
      planes: {
        left_leg: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: [] }, out: 0 },
        right_leg: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: ['left-right'] }, out: 0 },
      },
      joints: [joint('rail leg', kind, 'rail', 'leg')],
    },
  );
}

describe('the order of gluing', () => {
  test('of a table: its ends first, two alike, then the long rails between them, whatever the form names first', () => {
    const { steps } = glued(fourLegs());
    expect(steps.map(({ names }) => names)).toEqual([['end leg'], ['long leg']]);
    expect(steps[0]!.groups.map(({ parts }) => parts.length)).toEqual([3, 3]);
    expect(steps[1]!.groups.map(({ parts }) => parts.length)).toEqual([8]);
  });

  test('takes a joint along that could not be closed later', () => {
    // A brace joined to the rail and to the leg that the rail is glued to.
    const base = stand(
      [board('leg', 50, 700, 50), board('rail', 80, 400, 20), board('brace', 50, 100, 20)],
      [
        place('leg', 'leg'),
        place('rail', 'rail', { at: vec3(50, 10, 700), along: vec3(1, 0, 0) }),
        place('brace', 'brace', { at: vec3(50, 10, 520) }),
      ],
      {
        joints: [
          joint('rail leg', 'glued', 'rail', 'leg'),
          joint('brace leg', 'glued', 'brace', 'leg'),
          joint('brace rail', 'glued', 'brace', 'rail'),
        ],
      },
    );
    const { steps, joints } = glued(base);
    expect(joints).toHaveLength(3);
    expect(steps.map(({ joints: own }) => own.length)).toEqual([1, 2]);
  });

  test('leaves out what is screwed', () => {
    expect(glued(fourLegs('screwed')).steps).toEqual([]);
  });
});

describe('clamps', () => {
  test('open from wood to wood, and by two cauls more', () => {
    const [ends, long] = glued(fourLegs()).steps;
    const [end] = ends!.groups[0]!.clamps;
    expect(Math.abs(end!.direction.y)).toBeCloseTo(1, 9);
    expect([end!.opening, end!.withCauls]).toEqual([expect.closeTo(500, 6), expect.closeTo(536, 6)]);
    const [rail] = long!.groups[0]!.clamps;
    expect(Math.abs(rail!.direction.x)).toBeCloseTo(1, 9);
    expect([rail!.opening, rail!.withCauls]).toEqual([expect.closeTo(900, 6), expect.closeTo(936, 6)]);
    expect(end!.cauls).toEqual([]);
  });

  test('reach over the joint, not from foot to foot', () => {
    const angle = degrees(5);
    const [clamp] = glued(leaning(angle)).steps[0]!.groups[0]!.clamps;
    // At the lower edge of the rail.
    const opening = 2 * (500 - 620 * Math.tan(angle));
    expect(clamp!.opening).toBeCloseTo(opening, 6);
    expect(clamp!.withCauls).toBeCloseTo(opening + 2 * (18 + 15 * Math.sin(angle)), 6);
  });
});

describe('cauls', () => {
  test.each([3, 5])(
    'for legs that lean %i° are wedges of that angle, one for each leg, made alike',
    (lean) => {
      const angle = degrees(lean);
      const [caul, ...more] = caulsOf(glued(leaning(angle)).steps);
      expect(more).toEqual([]);
      expect(caul!.count).toBe(2);
      expect(caul!.angle).toBeCloseTo(angle, 9);
      // The rail's end lies on a slope 80 high, 15 past it at both ends; the rail is 20 thick.
      expect(caul!.along).toBeCloseTo(80 / Math.cos(angle) + 30, 6);
      expect(caul!.across).toBeCloseTo(20, 6);
    },
  );

  test('are none for legs nearly upright: the pad of the jaw gives', () => {
    expect(caulsOf(glued(leaning(degrees(1.5))).steps)).toEqual([]);
  });

  test('drawn as a part have that angle between slope and jaw, and 18 mm where they are thinnest', () => {
    const angle = degrees(5);
    const part = caulAsPart(caulsOf(glued(leaning(angle)).steps)[0]!);
    const edgeOf = (id: string) => part.region.outer.edges.find(({ tag }) => tag.id === id)!;
    const way = (id: string) => angleOf(subtract(edgeOf(id).to, edgeOf(id).from));
    const between = way('slope') - way('jaw') - Math.PI;
    expect(Math.abs(Math.atan2(Math.sin(between), Math.cos(between)))).toBeCloseTo(angle, 9);
    const tip = edgeOf('tip');
    expect(Math.abs(tip.to.x - tip.from.x)).toBeCloseTo(18, 9);
    expect(part.quantity).toEqual({ left: 2, right: 0 });
    expect(boundsOfRegions([part.region]).minX).toBeCloseTo(0, 9);
  });
});

describe('tenons askew to the way in which a frame closes', () => {
  test('are named with the play that they need: their depth times the sine of the angle', () => {
    const angle = degrees(5);
    const { steps, joints } = glued(leaning(angle, 'loose-tenons'));
    const [said, ...more] = glueFindings(steps, joints, { unit: 'mm', decimals: 2 });
    expect(more).toEqual([]);
    const depths = joints[0]!.sides.flatMap(({ work }) =>
      work.map((each) => ('depth' in each ? each.depth : 0)),
    );
    expect(said!.code).toBe('glue.askew');
    expect(said!.measured!.value).toBeCloseTo(Math.max(...depths) * Math.sin(angle), 6);
    expect(said!.cure).toMatch(/\d/);
  });

  test('are none in a square frame', () => {
    const { steps, joints } = glued(fourLegs('loose-tenons'));
    expect(glueFindings(steps, joints, { unit: 'mm', decimals: 1 })).toEqual([]);
  });
});
