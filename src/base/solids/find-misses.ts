import { CONTACT_TOLERANCE, type Vec3 } from '../../geometry/index.ts';
import type { JointSketch } from '../../sketch/index.ts';
import type { Solid } from './api.ts';
import { leastGap, placeOfLeastGap } from './least-gap.ts';

/** A part that a joint of the form should join, and that reaches none of its mates. */
export interface JointMiss {
  /** Name of the joint in the form. */
  readonly joint: string;
  readonly part: string;
  /** The mate that it comes nearest to. */
  readonly nearest: string;
  /** mm between them. */
  readonly gap: number;
  /** In the middle of that gap, in the world. */
  readonly at: Vec3;
}

/**
 * Where joints of the form are not made. One of a joint's two places must have all its copies joined (four legs may share two rails); of
 * the place with fewer copies left alone, each is told with the mate that it comes nearest to.
 */
export function findMisses(
  solids: readonly Solid[],
  joints: readonly Pick<JointSketch, 'name' | 'between'>[],
): readonly JointMiss[] {
  return joints.flatMap(({ name, between }) => {
    const [first, second] = between.map((place) => solids.filter(({ part }) => part.place === place));
    const alone = [aloneOf(first!, second!), aloneOf(second!, first!)];
    const [fewest] = alone.toSorted((p, q) => p.length - q.length);
    return fewest!.map((miss) => ({ joint: name, ...miss }));
  });
}

function aloneOf(own: readonly Solid[], others: readonly Solid[]): readonly Omit<JointMiss, 'joint'>[] {
  return own.flatMap((solid) => {
    const mates = others.filter((mate) => mate !== solid);
    if (mates.length === 0 || mates.some((mate) => touch(solid, mate))) return [];
    let [nearest, gap] = [mates[0]!, Infinity];
    for (const mate of mates) {
      const found = leastGap(solid, mate, gap);
      if (found < gap) [nearest, gap] = [mate, found];
    }
    return [{ part: solid.part.id, nearest: nearest.part.id, gap, at: placeOfLeastGap(solid, nearest) }];
  });
}

const touch = (a: Solid, b: Solid): boolean => leastGap(a, b, 2 * CONTACT_TOLERANCE) <= CONTACT_TOLERANCE;
