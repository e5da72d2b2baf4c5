import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type InsertPlace,
  type JointOutcome,
  type JointPlace,
  layOutDowels,
  layOutLooseTenons,
  layOutTenon,
  tenonRules,
} from '../../../src/base/joint-rules/index.ts';
import {
  areaOfRegions,
  circleOutline,
  polygonOutline,
  type Region,
  slotOutline,
  subtractRegions,
  type Vec,
} from '../../../src/geometry/index.ts';
import { USUAL_DOWELS, USUAL_LOOSE_TENONS } from '../../../src/materials/index.ts';

const TAG = { id: 'contact', role: 'joint' } as const;
const region = (...points: readonly (readonly [number, number])[]): Region[] => [
  {
    outer: polygonOutline(
      points.map(([x, y]) => ({ x, y })),
      TAG,
    ),
    holes: [],
  },
];
const rectangle = (length: number, thick: number): Region[] =>
  region([0, 0], [length, 0], [length, thick], [0, thick]);

/** The end of a rail (fibres out of the joint) on the side of a leg whose fibres run along the joint. */
const GRAIN = [
  { x: 0, y: 0, z: 1 },
  { x: 1, y: 0, z: 0 },
] as const;
const joint = (
  contact: readonly Region[],
  behind: readonly [number, number] = [Infinity, 60],
): JointPlace => ({
  contact,
  behind,
  grain: GRAIN,
});

function layoutOf(outcome: JointOutcome) {
  if (!outcome.fits) throw new Error(`nothing fits: ${JSON.stringify(outcome.fault)}`);
  return outcome.layout;
}

const slotOf = ({ from, to, radius }: InsertPlace, more = 0): Region => ({
  outer: slotOutline(from, to, radius + more, TAG),
  holes: [],
});

/** Wood between two slots that run along x. */
function between(a: InsertPlace, b: InsertPlace): number {
  const apart = (p: Vec, q: Vec): number => Math.hypot(p.x - q.x, p.y - q.y);
  const overlap = a.from.x <= b.to.x && b.from.x <= a.to.x;
  const ways = [apart(a.from, b.to), apart(a.to, b.from), apart(a.from, b.from), apart(a.to, b.to)];
  const least = overlap ? Math.abs(a.from.y - b.from.y) : Math.min(...ways);
  return least - a.radius - b.radius;
}

