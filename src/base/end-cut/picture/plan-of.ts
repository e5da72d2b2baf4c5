import { norm, polar, type Vec, vec } from '../../../geometry/index.ts';
import { OPPOSITE } from '../lay.ts';
import { type CutStyle, END, SIDE, sayAngle, TEXT } from '../words.ts';
import type { PictureView, SetWork, WorkSize } from './api.ts';
import { breakLine, fan, handSign, line } from './strokes.ts';

/** The saw from above. */
export function planOf(set: SetWork, { high, across }: WorkSize, style: CutStyle): PictureView {
  const { lay, setting, mitre, waste, stopEnd } = set;
  const unit = Math.max(across, high);
  const toWaste = handSign(waste);
  const slope = slopeOf(set);
  const [kept, off] = [
    -toWaste * 2 * unit,
    toWaste * (unit + across * Math.tan(Math.abs(setting.swing)) + across * Math.abs(slope)),
  ];
  // The work lies along a line that touches the fence at the thin end of a wedge, and everywhere without one.
  const thin = Math.min(kept, off) * (slope > 0 ? 1 : 0) + Math.max(kept, off) * (slope < 0 ? 1 : 0);
  const deep = across * norm(1, slope);
  const sideAt = (x: number, down: number): Vec => vec(x, -(x - thin) * slope - down);
  // Where the blade crosses one of the work's sides at a height.
  const crossing = (down: number, z: number): Vec => {
    const aside = (Math.tan(setting.tilt) / Math.cos(setting.swing)) * z;
    const y = (-(aside - thin) * slope - down) / (1 - slope * Math.tan(setting.swing));
    return vec(-Math.tan(setting.swing) * y + aside, y);
  };
  const [far, near] = [0, deep];
  const outlineAt = (end: number, z: number): readonly Vec[] => [
    sideAt(end, far),
    crossing(far, z),
    crossing(near, z),
    sideAt(end, near),
  ];
  const lowest = Math.min(sideAt(kept, near).y, sideAt(off, near).y);
  const reach = Math.max(across, -lowest) + 0.6 * unit;
  const half = Math.max(Math.abs(kept), Math.abs(off)) + 0.5 * unit;
  const bladeAt = (radius: number): Vec => polar(-Math.PI / 2 + setting.swing, radius);
  const end = stopEnd === 'far' ? END.near : END.far;
  const broken = (x: number) =>
    line('break', 'narrow', breakLine(x, sideAt(x, near).y, sideAt(x, far).y, 0.06 * unit));
  const label = (x: number, share: number): Vec => sideAt(x, share * deep);
  const thick = slope > 0 ? Math.max(kept, off) : Math.min(kept, off);
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
      ...(slope === 0
        ? []
        : [line('wedge', 'wide', [vec(thin, 0), vec(thick, 0), sideAt(thick, far)], true)]),
      line('work', 'wide', outlineAt(kept, high)),
      ...(setting.tilt === 0 ? [] : [line('work-below', 'dashed', [crossing(far, 0), crossing(near, 0)])]),
      line('waste', 'narrow', outlineAt(off, high)),
      broken(0.55 * kept),
      line('work', 'wide', [sideAt(kept, near), sideAt(kept, far)]),
      broken(off),
      line('square', 'chain', [vec(0, 0.3 * unit), vec(0, -reach)]),
      line('blade', 'double-chain', [bladeAt(-0.3 * unit), bladeAt(reach / Math.cos(setting.swing))]),
      ...(setting.swing === 0
        ? []
        : [line('angle', 'narrow', fan(-Math.PI / 2, setting.swing, reach - 0.15 * unit))]),
      ...(slope === 0 ? [line('stop', 'wide', stopAt(kept, toWaste, 0.2 * unit), true)] : []),
    ],
    labels: [
      { what: 'side-at-fence', at: label(0.78 * kept, 0.12), text: SIDE[lay.fence] },
      { what: 'side-up', at: label(0.78 * kept, 0.5), text: SIDE[OPPOSITE[lay.down]] },
      { what: 'sawn-end', at: label(off * 0.75, 0.5), text: end },
      ...(slope === 0
        ? [{ what: 'stop' as const, at: vec(kept - toWaste * 0.27 * unit, -0.52 * unit), text: END[stopEnd] }]
        : [
            {
              what: 'wedge' as const,
              at: vec(0.8 * thick, -0.3 * Math.abs(thick - thin) * Math.abs(slope)),
              text: TEXT.wedge,
            },
            { what: 'clamp' as const, at: label(0.35 * kept, 0.8), text: TEXT.clamp },
          ]),
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

/** Of the work against the fence, where a wedge stands between them: positive where it is thick at the sawyer's right. */
function slopeOf({ kind, wedge }: SetWork): number {
  if (kind !== 'wedge-at-fence' || wedge?.to === undefined) return 0;
  return handSign(wedge.to) * Math.tan(wedge.fromSquare);
}

function stopAt(kept: number, toWaste: number, size: number): readonly Vec[] {
  const back = kept - toWaste * size;
  return [vec(kept, 0), vec(back, 0), vec(back, -2 * size), vec(kept, -2 * size)];
}
