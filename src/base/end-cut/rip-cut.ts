import type { Blank, CutPlane, RipCut } from './api.ts';
import { referenceOf } from './arrises.ts';
import { SAME_SETTING } from './facts.ts';
import { planeInFenceFrame } from './fence-frame.ts';
import { readingOf } from './reading.ts';

/**
 * A cut along the length. With m its normal in the frame of the fence line, the taper is atan2(my, |mx|), the blade's tilt
 * asin |mz|, and mz > 0 leaves the back wider. The wider side lies up: then the blade leans away from the fence, and the piece
 * that is kept is not caught between the two.
 */
export function ripCut(plane: CutPlane, blank: Blank): RipCut {
  const { normal: m, point } = planeInFenceFrame(plane, blank.fenceAngle);
  const edge = m.x < 0 ? 'left' : 'right';
  const taper = Math.atan2(m.y, Math.abs(m.x));
  const bevel = Math.asin(Math.max(-1, Math.min(1, m.z)));
  const wider = Math.abs(bevel) < SAME_SETTING ? undefined : bevel > 0 ? 'back' : 'face';
  const reference = referenceOf(blank);
  const other = edge === 'left' ? blank.right : blank.left;
  const widthAt = (z: number): number => {
    const from = other - z * Math.tan(blank.skew ?? 0);
    const y = reference(from, z);
    return Math.abs(point.x - (m.y * (y - point.y) + m.z * (z - point.z)) / m.x - from);
  };
  return {
    kind: 'rip',
    edge,
    plane,
    taper: Math.abs(taper) < SAME_SETTING ? 0 : taper,
    bevel: wider === undefined ? 0 : bevel,
    tilt: { ...readingOf(bevel), to: undefined },
    jig: { ...readingOf(taper), to: undefined },
    wider,
    down: wider === 'back' ? 'face' : 'back',
    width: { face: widthAt(0), back: widthAt(-blank.thickness) },
  };
}
