import { polar, type Vec, vec } from '../../../geometry/index.ts';
import type { Laid } from '../api.ts';
import { OPPOSITE } from '../lay.ts';
import { type CutStyle, END, SIDE, sayAngle, TEXT } from '../words.ts';
import type { PictureView, WorkSize } from './api.ts';
import { breakLine, fan, handSign, line } from './strokes.ts';

/** The saw from above. */
export function planOf(
  { lay, setting, mitre, waste, stopEnd }: Laid,
  { high, across }: WorkSize,
  style: CutStyle,
): PictureView {
  const unit = Math.max(across, high);
  const toWaste = handSign(waste);
  const [kept, off] = [-toWaste * 2 * unit, toWaste * (unit + across * Math.tan(Math.abs(setting.swing)))];
  // Where the blade crosses the work at a height, at the fence and at the near side.
  const crossing = (y: number, z: number): Vec =>
    vec(-Math.tan(setting.swing) * y + (Math.tan(setting.tilt) / Math.cos(setting.swing)) * z, y);
  const [far, near] = [0, -across];
  const outlineAt = (end: number, z: number): readonly Vec[] => [
    vec(end, far),
    crossing(far, z),
    crossing(near, z),
    vec(end, near),
  ];
  const reach = across + 0.6 * unit;
  const half = Math.max(Math.abs(kept), Math.abs(off)) + 0.5 * unit;
  const bladeAt = (radius: number): Vec => polar(-Math.PI / 2 + setting.swing, radius);
  const end = stopEnd === 'far' ? END.near : END.far;
  return {
    lines: [
      line(
        'table',
        'narrow',
        [vec(-half, -reach - 0.2 * unit), vec(half, -reach - 0.2 * unit), vec(half, 0), vec(-half, 0)],
        true,
      ),
      line(
        'fence',
        'wide',
        [vec(-half, 0), vec(half, 0), vec(half, 0.2 * unit), vec(-half, 0.2 * unit)],
        true,
      ),
      line('work', 'wide', outlineAt(kept, high)),
      ...(setting.tilt === 0 ? [] : [line('work-below', 'dashed', [crossing(far, 0), crossing(near, 0)])]),
      line('waste', 'narrow', outlineAt(off, high)),
      line('break', 'narrow', breakLine(0.55 * kept, near, far, 0.06 * unit)),
      line('work', 'wide', [vec(kept, near), vec(kept, far)]),
      line('break', 'narrow', breakLine(off, near, far, 0.06 * unit)),
      line('square', 'chain', [vec(0, 0.3 * unit), vec(0, -reach)]),
      line('blade', 'double-chain', [bladeAt(-0.3 * unit), bladeAt(reach / Math.cos(setting.swing))]),
      ...(setting.swing === 0
        ? []
        : [line('angle', 'narrow', fan(-Math.PI / 2, setting.swing, reach - 0.15 * unit))]),
      line('stop', 'wide', stopAt(kept, toWaste, 0.2 * unit), true),
    ],
    labels: [
      { what: 'side-at-fence', at: vec(0.78 * kept, -0.12 * unit), text: SIDE[lay.fence] },
      { what: 'side-up', at: vec(0.78 * kept, -across / 2), text: SIDE[OPPOSITE[lay.down]] },
      { what: 'sawn-end', at: vec(off * 0.75, -across / 2), text: end },
      { what: 'stop', at: vec(kept - toWaste * 0.27 * unit, -0.52 * unit), text: END[stopEnd] },
      { what: 'sawyer', at: vec(0, -reach - 0.15 * unit), text: TEXT.sawyer },
      { what: 'fence', at: vec(0.78 * kept, 0.07 * unit), text: TEXT.fence },
      {
        what: 'swing',
        at: polar(-Math.PI / 2 + setting.swing / 2, reach + 0.05 * unit),
        text: sayAngle(mitre.fromSquare, style),
      },
    ],
  };
}

function stopAt(kept: number, toWaste: number, size: number): readonly Vec[] {
  const back = kept - toWaste * size;
  return [vec(kept, 0), vec(back, 0), vec(back, -2 * size), vec(kept, -2 * size)];
}
