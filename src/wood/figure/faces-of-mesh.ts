import { type Frame, pointToFrame } from '../../geometry/index.ts';

/** The surface of a piece with its two faces told from the rest, so that they can carry a figure. */
export interface FacedMesh {
  /** Two numbers a corner: its place in the piece's own plane, mm. */
  readonly plane: Float32Array;
  /** Three corners a triangle: first those of neither face, then those of the face side, then those of the back. */
  readonly triangles: Uint32Array;
  /** Triangles of each. */
  readonly counts: { readonly other: number; readonly face: number; readonly back: number };
}

/** mm: how far from a face a corner may lie and be of it. Corners come in single precision, at some metres good to this. */
const ON_FACE = 2e-3;

/** Which triangles of a piece lie on its face side (z = 0 of its frame) and on its back (z = −thickness), and where in its plane. */
export function facesOfMesh(
  {
    positions,
    triangles,
    frame,
  }: { readonly positions: Float32Array; readonly triangles: Uint32Array; readonly frame: Frame },
  thickness: number,
): FacedMesh {
  const count = positions.length / 3;
  const plane = new Float32Array(2 * count);
  const on: ('face' | 'back' | undefined)[] = [];
  for (let at = 0; at < count; at++) {
    const [x, y, z] = [positions[3 * at]!, positions[3 * at + 1]!, positions[3 * at + 2]!];
    const own = pointToFrame(frame, { x, y, z });
    plane[2 * at] = own.x;
    plane[2 * at + 1] = own.y;
    on.push(Math.abs(own.z) < ON_FACE ? 'face' : Math.abs(own.z + thickness) < ON_FACE ? 'back' : undefined);
  }
  const sorted = { other: [] as number[], face: [] as number[], back: [] as number[] };
  for (let at = 0; at < triangles.length; at += 3) {
    const corners = [triangles[at]!, triangles[at + 1]!, triangles[at + 2]!];
    const [a, b, c] = corners.map((corner) => on[corner]);
    sorted[a !== undefined && a === b && b === c ? a : 'other'].push(...corners);
  }
  const { other, face, back } = sorted;
  return {
    plane,
    triangles: Uint32Array.from([...other, ...face, ...back]),
    counts: { other: other.length / 3, face: face.length / 3, back: back.length / 3 },
  };
}
