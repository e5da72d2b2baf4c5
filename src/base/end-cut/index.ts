export type {
  Arris,
  Arrises,
  ArrisName,
  Blank,
  CutPlane,
  EdgeSide,
  End,
  EndCut,
  FlatCut,
  Hand,
  Laid,
  Lay,
  LongPoint,
  MarkedLine,
  Reading,
  Reference,
  RipCut,
  SawnCut,
  SawRange,
  SawSetting,
  Side,
} from './api.ts';
export { arrisesOfCut } from './arrises.ts';
export { type CutError, cutError, type SlipEffect } from './cut-error.ts';
export type { Move } from './lay.ts';
export { type Lean, leanOf, rakeAndSplayOf } from './lean.ts';
export { type LegFrame, type LegSection, rollToLean, rollToRails, sectionOfLeg } from './leg-roll.ts';
export { mirrorBlank, mirroredCut, mirrorPlane, type NextCut, nextCut } from './next-cut.ts';
export { orderOfSettings, type SettingOrder } from './order-of-settings.ts';
export type { PictureLabel, PictureLine, PictureView, SettingPicture, WorkSize } from './picture/api.ts';
export { settingPicture } from './picture/setting-picture.ts';
export { anglesOfNormal, type PlaneAngles, planeOfAngles } from './plane-angles.ts';
export { sawCautions } from './saw-cautions.ts';
export { sawnCut } from './sawn-cut.ts';
export { sayCut, sayLaid } from './say-cut.ts';
export { sayCutError } from './say-cut-error.ts';
export { sayNextCut } from './say-next-cut.ts';
export { sayWays } from './say-ways.ts';
export type { CutToSet, SettingGroup } from './setting-groups.ts';
export { type SawWay, waysToSaw } from './ways-to-saw.ts';
export { type Excess, excessOver, type Section } from './within-saw.ts';
export type { CutAngleStyle, CutStyle } from './words.ts';
