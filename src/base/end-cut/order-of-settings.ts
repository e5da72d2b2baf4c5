import type { SawSetting } from './api.ts';
import { SAME_SETTING } from './facts.ts';
import { type CutToSet, groupSettings, type SettingGroup } from './setting-groups.ts';
import { exactPath, goodPath, type StepCost } from './shortest-path.ts';

export interface SettingOrder {
  readonly groups: readonly SettingGroup[];
  /** How often the swing and the tilt are changed, the first setting counted from `from`. */
  readonly swingChanges: number;
  readonly tiltChanges: number;
  /** True where no order needs fewer changes. */
  readonly exact: boolean;
}

/** Up to so many groups the order is exact. */
const EXACT_UP_TO = 12;
/** A change of swing or tilt counts one; among equal counts fewer changes of tilt, then less turning of the saw, decide. */
const TILT_EXTRA = 1e-4;
const PER_RADIAN = 1e-8;

/**
 * Cuts gathered by equal setting, in the order that changes the saw least often, starting from a setting (square unless given).
 * Exact by dynamic programming up to 12 groups (some 10 ms); beyond, nearest first and then improved.
 */
export function orderOfSettings(
  cuts: readonly CutToSet[],
  from: SawSetting = { swing: 0, tilt: 0 },
): SettingOrder {
  const groups = groupSettings(cuts);
  const settingAt = (index: number): SawSetting => (index < 0 ? from : groups[index]!.setting);
  const step: StepCost = (a, b) => {
    const { swing, tilt } = changes(settingAt(a), settingAt(b));
    const turning =
      Math.abs(settingAt(a).swing - settingAt(b).swing) + Math.abs(settingAt(a).tilt - settingAt(b).tilt);
    return swing + tilt * (1 + TILT_EXTRA) + turning * PER_RADIAN;
  };
  const exact = groups.length <= EXACT_UP_TO;
  const path = (exact ? exactPath : goodPath)(groups.length, step);
  const steps = path.map((stop, at) => changes(settingAt(at === 0 ? -1 : path[at - 1]!), settingAt(stop)));
  return {
    groups: path.map((stop) => groups[stop]!),
    swingChanges: steps.reduce((sum, { swing }) => sum + swing, 0),
    tiltChanges: steps.reduce((sum, { tilt }) => sum + tilt, 0),
    exact,
  };
}

function changes(a: SawSetting, b: SawSetting): { readonly swing: 0 | 1; readonly tilt: 0 | 1 } {
  return {
    swing: Math.abs(a.swing - b.swing) > SAME_SETTING ? 1 : 0,
    tilt: Math.abs(a.tilt - b.tilt) > SAME_SETTING ? 1 : 0,
  };
}
