import { scale3 } from '../../geometry/index.ts';
import type { SolidPart } from '../contact/api.ts';
import type { DrilledHole, DrilledPart } from '../joint-rules/index.ts';
import type { Bore } from './api.ts';

/** A bore as the rules of drilling take it, in the part's own frame. */
export function holeOfBore({ own, length, width, depth }: Bore): DrilledHole {
  const hole = { at: own.origin, along: own.z, depth, radius: width / 2 };
  return length > width ? { ...hole, slot: scale3(own.x, (length - width) / 2) } : hole;
}

/** A part as they take it. */
export const drilledPart = ({ drawn, cuts }: SolidPart): DrilledPart => ({
  outline: [drawn.region],
  thickness: drawn.thickness,
  cuts,
});
