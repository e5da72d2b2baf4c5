import { polar, type Vec, vec } from '../../../geometry/index.ts';
import { OPPOSITE } from '../lay.ts';
import { type CutStyle, END, SIDE, sayAngle, TEXT } from '../words.ts';
import type { PictureView, SetWork, WorkSize } from './api.ts';
import { fan, handSign, line } from './strokes.ts';

/**
 * The saw from above, the work along an auxiliary fence that stands square to the saw's own, the end that is cut towards the fence. Turned
 * anticlockwise, the side that would lie at the fence looks to the left.
 */
export function atSquareFence(set: SetWork, { high, across }: WorkSize, style: CutStyle): PictureView {
  const { lay, setting, mitre, stopEnd, turned } = set;
  const unit = Math.max(across, high);
  const left = (turned?.angle ?? 0) > 0;
  const slope = Math.tan(setting.swing);
  // The blade crosses the middle of the work this far from the fence, the waste clear of it.
  const depth = 0.4 * unit + (across / 2) * Math.abs(1 / slope);
  const middle = depth * slope;
  const [from, to] = [middle - across / 2, middle + across / 2];
  const aside = (z: number): number => (Math.tan(setting.tilt) / Math.cos(setting.swing)) * z;
  const onBlade = (x: number, z: number): Vec => vec(x, -(x - aside(z)) / slope);
  const foot = -depth - (across / 2) * Math.abs(1 / slope) - 1.6 * unit;
  const head = -0.1 * unit;
  const fence = left ? from : to;
  const wide = (left ? -1 : 1) * 0.25 * unit;
  const half = Math.max(Math.abs(from), Math.abs(to)) + 1.4 * unit;
  const end = stopEnd === 'far' ? END.near : END.far;
  const table = foot - 0.3 * unit;
  const bladeAt = (radius: number): Vec => polar(-Math.PI / 2 + setting.swing, radius);
  const reach = Math.min(-table, half / Math.max(Math.abs(Math.sin(setting.swing)), 0.1)) - 0.1 * unit;
  return {
    lines: [
      line('table', 'narrow', [vec(-half, table), vec(half, table), vec(half, 0), vec(-half, 0)], true),
      line(
        'fence',
        'wide',
        [vec(-half, 0), vec(half, 0), vec(half, 0.2 * unit), vec(-half, 0.2 * unit)],
        true,
      ),
      line(
        'auxiliary',
        'wide',
        [vec(fence, 0), vec(fence + wide, 0), vec(fence + wide, foot), vec(fence, foot)],
        true,
      ),
      line('work', 'wide', [vec(from, foot), onBlade(from, high), onBlade(to, high), vec(to, foot)], true),
      ...(setting.tilt === 0 ? [] : [line('work-below', 'dashed', [onBlade(from, 0), onBlade(to, 0)])]),
      line('waste', 'narrow', [onBlade(from, high), vec(from, head), vec(to, head), onBlade(to, high)]),
      line('square', 'chain', [vec(0, 0.3 * unit), vec(0, table)]),
      line('blade', 'double-chain', [bladeAt(-0.3 * unit), bladeAt(reach)]),
      line('angle', 'narrow', fan(-Math.PI / 2, setting.swing, 0.6 * reach)),
    ],
    labels: [
      {
        what: 'side-at-fence',
        at: vec(left ? from + 0.2 * across : to - 0.2 * across, foot + 0.5 * unit),
        text: SIDE[lay.fence],
      },
      { what: 'side-up', at: vec(middle, foot + 0.9 * unit), text: SIDE[OPPOSITE[lay.down]] },
      { what: 'sawn-end', at: vec(middle, head - 0.2 * unit), text: end },
      { what: 'auxiliary', at: vec(fence + wide / 2, foot + 0.3 * unit), text: TEXT.auxiliary },
      { what: 'clamp', at: vec(middle, foot + 0.2 * unit), text: TEXT.clamp },
      {
        what: 'fence',
        at: vec(-handSign(left ? 'left' : 'right') * 0.8 * half, 0.07 * unit),
        text: TEXT.fence,
      },
      { what: 'sawyer', at: vec(0, table + 0.1 * unit), text: TEXT.sawyer },
      {
        what: 'swing',
        at: polar(-Math.PI / 2 + setting.swing / 2, 0.65 * reach),
        text: sayAngle(mitre.fromSquare, style),
      },
    ],
  };
}