describe('loose tenons', () => {
  test('in a rail 90 × 20: one size nearest to a third, in the middle, as wide as two thirds allow', () => {
    const { size, places, thickness, into, mortise, rows } = layoutOf(
      layOutLooseTenons(joint(rectangle(90, 20)), USUAL_LOOSE_TENONS),
    );
    expect(thickness).toBeCloseTo(20, 1);
    expect(size).toEqual({ thickness: 6, width: 30, length: 30 });
    expect(rows).toBe(1);
    expect(places).toHaveLength(2);
    // Two of 30 are two thirds of 90; 30 mm are left over, shared evenly beside and between but for what shoulder and spacing take.
    expect(places[0]!.from.x - 3 + places[1]!.to.x + 3).toBeCloseTo(90, 6);
    expect(
      places.every(({ from, to, radius }) => from.y === to.y && Math.abs(from.y - 10) < 1e-6 && radius === 3),
    ).toBe(true);
    expect(into).toEqual([15, 15]);
    expect(mortise[0]).toBeCloseTo(15 + 25.4 / 16, 9);
  });

  test('tell which rule keeps one more from it', () => {
    const tenon = [{ thickness: 6, width: 20, length: 30 }];
    const by = (contact: Region[], own = {}) => {
      const { places, limitedBy } = layoutOf(layOutLooseTenons(joint(contact), tenon, own));
      return [places.length, limitedBy];
    };
    expect(by(rectangle(85, 20))).toEqual([2, 'lengthShare']);
    expect(by(rectangle(85, 20), { lengthShare: 1, spacing: 15 })).toEqual([2, 'spacing']);
    expect(by(rectangle(80, 20), { lengthShare: 1, spacing: 0, shoulder: 10.5 })).toEqual([2, 'shoulder']);
    expect(by(rectangle(55, 20), { lengthShare: 1, spacing: 7 })).toEqual([1, 'spacing']);
    expect(by(rectangle(50, 20), { lengthShare: 1, spacing: 1 })).toEqual([1, 'wall']);
    expect(by(rectangle(38, 20), { lengthShare: 1 })).toEqual([1, 'contact']);
  });

  test('stand side by side in thick stock', () => {
    const { rows, places } = layoutOf(
      layOutLooseTenons(joint(rectangle(60, 50)), [{ thickness: 10, width: 30, length: 50 }]),
    );
    expect([rows, places.length]).toEqual([2, 2]);
    // Three even walls of 10 mm.
    expect(places.map(({ from }) => from.y).sort((a, b) => a - b)).toEqual([
      expect.closeTo(15, 1),
      expect.closeTo(35, 1),
    ]);
  });

  test('reach less into shallow wood and more into deep', () => {
    const tenon = [{ thickness: 8, width: 25, length: 40 }];
    const { into, mortise } = layoutOf(layOutLooseTenons(joint(rectangle(90, 24), [Infinity, 30]), tenon));
    // Two thirds of 30 less the clearance; the rest of 40 into the rail.
    expect(into[1]).toBeCloseTo(20 - 25.4 / 16, 9);
    expect(into[0]).toBeCloseTo(40 - into[1], 9);
    expect(mortise[1]).toBeCloseTo(20, 9);
  });

  test('glue to long grain on the rail all round, on the leg on their broad sides', () => {
    const { glue, into, size } = layoutOf(
      layOutLooseTenons(joint(rectangle(60, 24)), [{ thickness: 8, width: 28, length: 40 }]),
    );
    const round = 2 * 20 + 8 * Math.PI;
    expect(size.width).toBe(28);
    expect(glue[0]!.total).toBeCloseTo(round * into[0], 3);
    expect(glue[0]!.longGrain).toBeCloseTo(glue[0]!.total, 6);
    expect(glue[1]!.longGrain).toBeCloseTo((2 * 20 + 4 * Math.PI) * into[1], 3);
  });

  test('keep off a hole through the joint', () => {
    const [whole] = rectangle(160, 30);
    const bored: Region[] = [{ outer: whole!.outer, holes: [circleOutline({ x: 80, y: 15 }, 10, TAG, -1)] }];
    const { places } = layoutOf(layOutLooseTenons(joint(bored), [{ thickness: 10, width: 30, length: 50 }]));
    expect(places).toHaveLength(2);
    expect(places[0]!.from.x + places[1]!.to.x).toBeCloseTo(160, 6);
  });

  test('of no list that fits are told the rule broken and what would fit', () => {
    const outcome = layOutLooseTenons(joint(rectangle(90, 15)), [{ thickness: 6, width: 30, length: 30 }]);
    if (outcome.fits) throw new Error('15 mm leave no walls of 1/4 in beside 6 mm');
    expect(outcome.fault.nearest).toMatchObject({ rule: 'wall', limit: 6.35 });
    expect(outcome.fault.nearest!.measured).toBeCloseTo(4.5, 2);
    // 15 less two walls is 2.3 mm: nothing worth the name.
    expect(outcome.fault.wouldFit).toBeUndefined();

    const shallow = layOutLooseTenons(joint(rectangle(90, 24), [20, 20]), [
      { thickness: 8, width: 25, length: 40 },
    ]);
    if (shallow.fits) throw new Error('20 mm of wood do not take 20 mm of tenon');
    expect(shallow.fault.nearest!.rule).toBe('depthShare');
    // Two thirds of 20 less the clearance are 11.7 mm: two thicknesses of 5.5.
    expect(shallow.fault.wouldFit).toMatchObject({ thickness: 5.5, length: 23 });
    const made = layOutLooseTenons(joint(rectangle(90, 24), [20, 20]), [shallow.fault.wouldFit!]);
    expect(made.fits).toBe(true);
  });

  test('an empty list is answered with what would fit', () => {
    const outcome = layOutLooseTenons(joint(rectangle(90, 24)), []);
    if (outcome.fits) throw new Error('nothing cannot fit');
    expect(outcome.fault.nearest).toBeUndefined();
    expect(outcome.fault.wouldFit).toEqual({ thickness: 8, width: 60, length: 40 });
  });
});

