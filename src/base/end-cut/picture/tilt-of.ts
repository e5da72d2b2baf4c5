import { polar, type Vec, vec } from '../../../geometry/index.ts';
import type { Laid } from '../api.ts';
import { OPPOSITE } from '../lay.ts';
import { type CutStyle, SIDE, sayAngle } from '../words.ts';
import type { PictureView, WorkSize } from './api.ts';
import { breakLine, fan, handSign, line } from './strokes.ts';

/** The saw along the line of cut. */
export function tiltOf(
  { lay, setting, tilt, waste }: Laid,
  { high, across }: WorkSize,
  style: CutStyle,
): PictureView {
  const unit = Math.max(across, high);
  const toWaste = handSign(waste);
  const lean = Math.tan(setting.tilt) * high;
  const section = (end: number): readonly Vec[] => [vec(end, 0), vec(0, 0), vec(lean, high), vec(end, high)];
  const [kept, off] = [-toWaste * 1.5 * unit, toWaste * (unit + Math.abs(lean))];
  const reach = high + 0.6 * unit;
  const bladeAt = (radius: number): Vec => polar(Math.PI / 2 - setting.tilt, radius);
  return {
    lines: [
      line('table', 'wide', [vec(-2 * unit, 0), vec(2 * unit, 0)]),
      line('work', 'wide', section(kept)),
      line('waste', 'narrow', section(off)),
      line('break', 'narrow', breakLine(kept, 0, high, 0.06 * unit)),
      line('break', 'narrow', breakLine(off, 0, high, 0.06 * unit)),
      line('square', 'chain', [vec(0, -0.2 * unit), vec(0, reach)]),
      line('blade', 'double-chain', [bladeAt(-0.15 * unit), bladeAt(reach)]),
      ...(setting.tilt === 0
        ? []
        : [line('angle', 'narrow', fan(Math.PI / 2, -setting.tilt, reach - 0.15 * unit))]),
    ],
    labels: [
      { what: 'side-up', at: vec(kept / 2, high + 0.08 * unit), text: SIDE[OPPOSITE[lay.down]] },
      { what: 'side-down', at: vec(kept / 2, -0.15 * unit), text: SIDE[lay.down] },
      {
        what: 'tilt',
        at: polar(Math.PI / 2 - setting.tilt / 2, reach + 0.05 * unit),
        text: sayAngle(tilt.fromSquare, style),
      },
    ],
  };
}
