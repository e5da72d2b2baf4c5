import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Bore, joinBase, partsToMake } from '../../src/base/index.ts';
import { directionToWorld, distance3, dot3, pointToWorld, vec, vec3 } from '../../src/geometry/index.ts';
import type { JointKind, SketchedPart } from '../../src/sketch/index.ts';
import { board, joint, place, shaped, stand } from '../base/hand-made.ts';

const FOUR = [
  { kind: 'mirror', across: 'left-right' },
  { kind: 'mirror', across: 'front-back' },
] as const;

const setting = fc.record({
  lean: fc.double({ min: 2, max: 20, noNaN: true }),
  plan: fc.double({ min: -12, max: 12, noNaN: true }),
  depth: fc.double({ min: 60, max: 120, noNaN: true }),
  thickness: fc.double({ min: 22, max: 40, noNaN: true }),
  level: fc.double({ min: 250, max: 600, noNaN: true }),
  kind: fc.constantFrom<JointKind>('loose-tenons', 'dowels', 'mortise-and-tenon'),
});

type Setting = typeof setting extends fc.Arbitrary<infer T> ? T : never;

/** Four leaning legs turned in plan, and a rail between each two of the front and of the back, cut to the legs' edges as they stand. */
function fourLegs({ lean, plan, depth, thickness, level, kind }: Setting, leg: SketchedPart = leaning(lean)) {
  return stand(
    [leg, board('rail', depth, 1200, thickness)],
    [
      place('leg', 'leg', {
        at: vec3(-400, -200, 0),
        turns: [{ about: 'z', by: (plan * Math.PI) / 180 }],
        copies: FOUR,
      }),
      place('rail', 'rail', {
        at: vec3(0, -160, level),
        along: vec3(1, 0, 0),
        pin: vec(depth, 600),
        pinDepth: thickness / 2,
        trims: [
          { plane: 'left', otherSide: true },
          { plane: 'right', otherSide: true },
        ],
        copies: [{ kind: 'mirror', across: 'front-back' }],
      }),
    ],
    {
      planes: {
        left: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: [] }, out: 0 },
        right: { kind: 'face', of: { place: 'leg', face: 'right', mirrored: ['left-right'] }, out: 0 },
      },
      joints: [joint('rail joint', kind, 'rail', 'leg')],
    },
  );
}

const leaning = (lean: number, more = 0): SketchedPart => {
  const slope = Math.tan((lean * Math.PI) / 180);
  return shaped(
    'leg',
    [vec(0, 0), vec(70 + more, 0), vec(70 + 700 * slope, 700), vec(700 * slope, 700)],
    120,
  );
};

test('copies that are mirror images get joints that are, and share their patterns', () => {
  fc.assert(
    fc.property(setting, (values) => {
      const base = fourLegs(values);
      const joined = joinBase(base);
      expect(joined.joints).toHaveLength(4);
      const made = partsToMake(base, joined);
      expect(made.map(({ name }) => name)).toEqual(['leg', 'rail']);
      const [leg, rail] = made;
      expect(leg!.sketch.quantity).toEqual({ left: 2, right: 2 });
      expect(leg!.members.map(({ hand }) => hand)).toEqual(base.parts.slice(0, 4).map(({ hand }) => hand));
      expect(rail!.sketch.quantity.left + rail!.sketch.quantity.right).toBe(2);
      expect(new Set(joined.joints.map(({ contact }) => contact!.area.toFixed(6))).size).toBe(1);
    }),
    { numRuns: 15 },
  );
});

test('a joint of a copy is the one that its two parts alone would get, however it was come by', () => {
  fc.assert(
    fc.property(setting, (values) => {
      const base = fourLegs(values);
      for (const { contact, sides, loose } of joinBase(base).joints) {
        const parts = base.parts.filter(({ id }) => sides.some(({ part }) => part === id));
        const [alone] = joinBase({ ...base, parts }).joints;
        expect(alone!.loose).toEqual(loose);
        expect(alone!.contact!.area).toBeCloseTo(contact!.area, 6);
        for (const axis of ['origin', 'x', 'y', 'z'] as const)
          expect(distance3(alone!.contact!.frame[axis], contact!.frame[axis])).toBeLessThan(1e-6);
        for (const side of ['a', 'b'] as const)
          expect(alone!.contact![side].face.name).toBe(contact![side].face.name);
        for (const [at, { work }] of sides.entries()) {
          const made = alone!.sides[at]!.work as readonly Bore[];
          expect(made).toHaveLength(work.length);
          for (const each of work as readonly Bore[])
            expect(made.some((other) => isSame(each, other))).toBe(true);
        }
      }
    }),
    { numRuns: 15 },
  );
});

/** Is a piece of work where another is? A slot or a tenon runs either way. */
function isSame(a: Bore, b: Bore): boolean {
  const off = Math.max(
    distance3(a.own.origin, b.own.origin),
    distance3(a.own.z, b.own.z),
    1 - Math.abs(dot3(a.own.x, b.own.x)),
    Math.abs(a.width - b.width),
    Math.abs((a.depth ?? 0) - (b.depth ?? 0)),
  );
  return off < 1e-6;
}

test('the two mortises of a piece share their mouth and look away from each other', () => {
  fc.assert(
    fc.property(setting, (values) => {
      const base = fourLegs({ ...values, kind: 'loose-tenons' });
      for (const { sides } of joinBase(base).joints) {
        const [first, second] = sides.map(({ part, work }) => {
          const { frame } = base.parts.find(({ id }) => id === part)!;
          return (work as readonly Bore[]).map(({ own }) => ({
            at: pointToWorld(frame, own.origin),
            along: directionToWorld(frame, own.z),
          }));
        });
        expect(first!.length).toBe(second!.length);
        for (const [k, { at, along }] of first!.entries()) {
          expect(distance3(at, second![k]!.at)).toBeLessThan(1e-6);
          expect(dot3(along, second![k]!.along)).toBeCloseTo(-1, 9);
        }
      }
    }),
    { numRuns: 10 },
  );
});

test('a part that differs by a tenth of a millimetre is another one', () => {
  fc.assert(
    fc.property(setting, fc.constantFrom(0.1, -0.1, 0), (values, more) => {
      const legs = [leaning(values.lean), { ...leaning(values.lean, more), name: 'other' }];
      const base = stand(legs, [place('leg', 'leg'), place('other', 'other', { at: vec3(500, 0, 0) })]);
      expect(partsToMake(base, { joints: [] })).toHaveLength(more === 0 ? 1 : 2);
    }),
    { numRuns: 30 },
  );
});
