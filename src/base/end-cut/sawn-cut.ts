import { dot3, norm, type Vec3 } from '../../geometry/index.ts';
import type { Blank, CutPlane, EndCut, Laid, Lay, SawnCut } from './api.ts';
import { arrisesOfCut } from './arrises.ts';
import { RIP_WITHIN, SAME_SETTING } from './facts.ts';
import { planeInFenceFrame } from './fence-frame.ts';
import { canLie, layOnBack, layOnEdge } from './holding.ts';
import { NORMAL_OF_SIDE } from './lay.ts';
import { lineOnEdge, lineOnFace } from './lines-to-mark.ts';
import { anglesOfNormal } from './plane-angles.ts';
import { readingOf } from './reading.ts';
import { ripCut } from './rip-cut.ts';
import { settingOfCut } from './saw-setting.ts';

/**
 * One cut of a part in every way that a maker sets it. A plane along the face is planed or resawn (`flat`), one within 15° of
 * the length is ripped (`rip`), all others cross the part (`end`). Throws on a normal without direction.
 */
export function sawnCut(plane: CutPlane, blank: Blank): SawnCut {
  const m = planeInFenceFrame(plane, blank.fenceAngle).normal;
  const flat = norm(m.x, m.y);
  if (flat < Math.sin(SAME_SETTING)) return { kind: 'flat', side: m.z > 0 ? 'face' : 'back', plane };
  if (Math.abs(m.y) < flat * Math.sin(RIP_WITHIN)) return ripCut(plane, blank);
  return endCut(plane, m, blank);
}

function endCut(plane: CutPlane, m: Vec3, blank: Blank): EndCut {
  const { end, mitre, bevel } = anglesOfNormal(m);
  const standing = layOnEdge(blank);
  const width = blank.right - blank.left;
  return {
    kind: 'end',
    end,
    plane,
    mitre,
    bevel,
    square: Math.abs(mitre) < SAME_SETTING && Math.abs(bevel) < SAME_SETTING,
    onBack: laid(m, layOnBack(blank)),
    onEdge: canLie(standing, blank) ? laid(m, standing) : undefined,
    onFaceLine: lineOnFace(m, width),
    onEdgeLine: lineOnEdge(m, blank.thickness),
    inside: {
      face: insideAngle(m, NORMAL_OF_SIDE.face),
      back: insideAngle(m, NORMAL_OF_SIDE.back),
      left: insideAngle(m, edgeNormal('left', blank)),
      right: insideAngle(m, edgeNormal('right', blank)),
    },
    arrises: arrisesOfCut(plane, blank),
  };
}

/** A cut in a part that lies so, every figure of it. */
export function laid(m: Vec3, lay: Lay): Laid {
  const { setting, waste, stopEnd } = settingOfCut(m, lay);
  return {
    lay,
    setting,
    mitre: readingOf(setting.swing),
    tilt: readingOf(setting.tilt),
    waste,
    stopEnd,
  };
}

/** Angle inside the wood between two planes with these outward unit normals. */
function insideAngle(a: Vec3, b: Vec3): number {
  return Math.PI - Math.acos(Math.max(-1, Math.min(1, dot3(a, b))));
}

/** Outward normal of a long edge that leans by the skew: the back lies further to the right. */
function edgeNormal(edge: 'left' | 'right', { skew = 0 }: Blank): Vec3 {
  const side = NORMAL_OF_SIDE[edge].x;
  return { x: side * Math.cos(skew), y: 0, z: side * Math.sin(skew) };
}
