import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { JointFault, JointLayout } from './api.ts';
import type { FitRules } from './rules.ts';

export type Depths = Pick<JointLayout, 'into' | 'mortise'>;
export type Broken = Omit<NonNullable<JointFault['nearest']>, 'size'>;

/** How far (mm) a piece may reach into wood of this depth, and which rule says so. */
export function mostInto(
  behind: number,
  rules: FitRules,
): { readonly most: number; readonly rule: 'depthShare' | 'bottomWall' } {
  const byShare = rules.depthShare * behind;
  const byWall = behind - rules.bottomWall;
  const rule = byShare <= byWall ? 'depthShare' : 'bottomWall';
  return { most: Math.max(0, Math.min(byShare, byWall) - rules.depthClearance), rule };
}

/**
 * How a piece of a length is shared between two parts with so much wood behind the joint: half and half, or as much as the shallower
 * allows and the rest into the deeper. Or the rule that this breaks.
 */
export function depthsOfInsert(
  length: number,
  thickness: number,
  behind: readonly [number, number],
  rules: FitRules,
): Depths | Broken {
  const [a, b] = [mostInto(behind[0], rules), mostInto(behind[1], rules)];
  const [shallow, deep] = a.most <= b.most ? [a, b] : [b, a];
  const less = Math.min(length / 2, shallow.most);
  const more = length - less;
  if (more > deep.most + RESIDUE_TOLERANCE) return { rule: deep.rule, measured: more, limit: deep.most };
  const least = rules.leastDepth * thickness;
  if (less < least - RESIDUE_TOLERANCE) {
    // A piece too short for any joint breaks the rule by itself, otherwise the wood is too shallow for it.
    return { rule: 'leastDepth', measured: less, limit: least };
  }
  const into = a.most <= b.most ? ([less, more] as const) : ([more, less] as const);
  const clear = rules.depthClearance;
  return { into, mortise: [into[0] + clear, into[1] + clear] };
}
