import { type Finding, once } from '../../core/index.ts';
import type { JointSketch } from '../../sketch/index.ts';
import type { PlacedPart, StandingBase } from '../api.ts';
import { surelyApart } from '../contact/apart.ts';
import type { PartFace } from '../contact/api.ts';
import { contactsBetween } from '../contact/contacts-between.ts';
import { facesOf, possibleFaces } from '../contact/faces-of.ts';
import { withoutPockets } from '../contact/without-pockets.ts';
import { type Stance, stancesOf, standAlike } from './alike-pairs.ts';
import type { BaseJoints, Joint, Pocket } from './api.ts';
import { carryJoint, type JoinedPair } from './carry-joint.ts';
import { halvedJoint } from './halved-joint.ts';
import { insertJoint } from './insert-joint.ts';
import type { JointPair, MadeJoint } from './joint-pair.ts';
import { type JoinedPlaces, keptApart } from './kept-apart.ts';
import { meetingsOfJoints } from './meetings.ts';
import { missedBy } from './missed-by.ts';
import { plainJoint } from './plain-joint.ts';
import { sectionOfJoint } from './section-of-joint.ts';
import { type JointOptions, type Shop, shopOf, withShorter } from './shop.ts';
import { tenonJoint } from './tenon-joint.ts';

/**
 * Every joint of a base: for each that the form names, all pairs of copies of its two places that touch (of a halved joint: that cross), with what it takes from
 * both parts, and what is to be said of it. Where several faces of a pair touch, the joint is made in the largest contact. Findings that copies
 * share are said once. Throws a RangeError for a screw that the table does not know.
 */
export function joinBase(base: StandingBase, options: JointOptions = {}): BaseJoints {
  const plain = shopOf(options);
  const halved = base.joints
    .filter(({ kind }) => kind === 'halved')
    .map((sketch) => joinPlaces(base, sketch, (id, a, b) => halvePair(id, sketch, a, b, plain)));
  // What crosses is halved before anything else is joined to it.
  const pocketsOf = remembered((part: string) => pocketsIn(halved, part));
  const shop = shopOf(options, pocketsOf);
  const faces = remembered((part: PlacedPart) =>
    withoutPockets(facesOf(part), part.drawn.thickness, pocketsOf(part.id)),
  );
  // What cuts have left nothing of touches nothing: asked for contacts alone, such a face need not be known.
  const touching: Faces = (part) => (pocketsOf(part.id).length > 0 ? faces(part) : possibleFaces(part));
  const stanceOf = stancesOf(base.parts, pocketsOf);
  const join = (sketch: JointSketch, own: Shop): JoinedPlaces =>
    halved.find((done) => done.sketch === sketch) ??
    joinPlaces(base, sketch, joiner(sketch, own, touching, stanceOf));
  const { all, meetings } = keptApart(
    base.joints.map((sketch) => join(sketch, shop)),
    (each) => meetingsOfJoints(base.parts, each, shop),
    (sketch, shorterThan) => join(sketch, withShorter(shop, shorterThan)),
  );
  const joints = all.flatMap((done) => done.joints);
  const findings = all.flatMap(({ sketch, pairs, joints: made }) =>
    [...missedBy(sketch, pairs, made, shop, faces), ...made.flatMap((joint) => joint.findings)].map(
      (finding) => ({ ...finding, joint: sketch.name }),
    ),
  );
  return { joints, findings: eachOnce([...findings, ...meetings]) };
}

type Faces = (part: PlacedPart) => readonly PartFace[];
type Pair = readonly [PlacedPart, PlacedPart];

const pocketsIn = (halved: readonly JoinedPlaces[], part: string): readonly Pocket[] =>
  halved
    .flatMap(({ joints }) => joints.flatMap(({ sides }) => sides))
    .filter((side) => side.part === part)
    .flatMap(({ work }) => work)
    .filter((work): work is Pocket => work.kind === 'pocket');

