import { describe, expect, test } from 'vitest';
import { joinBase, partsToMake, standBase } from '../../../src/base/index.ts';
import {
  add3,
  areaOfRegions,
  CONTACT_TOLERANCE,
  directionToWorld,
  distance3,
  dot3,
  pointToWorld,
} from '../../../src/geometry/index.ts';
import { BASE_FORMS, sketchOf } from '../../forms/forms.ts';

/** Base forms at their defaults, joined with what a shop usually has. */
const CASES = BASE_FORMS.map(({ name }) => {
  const stood = standBase(sketchOf(name));
  if (!stood.ok) throw new Error(`${name} does not stand`);
  return { name, base: stood.value, joined: joinBase(stood.value) };
});

describe.each(CASES)('$name', ({ base, joined }) => {
  test('joins every two places that it names, and nothing stops the saw', () => {
    const made = new Set(joined.joints.map(({ name }) => name));
    expect([...made]).toEqual(base.joints.map(({ name }) => name));
    expect(joined.findings.filter(({ severity }) => severity === 'stop')).toEqual([]);
  });

  test('says of everything that is short by how much, and what number would do', () => {
    for (const { code, measured, limit, cure } of joined.findings) {
      expect(code).toMatch(/^joint\./);
      expect(measured?.value, code).toBeLessThan(limit!.value);
      expect(cure, code).toMatch(/\d/);
    }
  });

  test('drills both parts of a joint at the same places, towards each other', () => {
    for (const { kind, sides, loose } of joined.joints) {
      if (kind !== 'loose-tenons' && kind !== 'dowels') continue;
      const [first, second] = sides.map(({ part, work }) => {
        const { frame } = base.parts.find(({ id }) => id === part)!;
        return work.flatMap((bore) =>
          bore.kind === 'pocket' || bore.kind === 'tenon'
            ? []
            : [
                {
                  at: pointToWorld(frame, bore.own.origin),
                  along: directionToWorld(frame, bore.own.z),
                  depth: bore.depth,
                },
              ],
        );
      });
      expect(first!.length).toBe(loose!.count);
      for (const [k, bore] of first!.entries()) {
        const mate = second![k]!;
        expect(distance3(bore.at, mate.at)).toBeLessThan(CONTACT_TOLERANCE);
        expect(dot3(bore.along, mate.along)).toBeCloseTo(-1, 7);
        // The piece finds room in the two mortises together.
        expect(bore.depth + mate.depth).toBeGreaterThan(loose!.size.length);
        expect(add3(bore.along, mate.along).x).toBeCloseTo(0, 7);
      }
    }
  });

  test('makes every piece from a pattern, and mirrored copies from the same', () => {
    const made = partsToMake(base, joined);
    expect(made.flatMap(({ members }) => members.map(({ part }) => part)).sort()).toEqual(
      base.parts.map(({ id }) => id).sort(),
    );
    expect(new Set(made.map(({ label }) => label)).size).toBe(made.length);
    for (const { sketch, members, silhouette } of made) {
      expect(sketch.quantity.left + sketch.quantity.right).toBe(members.length);
      expect(areaOfRegions(silhouette)).toBeGreaterThanOrEqual(areaOfRegions([sketch.region]) - 1e-6);
    }
    // A place and its mirror images are cut and joined alike unless halving tells them apart.
    if (base.joints.every(({ kind }) => kind !== 'halved')) {
      const places = new Set(base.parts.map(({ place }) => place));
      expect(made.length).toBeLessThanOrEqual(places.size);
    }
  });
});
