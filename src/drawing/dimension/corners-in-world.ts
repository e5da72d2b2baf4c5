import type { PlacedPart } from '../../base/index.ts';
import { pointToWorld, type Vec3 } from '../../geometry/index.ts';

/** Corners of a part's outlines, once it is cut, on face and back. */
export function cornersInWorld({ frame, face, back, drawn }: PlacedPart): readonly Vec3[] {
  return [
    { regions: face, z: 0 },
    { regions: back, z: -drawn.thickness },
  ].flatMap(({ regions, z }) =>
    regions.flatMap(({ outer }) => outer.edges.map(({ from }) => pointToWorld(frame, { ...from, z }))),
  );
}