/** A joint of the form at all copies of its places where it can be made. */
function joinPlaces(
  { parts }: StandingBase,
  sketch: JointSketch,
  make: (id: string, a: PlacedPart, b: PlacedPart) => Joint | undefined,
): JoinedPlaces {
  const pairs = pairsOf(parts, sketch);
  const joints: Joint[] = [];
  for (const [a, b] of pairs) {
    if (surelyApart(a, b)) continue;
    const id = joints.length === 0 ? sketch.name : `${sketch.name}-${joints.length + 1}`;
    const joint = make(id, a, b);
    if (joint !== undefined) joints.push(joint);
  }
  return { sketch, pairs, joints };
}

function pairsOf(parts: readonly PlacedPart[], { between: [first, second] }: JointSketch): readonly Pair[] {
  const [firsts, seconds] = [first, second].map((place) => parts.filter((part) => part.place === place));
  return firsts!.flatMap((a) =>
    seconds!
      // Copies of one place among themselves: each pair once.
      .filter((b) => (first === second ? b.copy > a.copy : true))
      .map((b) => [a, b] as const),
  );
}

function halvePair(
  id: string,
  sketch: JointSketch,
  a: PlacedPart,
  b: PlacedPart,
  shop: Shop,
): Joint | undefined {
  const made = halvedJoint({ id, sketch, a, b }, shop);
  if (made === undefined) return undefined;
  const { name, label, kind } = sketch;
  const { frame, ...joint } = made;
  const section = once(() => sectionOfJoint(frame, [a, b], joint.sides));
  return {
    id,
    name,
    label,
    kind,
    ...joint,
    get section() {
      return section();
    },
  };
}

/** Joins pairs of copies one after the other: those that stand to each other as a pair before, or as its mirror image, get the same joint. */
function joiner(
  sketch: JointSketch,
  shop: Shop,
  faces: Faces,
  stanceOf: (a: PlacedPart, b: PlacedPart) => Stance,
): (id: string, a: PlacedPart, b: PlacedPart) => Joint | undefined {
  const known: { readonly stance: Stance; readonly pair: JoinedPair | undefined }[] = [];
  return (id, a, b) => {
    const stance = stanceOf(a, b);
    const like = known.find((each) => standAlike(each.stance, stance));
    if (like !== undefined) return like.pair && carryJoint(like.pair, id, [a, b], faces, shop.pocketsOf);
    const joint = joinPair(id, sketch, a, b, shop, faces);
    known.push({ stance, pair: joint && { a, b, joint } });
    return joint;
  };
}

function joinPair(
  id: string,
  sketch: JointSketch,
  a: PlacedPart,
  b: PlacedPart,
  shop: Shop,
  faces: Faces,
): JoinedPair['joint'] | undefined {
  const { name, label, kind } = sketch;
  const [contact] = contactsBetween(a, b, faces);
  if (contact === undefined) return undefined;
  const made = makeJoint({ id, sketch, a, b, contact }, shop);
  const section = once(() => sectionOfJoint(contact.frame, [a, b], made.sides, shop.pocketsOf));
  return {
    id,
    name,
    label,
    kind,
    contact,
    ...made,
    get section() {
      return section();
    },
  };
}

function makeJoint(pair: JointPair, shop: Shop): MadeJoint {
  const { kind } = pair.sketch;
  switch (kind) {
    case 'loose-tenons':
    case 'dowels':
      return insertJoint(pair, shop);
    case 'mortise-and-tenon':
      return tenonJoint(pair, shop);
    case 'glued':
    case 'screwed':
      return plainJoint(pair, shop);
    case 'halved':
      throw new RangeError('parts that are halved do not touch before');
    default:
      return kind satisfies never;
  }
}

/** A finding of several copies once: messages name places, not copies. */
function eachOnce(findings: readonly Finding[]): readonly Finding[] {
  const seen = new Set<string>();
  return findings.filter(({ code, message }) => {
    const key = `${code} ${message}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function remembered<K, V>(ask: (key: K) => V): (key: K) => V {
  const known = new Map<K, V>();
  return (key) => {
    const found = known.get(key);
    if (found !== undefined) return found;
    const made = ask(key);
    known.set(key, made);
    return made;
  };
}
