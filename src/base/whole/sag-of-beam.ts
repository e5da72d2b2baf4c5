import { areaOfRegions, boundsOfRegions, directionToFrame, pointToFrame } from '../../geometry/index.ts';
import { TIPPING_LOAD, type Wood } from '../../materials/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Joint } from '../joints/api.ts';
import { halfPlaneAt, keepHalfPlane } from '../stand/section.ts';
import { type BeamSection, rectangleSection, sagOf } from '../statics/index.ts';
import type { BeamSag } from './standing.ts';

/** Joints nearer to each other than this along a beam, mm, hold it up at one place. */
const ONE_SUPPORT = 60;
/** Width of the strip whose mean depth is taken for the depth in the middle, mm. */
const STRIP = 2;

/**
 * The sag of a part that carries the top, held up where it is joined to what stands under it, under its share of a load (kg, all told)
 * spread along its length: beams and top bend together, each taking as much of the load as it is stiff. Its section is taken in the middle.
 * Nothing for a beam that fewer than two places hold.
 */
export function sagOfBeam(
  part: PlacedPart,
  joints: readonly Joint[],
  { load, wood, share }: { readonly load: number; readonly wood: Wood; readonly share: number },
): readonly BeamSag[] {
  const box = boundsOfRegions(part.silhouette);
  const length = box.maxY - box.minY;
  const places = joints
    .filter(({ sides }) => sides.some((side) => side.part === part.id))
    .flatMap(({ contact, section }) => contact?.frame.origin ?? section?.frame.origin ?? [])
    .map((p) => pointToFrame(part.frame, p).y - box.minY)
    .map((y) => Math.min(length, Math.max(0, y)))
    .sort((a, b) => a - b);
  const supports = gather(places);
  if (supports.length < 2) return [];
  const newtons = load * share * TIPPING_LOAD.gravity.value;
  const sag = sagOf({
    length,
    supports: supports.map((at) => ({ at, kind: 'rest' })),
    loads: [{ kind: 'spread', from: 0, to: length, perLength: newtons / length }],
    section: sectionInMiddle(part),
    elasticity: wood.modulusOfElasticity,
    rupture: wood.modulusOfRupture,
  });
  return sag === undefined ? [] : [{ part: part.id, label: part.label, sag }];
}

/** How stiff a beam is against a load from above: modulus of elasticity times second moment of area, N·mm². */
export function stiffnessOfBeam(part: PlacedPart, wood: Wood): number {
  return sectionInMiddle(part).secondMoment * wood.modulusOfElasticity;
}

/** The section half way along, as it stands: on edge or flat. */
function sectionInMiddle(part: PlacedPart): BeamSection {
  const box = boundsOfRegions(part.silhouette);
  const up = directionToFrame(part.frame, { x: 0, y: 0, z: 1 });
  const width = widthInMiddle(part, (box.minY + box.maxY) / 2);
  const { thickness } = part.drawn;
  return Math.abs(up.x) > Math.abs(up.z)
    ? rectangleSection(thickness, width)
    : rectangleSection(width, thickness);
}

/** Places that lie together count as one, in their middle. */
function gather(places: readonly number[]): readonly number[] {
  const groups: number[][] = [];
  for (const place of places) {
    const last = groups.at(-1);
    if (last !== undefined && place - last[0]! < ONE_SUPPORT) last.push(place);
    else groups.push([place]);
  }
  return groups.map((group) => group.reduce((sum, place) => sum + place, 0) / group.length);
}

/** Mean width of a strip across the part at y. */
function widthInMiddle({ silhouette }: PlacedPart, y: number): number {
  const cut = (normal: number, offset: number) => ({
    name: 'strip',
    role: 'left' as const,
    plane: { normal: { x: 0, y: normal, z: 0 }, offset },
  });
  const strip = [cut(1, y + STRIP / 2), cut(-1, STRIP / 2 - y)].reduce(
    (regions, each) => keepHalfPlane(regions, halfPlaneAt(each, 0), each),
    silhouette,
  );
  return areaOfRegions(strip) / STRIP;
}
