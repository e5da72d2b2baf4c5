import {
  boundsOfRegions,
  cross3,
  directionToFrame,
  directionToWorld,
  type Frame,
  norm,
  pointToWorld,
  type Region,
  scale3,
  slotOutline,
  type Vec3,
  vec,
} from '../../geometry/index.ts';
import type { JointSketch } from '../../sketch/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Contact, PartFace } from '../contact/api.ts';
import { frameInPart } from '../contact/frame-in-part.ts';
import type { InsertPlace } from '../joint-rules/index.ts';
import type { Bore, Joint } from './api.ts';
import { measuresOf } from './measures-of.ts';

/** Two placed parts that a joint of the form joins, and where they touch. */
export interface JointPair {
  readonly id: string;
  readonly sketch: JointSketch;
  readonly a: PlacedPart;
  readonly b: PlacedPart;
  readonly contact: Contact;
}

/** What a kind of joint makes of a pair. */
export type MadeJoint = Pick<Joint, 'sides' | 'loose' | 'screw' | 'glue' | 'findings'>;

/** One side of a contact: the part, its face, and the drilled line into it. */
export interface Side {
  readonly part: PlacedPart;
  readonly face: PartFace;
  /** 1 where the joint's z axis runs into this part. */
  readonly into: 1 | -1;
}

export const sidesOf = ({ a, b, contact }: JointPair): readonly [Side, Side] => [
  { part: a, face: contact.a.face, into: -1 },
  { part: b, face: contact.b.face, into: 1 },
];

/** Direction of a part's fibres in a frame of the world. Pieces glued on count where the joint lies. */
export function fibresIn(frame: Frame, part: PlacedPart, grain: number): Vec3 {
  const own = { x: Math.cos(grain), y: Math.sin(grain), z: 0 };
  return directionToFrame(frame, directionToWorld(part.frame, own));
}

/** A frame of the world at a place of a joint: z along the joint's own z axis or against it, x along the joint. */
export function boreWorld(
  joint: Frame,
  into: Side['into'],
  middle: { readonly x: number; readonly y: number },
): Frame {
  const z = scale3(joint.z, into);
  return { origin: pointToWorld(joint, { ...middle, z: 0 }), x: joint.x, y: cross3(z, joint.x), z };
}

/** The mortise or hole for one piece in one of the parts. */
export function boreOf(pair: JointPair, side: Side, { from, to, radius }: InsertPlace, depth: number): Bore {
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const own = frameInPart(side.part, boreWorld(pair.contact.frame, side.into, middle));
  const swept = norm(to.x - from.x, to.y - from.y);
  const tag = { id: pair.id, role: 'joint' } as const;
  const outline: Region = {
    outer: slotOutline(vec(-swept / 2, 0), vec(swept / 2, 0), radius, tag),
    holes: [],
  };
  const size = { length: swept + 2 * radius, width: 2 * radius };
  return {
    kind: swept > 0 ? 'mortise' : 'hole',
    joint: pair.id,
    face: side.face.name,
    own,
    outline,
    ...size,
    depth,
    measures: measuresOf(side.part, side.face, own, boundsOfRegions([outline])),
  };
}
