import {
  chordAlong,
  cross3,
  type Frame,
  norm,
  pointToFrame,
  pointToWorld,
  polygonOutline,
  type Region,
  subtractRegions,
  type Vec,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import { sectionOfPart } from '../contact/section-of-part.ts';
import type { JointSection, JointSide, JointWork, Pocket, SectionWall } from './api.ts';

/** A piece of work lies in the section when its axis is this near to it, mm. */
const IN_PLANE = 0.5;

/**
 * A joint cut open along the drilled line: by the plane through the axis of its first bore or tenon (through the middle of the joint where
 * it has none) and the joint's long direction. x along the joint, y along its z axis, into the second part. What other joints halve
 * away of a part (`pocketsOf`) is not shown.
 */
export function sectionOfJoint(
  joint: Frame,
  parts: readonly [PlacedPart, PlacedPart],
  sides: readonly [JointSide, JointSide],
  pocketsOf: (part: string) => readonly Pocket[] = () => [],
): JointSection {
  const [a, b] = parts;
  const first = sides[1].work.find(isAxial) ?? sides[0].work.find(isAxial);
  const owner = sides[1].work.some(isAxial) ? b : a;
  const level = first === undefined ? 0 : pointToFrame(joint, pointToWorld(owner.frame, first.own.origin)).y;
  const frame: Frame = {
    origin: pointToWorld(joint, { x: 0, y: level, z: 0 }),
    x: joint.x,
    y: joint.z,
    z: cross3(joint.x, joint.z),
  };
  const drawn = parts.map((part, at) => drawPart(part, sides[at]!, frame, pocketsOf(part.id)));
  return {
    frame,
    parts: drawn.map(({ walls: _, ...rest }) => rest),
    walls: drawn.flatMap(({ walls }) => walls),
  };
}

const isAxial = (work: JointWork): work is Exclude<JointWork, Pocket> => work.kind !== 'pocket';

function drawPart(
  part: PlacedPart,
  { work }: JointSide,
  frame: Frame,
  pockets: readonly Pocket[],
): JointSection['parts'][number] & { readonly walls: readonly SectionWall[] } {
  const plane = frameInPart(part, frame);
  const lost = pockets.flatMap((pocket) => sectionOfPocket(pocket, plane));
  const whole = sectionOfPart(part, plane);
  const regions = lost.length === 0 ? whole : subtractRegions(whole, lost);
  const cut = work
    .filter(isAxial)
    .filter(({ own }) => Math.abs(pointToFrame(plane, own.origin).z) <= IN_PLANE);
  const shown = cut.map((each) => ({
    kind: each.kind,
    ...sizeOf(each),
    region: sectionOf(each, plane),
    at: placer(each, plane),
  }));
  const bores = shown.filter(({ kind }) => kind !== 'tenon');
  const holes = bores.map(({ region }) => region);
  // Wood between two bores is a wall of both.
  const wood = subtractRegions(regions, holes);
  return {
    part: part.id,
    regions,
    bores: [
      ...work.filter((each) => each.kind === 'pocket').flatMap((each) => sectionOfPocket(each, plane)),
      ...holes,
    ],
    tenons: shown.filter(({ kind }) => kind === 'tenon').map(({ region }) => region),
    walls: bores.flatMap(({ half, deep, at }) => wallsOf(wood, at, half, deep)),
  };
}

/** Half of its length along the joint, and how deep it goes or far it stands out, mm. */
const sizeOf = (work: Exclude<JointWork, Pocket>): { readonly half: number; readonly deep: number } =>
  work.kind === 'tenon'
    ? { half: work.width / 2, deep: work.length }
    : { half: work.length / 2, deep: work.depth };

/** From a place in the middle plane of a bore or tenon (along it, and along its axis) to the section. */
const placer =
  ({ own }: Exclude<JointWork, Pocket>, plane: Frame) =>
  (x: number, z: number): Vec => {
    const p = pointToFrame(plane, pointToWorld(own, { x, y: 0, z }));
    return { x: p.x, y: p.y };
  };

function sectionOf(work: Exclude<JointWork, Pocket>, plane: Frame): Region {
  const { half, deep } = sizeOf(work);
  const at = placer(work, plane);
  return rectangle([at(-half, 0), at(half, 0), at(half, deep), at(-half, deep)], work.joint);
}

/** Behind the bottom along the drilled line, and beside the bore on either side at half its depth. */
function wallsOf(
  regions: readonly Region[],
  at: (x: number, z: number) => Vec,
  half: number,
  deep: number,
): readonly SectionWall[] {
  const rays = [
    { from: at(0, deep), towards: at(0, deep + 1) },
    { from: at(half, deep / 2), towards: at(half + 1, deep / 2) },
    { from: at(-half, deep / 2), towards: at(-half - 1, deep / 2) },
  ];
  return rays.flatMap(({ from, towards }): readonly SectionWall[] => {
    const chord = chordAlong(regions, from, { x: towards.x - from.x, y: towards.y - from.y });
    if (chord === undefined) return [];
    const value = norm(chord.to.x - from.x, chord.to.y - from.y);
    return [{ from, to: chord.to, value }];
  });
}

/** A pocket is a prism like a part, hung as deep as it begins. */
function sectionOfPocket({ region, fromZ, toZ }: Pocket, plane: Frame): readonly Region[] {
  const { origin } = plane;
  const hung = { ...plane, origin: { ...origin, z: origin.z - fromZ } };
  return region.flatMap((each) =>
    sectionOfPart({ drawn: { region: each, thickness: fromZ - toZ }, cuts: [] }, hung),
  );
}

/** Four corners as a region, whichever way they run. */
function rectangle(corners: readonly Vec[], id: string): Region {
  const [a, b, c] = corners;
  const turn = (b!.x - a!.x) * (c!.y - b!.y) - (b!.y - a!.y) * (c!.x - b!.x);
  return {
    outer: polygonOutline(turn < 0 ? corners.toReversed() : corners, { id, role: 'joint' }),
    holes: [],
  };
}