describe('dowels', () => {
  test('are at least two, three diameters apart', () => {
    const { places, size, limitedBy } = layoutOf(layOutDowels(joint(rectangle(80, 22)), USUAL_DOWELS));
    expect(size.thickness).toBe(8);
    expect(places).toHaveLength(3);
    expect(limitedBy).toBe('spacing');
    for (const [i, place] of places.slice(1).entries())
      expect(place.from.x - places[i]!.from.x).toBeGreaterThanOrEqual(24);
    const short = layOutDowels(joint(rectangle(40, 22)), [{ diameter: 8, length: 40 }]);
    if (short.fits) throw new Error('one dowel lets a joint turn');
    expect(short.fault.nearest).toMatchObject({ rule: 'leastCount', measured: 1, limit: 2 });
    expect(short.fault.wouldFit).toMatchObject({ thickness: 6.5, width: 6.5 });
  });
});

describe('mortise and tenon', () => {
  test('on a rail of 3/4 in: 1/4 in thick, 1 1/4 in long', () => {
    const outcome = layOutTenon(joint(rectangle(90, 19.05)), [6.35, 9.525, 12.7]);
    if (!outcome.fits) throw new Error('it fits');
    const { size, mortiseDepth, shoulders, lengthBy } = outcome.layout;
    expect(size.thickness).toBe(6.35);
    expect(size.length).toBeCloseTo(1.25 * 25.4, 9);
    expect(mortiseDepth - size.length).toBeCloseTo(25.4 / 16, 9);
    expect(size.width).toBeCloseTo(60, 6);
    expect(shoulders.ends).toBeCloseTo(15, 6);
    expect(shoulders.beside).toBeCloseTo(6.35, 1);
    expect(lengthBy).toBe('lengthInThicknesses');
  });

  test('is shorter where the leg is thin, and none where its walls would be', () => {
    const thin = layOutTenon(joint(rectangle(90, 24), [Infinity, 36]), [8]);
    if (!thin.fits) throw new Error('it fits');
    expect([thin.layout.lengthBy, thin.layout.mortiseDepth]).toEqual(['depthShare', expect.closeTo(24, 9)]);
    const none = layOutTenon(joint(rectangle(90, 14)), [5, 6]);
    if (none.fits) throw new Error('it does not fit');
    expect(none.fault.nearest!.rule).toBe('wall');
  });
});

/** Contacts of real joints: square ends, ends of leaning and tapering parts, rounded ones. */
const contacts = fc.oneof(
  fc
    .tuple(fc.integer({ min: 30, max: 240 }), fc.integer({ min: 14, max: 70 }))
    .map(([l, t]) => rectangle(l, t)),
  fc
    .tuple(
      fc.integer({ min: 40, max: 200 }),
      fc.integer({ min: 16, max: 60 }),
      fc.integer({ min: -25, max: 25 }),
      fc.integer({ min: 10, max: 60 }),
    )
    .map(([l, t, lean, t2]) => region([0, 0], [l, 0], [l + lean, t2], [lean, t])),
  fc
    .tuple(fc.integer({ min: 50, max: 200 }), fc.integer({ min: 16, max: 60 }))
    .map(([l, t]): Region[] => [
      { outer: slotOutline({ x: t / 2, y: 0 }, { x: l, y: 0 }, t / 2, TAG), holes: [] },
    ]),
);
const tenons = fc.array(
  fc
    .tuple(fc.integer({ min: 4, max: 14 }), fc.integer({ min: 0, max: 50 }), fc.integer({ min: 20, max: 70 }))
    .map(([thickness, more, length]) => ({ thickness, width: thickness + more, length })),
  { minLength: 1, maxLength: 5 },
);
const depth = fc.oneof(fc.constant(Infinity), fc.integer({ min: 15, max: 90 }));

