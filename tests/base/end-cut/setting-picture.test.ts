import { describe, expect, it } from 'vitest';
import { settingPicture } from '../../../src/base/end-cut/index.ts';
import { endCut, farCut } from './parts.ts';

const WORK = { high: 25, across: 90 };

describe('the picture of a setting', () => {
  it('shows the blade at the swing, the work on its kept side, and the stop at the kept end', () => {
    const laid = endCut(farCut(20, 0)).onBack;
    const { lines, labels } = settingPicture(laid, WORK).plan;
    const [from, to] = lines.find(({ what }) => what === 'blade')!.points;
    expect(Math.atan2(to!.x - from!.x, from!.y - to!.y)).toBeCloseTo(laid.setting.swing, 12);
    const stop = lines.find(({ what }) => what === 'stop')!.points;
    const waste = lines.find(({ what }) => what === 'waste')!.points;
    expect(Math.sign(stop[0]!.x)).toBe(1);
    expect(Math.sign(waste[0]!.x)).toBe(-1);
    expect(labels.find(({ what }) => what === 'swing')?.text).toBe('20°');
    expect(labels.find(({ what }) => what === 'side-at-fence')?.text).toBe('right edge');
    expect(lines.some(({ what }) => what === 'work-below')).toBe(false);
  });

  it('leans the blade as the saw tilts, through the work from the table up', () => {
    const laid = endCut(farCut(0, 30)).onBack;
    const { lines, labels } = settingPicture(laid, WORK).tilt;
    const [low, high] = lines.find(({ what }) => what === 'blade')!.points;
    expect(Math.atan2(high!.x - low!.x, high!.y - low!.y)).toBeCloseTo(laid.setting.tilt, 12);
    const kept = lines.find(({ what }) => what === 'work')!.points;
    expect(kept[1]).toEqual({ x: 0, y: 0 });
    expect(kept[2]!.x).toBeCloseTo(25 * Math.tan(laid.setting.tilt), 12);
    expect(labels.find(({ what }) => what === 'tilt')?.text).toBe('30°');
  });

  it('cuts the work on the line that the arrises give, above and at the table', () => {
    const cut = endCut(farCut(25, 12));
    const { lines } = settingPicture(cut.onBack, WORK).plan;
    const above = lines.find(({ what }) => what === 'work')!.points;
    const below = lines.find(({ what }) => what === 'work-below')!.points;
    const [faceLeft, faceRight, , backRight] = cut.arrises.all.map(({ length }) => length);
    // Right edge at the fence: a longer arris reaches further to the left.
    expect(above[2]!.x - above[1]!.x).toBeCloseTo(faceRight! - faceLeft!, 9);
    expect(above[1]!.x - below[0]!.x).toBeCloseTo(backRight! - faceRight!, 9);
  });

  it('keeps every line within its table, whatever the angle', () => {
    for (const swing of [-60, 0, 60]) {
      const { lines } = settingPicture(endCut(farCut(swing, 20)).onBack, WORK).plan;
      const table = lines.find(({ what }) => what === 'table')!.points.map(({ x }) => x);
      const xs = lines
        .filter(({ what }) => what === 'waste' || what === 'work' || what === 'stop')
        .flatMap(({ points }) => points.map(({ x }) => x));
      expect(Math.max(...xs)).toBeLessThanOrEqual(Math.max(...table));
      expect(Math.min(...xs)).toBeGreaterThanOrEqual(Math.min(...table));
    }
  });
});
