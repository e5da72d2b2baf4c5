import { dot3, type Frame, pointToFrame, type Similarity } from '../../geometry/index.ts';

/**
 * From the x-y plane of one frame to that of another which lies in the same plane, both given in one space; mirrored when their z axes oppose
 * each other. What stands out of the other plane is projected onto it.
 */
export function similarityTo(from: Frame, to: Frame): Similarity {
  const { x, y } = pointToFrame(to, from.origin);
  const [cosine, sine] = [dot3(from.x, to.x), dot3(from.x, to.y)];
  const mirrored = dot3(from.z, to.z) < 0;
  const turn = mirrored ? Math.atan2(-sine, -cosine) : Math.atan2(sine, cosine);
  return { turn, shift: { x, y }, scale: 1, mirrored };
}
