import { norm, polar, type Vec, vec } from '../../../geometry/index.ts';
import { OPPOSITE } from '../lay.ts';
import { type CutStyle, SIDE, sayAngle, TEXT } from '../words.ts';
import type { PictureView, SetWork, WorkSize } from './api.ts';
import { breakLine, fan, handSign, line } from './strokes.ts';

/** The saw along the line of cut. */
export function tiltOf(set: SetWork, { high, across }: WorkSize, style: CutStyle): PictureView {
  const { lay, setting, tilt, waste } = set;
  const unit = Math.max(across, high);
  const toWaste = handSign(waste);
  const slope = slopeOf(set);
  const lean = Math.tan(setting.tilt) * high;
  const [kept, off] = [-toWaste * 1.5 * unit, toWaste * (unit + Math.abs(lean) + high * Math.abs(slope))];
  const thin = Math.min(kept, off) * (slope > 0 ? 1 : 0) + Math.max(kept, off) * (slope < 0 ? 1 : 0);
  const thick = slope > 0 ? Math.max(kept, off) : Math.min(kept, off);
  const tall = high * norm(1, slope);
  const sideAt = (x: number, up: number): Vec => vec(x, (x - thin) * slope + up);
  // The blade's line x = z · tan tilt through a side of the work.
  const crossing = (up: number): Vec => {
    const z = (up - thin * slope) / (1 - slope * Math.tan(setting.tilt));
    return vec(z * Math.tan(setting.tilt), z);
  };
  const section = (end: number): readonly Vec[] => [
    sideAt(end, 0),
    crossing(0),
    crossing(tall),
    sideAt(end, tall),
  ];
  const highest = Math.max(sideAt(kept, tall).y, sideAt(off, tall).y, high);
  const reach = highest + 0.6 * unit;
  const bladeAt = (radius: number): Vec => polar(Math.PI / 2 - setting.tilt, radius);
  const broken = (x: number) =>
    line('break', 'narrow', breakLine(x, sideAt(x, 0).y, sideAt(x, tall).y, 0.06 * unit));
  return {
    lines: [
      line('table', 'wide', [vec(-2 * unit, 0), vec(2 * unit, 0)]),
      ...(slope === 0 ? [] : [line('wedge', 'wide', [vec(thin, 0), vec(thick, 0), sideAt(thick, 0)], true)]),
      line('work', 'wide', section(kept)),
      line('waste', 'narrow', section(off)),
      broken(kept),
      broken(off),
      line('square', 'chain', [vec(0, -0.2 * unit), vec(0, reach)]),
      line('blade', 'double-chain', [bladeAt(-0.15 * unit), bladeAt(reach)]),
      ...(setting.tilt === 0
        ? []
        : [line('angle', 'narrow', fan(Math.PI / 2, -setting.tilt, reach - 0.15 * unit))]),
    ],
    labels: [
      {
        what: 'side-up',
        at: vec(kept / 2, sideAt(kept / 2, tall).y + 0.08 * unit),
        text: SIDE[OPPOSITE[lay.down]],
      },
      ...(slope === 0
        ? [{ what: 'side-down' as const, at: vec(kept / 2, -0.15 * unit), text: SIDE[lay.down] }]
        : [
            { what: 'side-down' as const, at: sideAt(kept / 2, 0.12 * unit), text: SIDE[lay.down] },
            {
              what: 'wedge' as const,
              at: vec(0.7 * thick, 0.4 * sideAt(0.7 * thick, 0).y),
              text: TEXT.wedge,
            },
            { what: 'clamp' as const, at: sideAt(0.8 * kept, tall + 0.25 * unit), text: TEXT.clamp },
          ]),
      {
        what: 'tilt',
        at: polar(Math.PI / 2 - setting.tilt / 2, reach + 0.05 * unit),
        text: sayAngle(tilt.fromSquare, style),
      },
    ],
  };
}

/** Of the work on the table, where a wedge lies under it: positive where it is thick at the sawyer's right. */
function slopeOf({ kind, wedge }: SetWork): number {
  if (kind !== 'wedge-under' || wedge?.to === undefined) return 0;
  return handSign(wedge.to) * Math.tan(wedge.fromSquare);
}
