import {
  add3,
  cross3,
  dot3,
  locate,
  pointToFrame,
  pointToWorld,
  type Region,
  scale3,
  unit3,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Contact, PartFace } from '../contact/api.ts';
import { isLeft, possibleFaces } from '../contact/faces-of.ts';
import type { Joint } from '../joints/api.ts';
import { cornersInWorld } from '../whole/corners-in-world.ts';
import type { CaulPlace } from './api.ts';

/** A jaw that meets the wood at less than this, rad, needs no wedge: its pad gives. */
const NO_WEDGE = (2 * Math.PI) / 180;
/** A face steeper to the jaw than this is not pressed on. */
const STEEPEST = Math.PI / 4;
/** Thickness of a flat caul, and of a wedge where it is thinnest, mm. */
export const CAUL_THICKNESS = 18;
/** A wedge reaches so far past the joint on both sides, mm. */
export const PAST = 15;

/** A jaw of a clamp: how far out along its way (mm from the world's origin) the wood lies that it presses on, and it itself with its caul. */
interface Jaw {
  readonly wood: number;
  readonly withCaul: number;
  readonly cauls: readonly CaulPlace[];
}

/** Where a jaw presses inwards on the parts that these joints close on: over each joint, with a wedge where the face there is on a slant. */
export function jawOn(outwards: Vec3, parts: readonly PlacedPart[], joints: readonly Joint[]): Jaw {
  const pressed = joints.flatMap(({ contact }) => {
    if (contact === undefined) return [];
    const isOut = dot3(contact.frame.z, outwards) > 0;
    const [inner, outer] = isOut ? [contact.a, contact.b] : [contact.b, contact.a];
    return [{ contact, inner: inner.part, outer: outer.part }];
  });
  // A part with another one beyond it is pressed by that one.
  const covered = new Set(pressed.map(({ inner }) => inner));
  const places = pressed
    .filter(({ outer }) => !covered.has(outer))
    .map(({ contact, outer }) => placeOver(parts.find(({ id }) => id === outer)!, contact, outwards));
  if (places.length === 0) {
    const wood = farthest(parts, outwards);
    return { wood, withCaul: wood + CAUL_THICKNESS, cauls: [] };
  }
  return {
    wood: Math.max(...places.map(({ wood }) => wood)),
    withCaul: Math.max(...places.map(({ withCaul }) => withCaul)),
    cauls: places.flatMap(({ caul }) => caul ?? []),
  };
}

interface PressedPlace extends Omit<Jaw, 'cauls'> {
  readonly caul?: CaulPlace;
}

/** Where a jaw presses on a part over a contact at its other side. */
function placeOver(part: PlacedPart, contact: Contact, outwards: Vec3): PressedPlace {
  const face = faceOver(part, contact.frame.origin, outwards);
  if (face === undefined) {
    const wood = farthest([part], outwards);
    return { wood, withCaul: wood + CAUL_THICKNESS };
  }
  const { normal } = face.plane;
  const corners = contact.regions
    .flatMap(cornersOfRegion)
    .map((p) => through(face, pointToWorld(contact.frame, { ...p, z: 0 }), outwards));
  const wood = Math.max(...corners.map((p) => dot3(p, outwards)));
  const angle = Math.acos(Math.min(1, dot3(normal, outwards)));
  if (angle < NO_WEDGE) return { wood, withCaul: wood + CAUL_THICKNESS };
  const along = unit3(add3(outwards, scale3(normal, -dot3(outwards, normal))));
  return {
    wood,
    withCaul: wood + PAST * Math.sin(angle) + CAUL_THICKNESS,
    caul: {
      part: part.id,
      face: face.name,
      angle,
      along: spread(corners, along),
      across: spread(corners, unit3(cross3(along, normal))),
    },
  };
}

/** The face of a part that lies over a place of its other side; where none does (it is curved there), the one that looks that way most. */
function faceOver(part: PlacedPart, p: Vec3, outwards: Vec3): PartFace | undefined {
  const outer = possibleFaces(part)
    .filter(({ plane }) => dot3(plane.normal, outwards) > Math.cos(STEEPEST))
    .toSorted((a, b) => dot3(b.plane.normal, outwards) - dot3(a.plane.normal, outwards));
  const isOver = (face: PartFace): boolean =>
    locate(face.regions, pointToFrame(face.frame, through(face, p, outwards))) !== 'outside';
  return outer.find((face) => isLeft(face) && isOver(face)) ?? outer.find(isLeft);
}

/** Where the line through a place along a way meets the plane of a face. */
function through({ plane }: PartFace, p: Vec3, way: Vec3): Vec3 {
  return add3(p, scale3(way, (plane.offset - dot3(plane.normal, p)) / dot3(plane.normal, way)));
}

function farthest(parts: readonly PlacedPart[], along: Vec3): number {
  return Math.max(...parts.flatMap(cornersInWorld).map((p) => dot3(p, along)));
}

const cornersOfRegion = ({ outer }: Region) => outer.edges.map(({ from }) => from);

function spread(points: readonly Vec3[], along: Vec3): number {
  const reaches = points.map((p) => dot3(p, along));
  return Math.max(...reaches) - Math.min(...reaches);
}
