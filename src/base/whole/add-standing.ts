import type { SolidKernel } from '../solids/index.ts';
import type { BuildOptions, BuiltBase } from './build-base.ts';
import { standingUp } from './standing-up.ts';

export type StandingOptions = Pick<BuildOptions, 'wood' | 'woods' | 'lengths'>;

/** The same base with how it weighs and stands, and what is to be said of that. */
export function addStanding(
  built: BuiltBase,
  solids: SolidKernel,
  { wood, woods, lengths }: StandingOptions,
): BuiltBase {
  const { base, joints } = built;
  const standing = standingUp(solids, base, joints.joints, {
    woodOf: (part) => woods[part.drawn.name] ?? wood,
    topWood: wood,
    lengths,
  });
  return {
    base,
    joints,
    made: built.made,
    get cuts() {
      return built.cuts;
    },
    get order() {
      return built.order;
    },
    get list() {
      return built.list;
    },
    glue: built.glue,
    get cauls() {
      return built.cauls;
    },
    get errors() {
      return built.errors;
    },
    standing,
    woodOf: built.woodOf,
    findings: [...built.findings, ...standing.findings],
  };
}
