import {
  add3,
  cross3,
  dot3,
  length3,
  pointToWorld,
  type Region,
  scale3,
  unit3,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import { facesOf } from '../contact/faces-of.ts';
import type { Joint, JointWork } from '../joints/api.ts';
import type { CaulPlace, Clamp } from './api.ts';

/** Joints whose ways differ by less than this, rad, are closed by clamps in one way. */
const ONE_WAY = (12 * Math.PI) / 180;
/** A jaw that meets the wood at less than this, rad, needs no wedge: its pad gives. */
const NO_WEDGE = (2 * Math.PI) / 180;
/** A tenon or dowel askew by less than this, mm over its depth, slides in by its own play. */
const PLAY = 0.2;
/** Thickness of a flat caul, and of a wedge where it is thinnest, mm. */
export const CAUL_THICKNESS = 18;

/** How one piece is clamped while these joints of it are glued: one clamp for each way in which joints close. */
export function clampsOf(parts: readonly PlacedPart[], joints: readonly Joint[]): readonly Clamp[] {
  const ways: { readonly direction: Vec3; readonly joints: Joint[] }[] = [];
  for (const joint of joints) {
    const direction = closingWay(joint);
    if (direction === undefined) continue;
    const way = ways.find((each) => Math.abs(dot3(each.direction, direction)) > Math.cos(ONE_WAY));
    if (way === undefined) ways.push({ direction, joints: [joint] });
    else way.joints.push(joint);
  }
  return ways.map((way) => clampAlong(meanWay(way.joints), parts, way.joints));
}

/** Square to the mating faces; parts halved into each other close square to their faces, which no contact tells: left to the hands. */
function closingWay({ contact }: Joint): Vec3 | undefined {
  return contact?.frame.z;
}

function meanWay(joints: readonly Joint[]): Vec3 {
  const ways = joints.flatMap((joint) => closingWay(joint) ?? []);
  const first = ways[0]!;
  const sum = ways.reduce(
    (all, way) => add3(all, dot3(way, first) < 0 ? scale3(way, -1) : way),
    scale3(first, 0),
  );
  return length3(sum) === 0 ? first : unit3(sum);
}

function clampAlong(direction: Vec3, parts: readonly PlacedPart[], joints: readonly Joint[]): Clamp {
  const reaches = parts.flatMap((part) => cornersOf(part).map((p) => dot3(p, direction)));
  const [least, most] = [Math.min(...reaches), Math.max(...reaches)];
  const cauls = [...jawOn(scale3(direction, -1), parts, joints), ...jawOn(direction, parts, joints)];
  const wedges = cauls.map(({ angle, along }) => along * Math.tan(angle));
  return {
    direction,
    opening: most - least,
    withCauls: most - least + 2 * CAUL_THICKNESS + Math.max(0, ...wedges),
    joints: joints.map(({ id }) => id),
    cauls,
    askew: joints.flatMap((joint) => askewOf(joint, direction)),
  };
}

/** Where a jaw pressing from outside meets the parts that these joints press on: those whose face there is on a slant. */
function jawOn(outwards: Vec3, parts: readonly PlacedPart[], joints: readonly Joint[]): readonly CaulPlace[] {
  const inner = new Set(
    joints.flatMap(({ contact }) =>
      contact === undefined ? [] : [dot3(contact.frame.z, outwards) > 0 ? contact.b.part : contact.a.part],
    ),
  );
  const covered = new Set(
    joints.flatMap(({ contact }) =>
      contact === undefined ? [] : [dot3(contact.frame.z, outwards) > 0 ? contact.a.part : contact.b.part],
    ),
  );
  // A part with another one beyond it is pressed by that one.
  return parts
    .filter(({ id }) => inner.has(id) && !covered.has(id))
    .flatMap((part): readonly CaulPlace[] => {
      const face = facesOf(part)
        .filter(({ plane }) => dot3(plane.normal, outwards) > Math.cos(Math.PI / 4))
        .toSorted((a, b) => dot3(b.plane.normal, outwards) - dot3(a.plane.normal, outwards))[0];
      if (face === undefined) return [];
      const angle = Math.acos(Math.min(1, dot3(face.plane.normal, outwards)));
      if (angle < NO_WEDGE) return [];
      const slope = add3(outwards, scale3(face.plane.normal, -dot3(outwards, face.plane.normal)));
      const along = unit3(slope);
      const contact = joints.find(({ contact: c }) => c?.a.part === part.id || c?.b.part === part.id)!
        .contact!;
      const corners = contact.regions
        .flatMap(cornersOfRegion)
        .map((p) => pointToWorld(contact.frame, { ...p, z: 0 }));
      const across = unit3(cross3(along, face.plane.normal));
      return [
        {
          part: part.id,
          face: face.name,
          angle,
          along: spread(corners, along),
          across: spread(corners, across),
        },
      ];
    });
}

/** Tenons and dowels that do not run in the way of the clamp. */
function askewOf(joint: Joint, direction: Vec3): Clamp['askew'] {
  const way = closingWay(joint);
  if (way === undefined) return [];
  const angle = Math.acos(Math.min(1, Math.abs(dot3(way, direction))));
  const depth = Math.max(0, ...joint.sides.flatMap(({ work }) => work.map(depthOf)));
  const sideways = depth * Math.sin(angle);
  return sideways < PLAY ? [] : [{ joint: joint.id, angle, sideways }];
}

function depthOf(work: JointWork): number {
  switch (work.kind) {
    case 'mortise':
    case 'hole':
      return work.depth;
    case 'tenon':
      return work.length;
    case 'pocket':
      return 0;
    default:
      return work satisfies never;
  }
}

function cornersOf({ frame, face, back, drawn }: PlacedPart): readonly Vec3[] {
  const at = (regions: readonly Region[], z: number): readonly Vec3[] =>
    regions.flatMap(cornersOfRegion).map((p) => pointToWorld(frame, { ...p, z }));
  return [...at(face, 0), ...at(back, -drawn.thickness)];
}

const cornersOfRegion = ({ outer }: Region) => outer.edges.map(({ from }) => from);

function spread(points: readonly Vec3[], along: Vec3): number {
  const reaches = points.map((p) => dot3(p, along));
  return Math.max(...reaches) - Math.min(...reaches);
}
