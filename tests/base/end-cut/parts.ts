import {
  type Blank,
  type CutPlane,
  type EndCut,
  planeOfAngles,
  sawnCut,
} from '../../../src/base/end-cut/index.ts';

export const DEGREE = Math.PI / 180;

/** A rail 90 mm wide and 25 mm thick, its near end square at 0. */
export const RAIL: Blank = {
  left: 0,
  right: 90,
  thickness: 25,
  faceEdge: 'right',
  reference: { kind: 'square', y: 0 },
};

/** A cut at the far end, angles in degrees, through the face side's left corner at 500 mm. */
export function farCut(mitre: number, bevel: number): CutPlane {
  return planeOfAngles({ end: 'far', mitre: mitre * DEGREE, bevel: bevel * DEGREE }, { x: 0, y: 500, z: 0 });
}

export function nearCut(mitre: number, bevel: number): CutPlane {
  return planeOfAngles({ end: 'near', mitre: mitre * DEGREE, bevel: bevel * DEGREE }, { x: 0, y: 0, z: 0 });
}

export function endCut(plane: CutPlane, blank: Blank = RAIL): EndCut {
  const cut = sawnCut(plane, blank);
  if (cut.kind !== 'end') throw new Error(`${cut.kind} instead of an end cut`);
  return cut;
}
