import { dot3, POSITION_TOLERANCE, type Vec3 } from '../../geometry/index.ts';
import type { Arris, Arrises, ArrisName, Blank, CutPlane } from './api.ts';
import { fromFenceFrame, planeInFenceFrame } from './fence-frame.ts';

const NAMES = ['face-left', 'face-right', 'back-left', 'back-right'] as const;

/**
 * Where a cut meets the blank's four arrises, how long each arris is from the reference, and which corners are long and short
 * points on each face. A longer arris reaches further at the end that is cut, whichever end that is. Lengths in mm; a cut that
 * has passed the reference gives a negative length. Throws where a cut runs along the arrises and never meets them.
 */
export function arrisesOfCut(plane: CutPlane, blank: Blank): Arrises {
  const cut = planeInFenceFrame(plane, blank.fenceAngle);
  const reference = referenceOf(blank);
  const outward = cut.normal.y < 0 ? -1 : 1;
  const arris = (name: ArrisName): Arris => {
    const { x, z } = placeOfArris(name, blank);
    const y = meets(cut, x, z);
    return {
      name,
      at: fromFenceFrame({ x, y, z }, blank.fenceAngle),
      length: outward * (y - reference(x, z)),
    };
  };
  const reach = (name: ArrisName): number => {
    const { x, z } = placeOfArris(name, blank);
    return outward * meets(cut, x, z);
  };
  const all = [arris('face-left'), arris('face-right'), arris('back-left'), arris('back-right')] as const;
  const byReach = NAMES.map((name, index) => ({ index, reach: reach(name) })).sort(
    (a, b) => b.reach - a.reach || a.index - b.index,
  );
  const least = byReach.at(-1)!.reach;
  return {
    all,
    onFace: points('face-left', 'face-right', reach),
    onBack: points('back-left', 'back-right', reach),
    longest: all[byReach.find((each) => byReach[0]!.reach - each.reach < POSITION_TOLERANCE)!.index]!,
    shortest: all[byReach.find((each) => each.reach - least < POSITION_TOLERANCE)!.index]!,
  };
}

/** x and z of an arris in the frame of the fence line. */
function placeOfArris(name: ArrisName, blank: Blank): { readonly x: number; readonly z: number } {
  const edge = name.endsWith('left') ? blank.left : blank.right;
  if (name.startsWith('face')) return { x: edge, z: 0 };
  return { x: edge + blank.thickness * Math.tan(blank.skew ?? 0), z: -blank.thickness };
}

/** Where the length is counted from on the line along the part at x and z (frame of the fence line). */
export function referenceOf({
  reference,
  fenceAngle,
}: Pick<Blank, 'reference' | 'fenceAngle'>): (x: number, z: number) => number {
  if (reference.kind === 'square') return () => reference.y;
  const plane = planeInFenceFrame(reference.plane, fenceAngle);
  return (x, z) => meets(plane, x, z);
}

function meets({ normal, point }: CutPlane, x: number, z: number): number {
  if (normal.y === 0) throw new RangeError('a cut along the length meets no arris');
  const along: Vec3 = { x: x - point.x, y: 0, z: z - point.z };
  return point.y - dot3(normal, along) / normal.y;
}

function points(a: ArrisName, b: ArrisName, reach: (name: ArrisName) => number): Arrises['onFace'] {
  const by = reach(a) - reach(b);
  if (Math.abs(by) < POSITION_TOLERANCE) return { long: 'even', short: 'even', by: 0 };
  return by > 0 ? { long: a, short: b, by } : { long: b, short: a, by: -by };
}
