import {
  boundsOfRegions,
  chordAlong,
  clipEdgesToRegions,
  cross3,
  type Frame,
  line,
  pointToFrame,
  pointToWorld,
  polygonOutline,
  type Region,
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
 * it has none) and the joint's long direction. x along the joint, y along its z axis, into the second part.
 */
export function sectionOfJoint(
  joint: Frame,
  parts: readonly [PlacedPart, PlacedPart],
  sides: readonly [JointSide, JointSide],
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
  const drawn = parts.map((part, at) => drawPart(part, sides[at]!, frame));
  return {
    frame,
    parts: drawn.map(({ walls: _, ...rest }) => rest),
    walls: drawn.flatMap(({ walls }) => walls),
  };
}

const isAxial = (work: JointWork): work is Exclude<JointWork, Pocket> => work.kind !== 'pocket';

function drawPart(
  part: PlacedPart,
  side: JointSide,
  frame: Frame,
): JointSection['parts'][number] & { readonly walls: readonly SectionWall[] } {
  const plane = frameInPart(part, frame);
  const regions = sectionOfPart(part, plane);
  const toSection = (own: Frame, x: number, z: number): Vec => {
    const { x: u, y: v } = pointToFrame(plane, pointToWorld(own, { x, y: 0, z }));
    return { x: u, y: v };
  };
  const bores: Region[] = [];
  const tenons: Region[] = [];
  const walls: SectionWall[] = [];
  for (const work of side.work) {
    if (work.kind === 'pocket') bores.push(...sectionOfPocket(work, plane));
    else if (Math.abs(pointToFrame(plane, work.own.origin).z) <= IN_PLANE) {
      const [half, deep] =
        work.kind === 'tenon' ? [work.width / 2, work.length] : [work.length / 2, work.depth];
      const corners = [
        [-half, 0],
        [half, 0],
        [half, deep],
        [-half, deep],
      ].map(([x, z]) => toSection(work.own, x!, z!));
      (work.kind === 'tenon' ? tenons : bores).push(rectangle(corners, work.joint));
      if (work.kind !== 'tenon')
        walls.push(...wallsOf(regions, (x, z) => toSection(work.own, x, z), half, deep));
    }
  }
  return { part: part.id, regions, bores, tenons, walls };
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
    const value = Math.hypot(chord.to.x - from.x, chord.to.y - from.y);
    return [{ from, to: chord.to, value }];
  });
}

function sectionOfPocket({ region, fromZ, toZ, joint }: Pocket, plane: Frame): readonly Region[] {
  // The plane stands square to the faces of parts that cross: it meets the pocket in a line of its region.
  const box = boundsOfRegions(region);
  const long =
    Math.hypot(box.maxX - box.minX, box.maxY - box.minY) + Math.hypot(plane.origin.x, plane.origin.y) + 1;
  const end = (by: number): Vec => ({
    x: plane.origin.x + plane.x.x * by,
    y: plane.origin.y + plane.x.y * by,
  });
  const ray = line(end(-long), end(long), { id: joint, role: 'joint' });
  return clipEdgesToRegions([ray], region).map((chain) => {
    const corners = [
      { ...chain[0]!.from, z: fromZ },
      { ...chain.at(-1)!.to, z: fromZ },
      { ...chain.at(-1)!.to, z: toZ },
      { ...chain[0]!.from, z: toZ },
    ].map((p) => {
      const { x, y } = pointToFrame(plane, p);
      return { x, y };
    });
    return rectangle(corners, joint);
  });
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
