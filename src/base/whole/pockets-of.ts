import type { PlacedPart } from '../api.ts';
import type { Joint, Pocket } from '../joints/api.ts';

/** The pockets that joints cut into a part. */
export function pocketsOf(joints: readonly Joint[], part: PlacedPart): readonly Pocket[] {
  return joints
    .flatMap(({ sides }) => sides)
    .filter((side) => side.part === part.id)
    .flatMap(({ work }) => work.filter((each) => each.kind === 'pocket'));
}
