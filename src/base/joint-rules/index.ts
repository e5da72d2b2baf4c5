export type {
  DrilledPart,
  InsertPlace,
  JointFault,
  JointLayout,
  JointOutcome,
  JointPlace,
  RuleName,
  Wall,
  WallsLeft,
} from './api.ts';
export { layOutDowels } from './dowels.ts';
export { type DrilledHole, holeOfPlace } from './drilled-hole.ts';
export { glueArea } from './glue-area.ts';
export { holeDistance, surelyLeave } from './hole-distance.ts';
export { layOutLooseTenons } from './loose-tenons.ts';
export { layOutTenon, type TenonLayout } from './mortise-and-tenon.ts';
export { type DowelRules, dowelRules, type TenonRules, tenonRules } from './rules.ts';
export { soonestOn } from './walls-behind.ts';
export { wallsLeft } from './walls-left.ts';
