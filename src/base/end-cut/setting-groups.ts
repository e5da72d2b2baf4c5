import type { SawSetting } from './api.ts';
import { SAME_SETTING } from './facts.ts';

export interface CutToSet {
  readonly id: string;
  readonly setting: SawSetting;
}

export interface SettingGroup {
  readonly setting: SawSetting;
  /** Identities of the cuts made at this setting, as they came. */
  readonly ids: readonly string[];
}

/**
 * Cuts whose swing and tilt are the same within 0.05° (SAME_SETTING), in order of first appearance. Swings and tilts are
 * gathered each for itself, so that two groups share a swing exactly or differ in it. A group is set to the figure that most
 * of its cuts want; the nearest to square where they are as many.
 */
export function groupSettings(cuts: readonly CutToSet[]): readonly SettingGroup[] {
  const swingOf = gathered(cuts.map(({ setting }) => setting.swing));
  const tiltOf = gathered(cuts.map(({ setting }) => setting.tilt));
  const groups = new Map<string, { readonly setting: SawSetting; readonly ids: string[] }>();
  for (const { id, setting } of cuts) {
    const common = { swing: swingOf(setting.swing), tilt: tiltOf(setting.tilt) };
    const key = `${common.swing} ${common.tilt}`;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { setting: common, ids: [id] });
    else group.ids.push(id);
  }
  return [...groups.values()];
}

/** Gives every value the common one of its gathering; a gathering spans no more than SAME_SETTING. */
function gathered(values: readonly number[]): (value: number) => number {
  const common = new Map<number, number>();
  let gathering: number[] = [];
  const close = (): void => {
    const chosen = mostWanted(gathering);
    for (const value of gathering) common.set(value, chosen);
  };
  for (const value of values.toSorted((a, b) => a - b)) {
    if (gathering.length > 0 && value - gathering[0]! > SAME_SETTING) {
      close();
      gathering = [];
    }
    gathering.push(value);
  }
  if (gathering.length > 0) close();
  return (value) => common.get(value)!;
}

function mostWanted(values: readonly number[]): number {
  const counts = new Map<number, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  const ranked = [...counts].sort(
    ([a, countA], [b, countB]) => countB - countA || Math.abs(a) - Math.abs(b) || a - b,
  );
  return ranked[0]![0];
}
