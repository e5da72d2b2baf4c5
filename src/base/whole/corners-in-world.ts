import { pointToWorld, type Region, type Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';

/** The corners of a part's face and back in the world, mm. */
export function cornersInWorld({
  frame,
  face,
  back,
  drawn,
}: Pick<PlacedPart, 'frame' | 'face' | 'back' | 'drawn'>): readonly Vec3[] {
  const at = (regions: readonly Region[], z: number): readonly Vec3[] =>
    regions.flatMap(({ outer }) => outer.edges.map(({ from }) => pointToWorld(frame, { ...from, z })));
  return [...at(face, 0), ...at(back, -drawn.thickness)];
}

/** Where legs end on the floor: the lowest corner of each part that the floor cuts. */
export function footEnds(
  parts: readonly PlacedPart[],
): readonly { readonly name: string; readonly at: Vec3 }[] {
  return parts.flatMap((part) => {
    if (!part.cuts.some(({ name, meets }) => name === 'floor' && meets)) return [];
    const [lowest] = cornersInWorld(part).toSorted((a, b) => a.z - b.z);
    return lowest === undefined ? [] : [{ name: part.id, at: lowest }];
  });
}