test('every layout keeps every rule, truly measured', () => {
  let laidOut = 0;
  fc.assert(
    fc.property(contacts, tenons, fc.tuple(depth, depth), fc.boolean(), (contact, sizes, behind, round) => {
      const rules = tenonRules();
      const outcome = round
        ? layOutDowels(
            joint(contact, behind),
            sizes.map(({ thickness, length }) => ({ diameter: thickness, length })),
          )
        : layOutLooseTenons(joint(contact, behind), sizes);
      if (!outcome.fits) return;
      laidOut++;
      const { places, size, into, mortise, thickness } = outcome.layout;
      const wall = round ? 25.4 / 8 : rules.wall;
      // The kernel says what sticks out: each slot grown by the wall stays within the contact.
      for (const place of places)
        expect(areaOfRegions(subtractRegions([slotOf(place, wall - 0.011)], contact))).toBeLessThan(1e-6);
      for (const [i, a] of places.entries()) {
        for (const b of places.slice(i + 1)) {
          const isSideBySide = Math.abs(a.from.y - b.from.y) > 1e-9;
          const spacing = isSideBySide ? wall : round ? 2 * size.thickness : rules.spacing;
          expect(between(a, b)).toBeGreaterThanOrEqual(spacing - 0.03);
        }
      }
      expect(size.thickness).toBeLessThanOrEqual(0.5 * thickness + 0.02);
      expect(into[0] + into[1]).toBeCloseTo(size.length, 9);
      for (const side of [0, 1] as const) {
        expect(mortise[side]).toBeGreaterThan(into[side]);
        expect(behind[side] - mortise[side]).toBeGreaterThanOrEqual((round ? 25.4 / 8 : 6.35) - 0.011);
        expect(into[side]).toBeGreaterThanOrEqual(2 * size.thickness - 0.011);
      }
    }),
    { numRuns: 150 },
  );
  expect(laidOut).toBeGreaterThan(30);
});

test('an even contact gets an even layout', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 40, max: 260 }),
      fc.integer({ min: 18, max: 60 }),
      tenons,
      (long, thick, sizes) => {
        const outcome = layOutLooseTenons(joint(rectangle(long, thick)), sizes);
        if (!outcome.fits) return;
        const mirrored = outcome.layout.places
          .map(({ from, to }) => [long - to.x, thick - from.y] as const)
          .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
        const places = outcome.layout.places
          .map(({ from }) => [from.x, from.y] as const)
          .sort((a, b) => a[0] - b[0] || a[1] - b[1]);
        for (const [i, [x, y]] of places.entries()) {
          expect(Math.abs(mirrored[i]![0] - x)).toBeLessThan(1e-6);
          expect(Math.abs(mirrored[i]![1] - y)).toBeLessThan(1e-6);
        }
      },
    ),
  );
});

test('in a plain rectangle no more would fit: the count worked by hand', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 40, max: 300 }),
      fc.integer({ min: 20, max: 39 }),
      fc.integer({ min: 12, max: 60 }),
      (long, thick, width) => {
        const outcome = layOutLooseTenons(joint(rectangle(long, thick)), [
          { thickness: 6, width, length: 30 },
        ]);
        const byRoom = Math.floor((long - 2 * 6.35 + 12 + 0.02) / (width + 12));
        const byShare = Math.floor(((2 / 3) * long + 0.01) / width);
        expect(outcome.fits ? outcome.layout.places.length : 0).toBe(Math.max(0, Math.min(byRoom, byShare)));
      },
    ),
  );
});

test('what is said to fit when nothing does, fits', () => {
  let said = 0;
  fc.assert(
    fc.property(contacts, tenons, fc.tuple(depth, depth), fc.boolean(), (contact, sizes, behind, round) => {
      const place = joint(contact, behind);
      const dowels = sizes.map(({ thickness, length }) => ({ diameter: thickness, length }));
      const outcome = round ? layOutDowels(place, dowels) : layOutLooseTenons(place, sizes);
      if (outcome.fits || outcome.fault.wouldFit === undefined) return;
      said++;
      const made = outcome.fault.wouldFit;
      const again = round
        ? layOutDowels(place, [{ diameter: made.thickness, length: made.length }])
        : layOutLooseTenons(place, [made]);
      expect(again.fits).toBe(true);
    }),
    { numRuns: 80 },
  );
  expect(said).toBeGreaterThan(5);
});
