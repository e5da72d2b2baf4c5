import { once } from '../../core/index.ts';
import {
  directionToWorld,
  dot3,
  type Frame,
  pointToWorld,
  type Region,
  type Similarity,
  STAY,
  scale3,
  transformRegion,
  type Vec3,
} from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Contact, PartFace } from '../contact/api.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import type { Bore, Joint, JointWork, Pocket, Tenon } from './api.ts';
import { sectionOfJoint } from './section-of-joint.ts';

/** A pair of parts with the joint between them. */
export interface JoinedPair {
  readonly a: PlacedPart;
  readonly b: PlacedPart;
  readonly joint: Joint & { readonly contact: Contact };
}

type Faces = (part: PlacedPart) => readonly PartFace[];

/**
 * The joint of a pair of parts that stand to each other as those of a joint made already do, or as their mirror images: the same one, carried over.
 * Its frame is the one in which it would have been made.
 */
export function carryJoint(
  { a: first, joint }: JoinedPair,
  id: string,
  [a, b]: readonly [PlacedPart, PlacedPart],
  faces: Faces,
  pocketsOf: (part: string) => readonly Pocket[],
): Joint {
  const { contact, sides } = joint;
  const isMirrored = a.hand !== first.hand;
  // The first face's frame keeps its y axis in a mirror, its x axis is turned round: of the joint the one that runs along that.
  const isUpright = Math.abs(dot3(contact.frame.x, contact.a.face.frame.y)) > Math.SQRT1_2;
  const mirror: Mirror | undefined = isMirrored ? (isUpright ? MIRROR_UPRIGHT : MIRROR) : undefined;
  const own = frameInPart(first, contact.frame);
  const frame = frameToWorld(a.frame, mirror === undefined ? own : mirror.frame(own));
  const carried: Contact = {
    a: touching(a, contact.a.face, faces),
    b: touching(b, contact.b.face, faces),
    frame,
    regions:
      mirror === undefined
        ? contact.regions
        : contact.regions.map((each) => transformRegion(each, mirror.by)),
    area: contact.area,
  };
  const made = [
    { part: a.id, work: sides[0].work.map((work) => carryWork(work, id, mirror)) },
    { part: b.id, work: sides[1].work.map((work) => carryWork(work, id, mirror)) },
  ] as const;
  const section = once(() => sectionOfJoint(frame, [a, b], made, pocketsOf));
  const { name, label, kind, loose, screw, glue } = joint;
  return {
    id,
    name,
    label,
    kind,
    contact: carried,
    sides: made,
    ...(loose === undefined ? {} : { loose }),
    ...(screw === undefined ? {} : { screw }),
    glue,
    findings: joint.findings.map((finding) =>
      mirror === undefined || finding.at === undefined
        ? finding
        : { ...finding, at: { x: -finding.at.x, y: finding.at.y } },
    ),
    get section() {
      return section();
    },
  };
}

/** How a joint looks in a mirror: its frame in a part turned over, and what lies in its plane. */
interface Mirror {
  readonly frame: (own: Frame) => Frame;
  readonly by: Similarity;
}

const flip = ({ x, y, z }: Vec3): Vec3 => ({ x: -x, y, z });

const MIRROR: Mirror = {
  frame: ({ origin, x, y, z }) => ({ origin: flip(origin), x: scale3(flip(x), -1), y: flip(y), z: flip(z) }),
  by: { ...STAY, mirrored: true },
};
const MIRROR_UPRIGHT: Mirror = {
  frame: ({ origin, x, y, z }) => ({ origin: flip(origin), x: flip(x), y: scale3(flip(y), -1), z: flip(z) }),
  by: { ...STAY, mirrored: true, turn: Math.PI },
};

/** The face of a copy that is called as one of another copy: looked up when it is asked for. */
const touching = (part: PlacedPart, { name, kind }: PartFace, faces: Faces): Contact['a'] => ({
  part: part.id,
  get face() {
    return faces(part).find((face) => face.name === name && face.kind === kind)!;
  },
});

/** Mouths and tenons are alike either way round: only their frames and the ways of their measures are turned over. */
function carryWork(work: JointWork, joint: string, mirror: Mirror | undefined): JointWork {
  if (work.kind === 'pocket') throw new RangeError('parts that are halved do not touch before');
  const named = { ...work, joint, outline: called(work.outline, joint) };
  return mirror === undefined ? named : turnedOver(named, mirror);
}

const turnedOver = <T extends Bore | Tenon>(work: T, mirror: Mirror): T => ({
  ...work,
  own: mirror.frame(work.own),
  measures: work.measures.map((measure) => ({ ...measure, away: flip(measure.away) })),
});

/** The same outline with another joint's identity. */
function called({ outer, holes }: Region, id: string): Region {
  return { outer: { edges: outer.edges.map((edge) => ({ ...edge, tag: { ...edge.tag, id } })) }, holes };
}

const frameToWorld = (outer: Frame, { origin, x, y, z }: Frame): Frame => ({
  origin: pointToWorld(outer, origin),
  x: directionToWorld(outer, x),
  y: directionToWorld(outer, y),
  z: directionToWorld(outer, z),
});
