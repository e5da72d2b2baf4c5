export type {
  Blank,
  CutPlane,
  EdgeSide,
  EndCut,
  Laid,
  Lay,
  SawnCut,
  SawRange,
  SawSetting,
  Side,
} from './api.ts';
export { arrisesOfCut } from './arrises.ts';
export { type CutError, cutError } from './cut-error.ts';
export { leanOf, rakeAndSplayOf } from './lean.ts';
export { type LegFrame, rollToLean, rollToRails, sectionOfLeg } from './leg-roll.ts';
export { heldCut, mirrorBlank, mirroredCut, mirrorPlane, type NextCut, nextCut } from './next-cut.ts';
export { orderOfSettings, type SettingOrder } from './order-of-settings.ts';
export type { PictureView, WedgePicture } from './picture/api.ts';
export { settingPicture } from './picture/setting-picture.ts';
export { anglesOfNormal, planeOfAngles } from './plane-angles.ts';
export { sawCautions } from './saw-cautions.ts';
export { sawnCut } from './sawn-cut.ts';
export { sayCut } from './say-cut.ts';
export { sayCutError } from './say-cut-error.ts';
export { sayNextCut } from './say-next-cut.ts';
export { type CutTable, linesToMark, tableOfWays } from './say-table.ts';
export { sayHoldDown, sayWays } from './say-ways.ts';
export type { CutToSet } from './setting-groups.ts';
export { type SawWay, waysToSaw } from './ways-to-saw.ts';
export { excessOver } from './within-saw.ts';
