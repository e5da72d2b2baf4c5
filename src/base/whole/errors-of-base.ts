import { boundsOfRegions, distance3 } from '../../geometry/index.ts';
import type { StandingBase } from '../api.ts';
import type { Joint } from '../joints/api.ts';
import {
  type ErrorBudget,
  type ErrorsOfJoint,
  errorsOfJoint,
  rockFromLegLengths,
  USUAL_WORK,
  type WorkErrors,
} from '../statics/index.ts';
import { cornersInWorld, footEnds } from './corners-in-world.ts';

/** What the errors of a workshop do at one kind of joint. */
export interface JointErrors {
  readonly name: string;
  readonly label: string;
  /** Across the joint, and from it to the foot of the part that the floor cuts (of parts off the floor: to their farthest corner), mm. */
  readonly section: number;
  readonly arm: number;
  readonly errors: ErrorsOfJoint;
}

export interface ErrorsOfBase {
  readonly work: WorkErrors;
  /** Those that cost most at the feet first. */
  readonly joints: readonly JointErrors[];
  /** Under the fourth foot when every leg may be off in length; of a base on four legs. */
  readonly rock?: ErrorBudget;
}

/** The error budget of a base: for each kind of joint what is off at it and at the feet when saw, length and template are as usual off. */
export function errorsOfBase(base: StandingBase, joints: readonly Joint[]): ErrorsOfBase {
  const feet = footEnds(base.parts);
  const found = new Map<string, JointErrors>();
  for (const { name, label, contact, sides } of joints) {
    if (contact === undefined || found.has(name)) continue;
    const box = boundsOfRegions(contact.regions);
    const section = Math.max(box.maxX - box.minX, box.maxY - box.minY);
    const own = feet.filter((foot) => sides.some(({ part }) => part === foot.name)).map(({ at }) => at);
    const joined = base.parts.filter(({ id }) => sides.some(({ part }) => part === id));
    const ends = own.length > 0 ? own : joined.flatMap(cornersInWorld);
    const arm = Math.max(...ends.map((at) => distance3(at, contact.frame.origin)));
    found.set(name, { name, label, section, arm, errors: errorsOfJoint(section, arm) });
  }
  const rock = feet.length === 4 ? rockOf(feet.map(({ at }) => at)) : undefined;
  return {
    work: USUAL_WORK,
    joints: [...found.values()].toSorted((a, b) => b.errors.foot.worst - a.errors.foot.worst),
    ...(rock === undefined ? {} : { rock }),
  };
}

function rockOf(feet: readonly { readonly x: number; readonly y: number }[]): ErrorBudget | undefined {
  // In order round the middle.
  const middle = {
    x: feet.reduce((sum, { x }) => sum + x, 0) / feet.length,
    y: feet.reduce((sum, { y }) => sum + y, 0) / feet.length,
  };
  const round = feet.toSorted(
    (a, b) => Math.atan2(a.y - middle.y, a.x - middle.x) - Math.atan2(b.y - middle.y, b.x - middle.x),
  );
  const [a, b, c, d] = round;
  return rockFromLegLengths([a!, b!, c!, d!], USUAL_WORK.length);
}
