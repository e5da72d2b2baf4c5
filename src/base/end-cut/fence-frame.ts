import { length3, unit3, type Vec3 } from '../../geometry/index.ts';
import type { CutPlane } from './api.ts';

const ALONG_LENGTH = Math.PI / 2;

/**
 * A vector or point of the part frame in the frame of the fence line: y along the line, z unchanged, turned about the
 * origin. The angle is that of the fence line from +x (rad); at π/2 nothing changes.
 */
export function toFenceFrame(v: Vec3, fenceAngle = ALONG_LENGTH): Vec3 {
  return turned(v, ALONG_LENGTH - fenceAngle);
}

/** The way back from toFenceFrame. */
export function fromFenceFrame(v: Vec3, fenceAngle = ALONG_LENGTH): Vec3 {
  return turned(v, fenceAngle - ALONG_LENGTH);
}

/** A cut in the frame of the fence line, its normal brought to unit length. Throws on a normal without direction. */
export function planeInFenceFrame({ normal, point }: CutPlane, fenceAngle?: number): CutPlane {
  if (!Number.isFinite(length3(normal))) throw new RangeError('a normal without end has no direction');
  return {
    normal: toFenceFrame(unit3(normal), fenceAngle),
    point: toFenceFrame(point, fenceAngle),
  };
}

function turned(v: Vec3, angle: number): Vec3 {
  // Exactly as it was for the usual fence line, so that a square cut stays square to the last bit.
  if (angle === 0) return v;
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { x: c * v.x - s * v.y, y: s * v.x + c * v.y, z: v.z };
}
