import { angleOf, directionToFrame, norm } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** Flatter than this (rad) a part lies level, and no direction in its plane is up. */
const LEVEL = 0.05;

/** Direction in a part's plane that points up as it stands, rad, in the pattern that it lies on turned round or not. */
export function upOf({ frame }: Pick<PlacedPart, 'frame'>, turned: boolean): number | undefined {
  const up = directionToFrame(frame, { x: 0, y: 0, z: 1 });
  if (norm(up.x, up.y) < Math.sin(LEVEL)) return undefined;
  return angleOf(turned ? { x: -up.x, y: -up.y } : up);
}
