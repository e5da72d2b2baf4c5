import { directionToFrame, type Frame, pointToFrame } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** A frame of the world, in the part's own frame. */
export const frameInPart = ({ frame: own }: Pick<PlacedPart, 'frame'>, frame: Frame): Frame => ({
  origin: pointToFrame(own, frame.origin),
  x: directionToFrame(own, frame.x),
  y: directionToFrame(own, frame.y),
  z: directionToFrame(own, frame.z),
});
