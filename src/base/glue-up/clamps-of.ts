import { add3, dot3, length3, scale3, unit3, type Vec3 } from '../../geometry/index.ts';
import type { PlacedPart } from '../api.ts';
import type { Joint, JointWork } from '../joints/api.ts';
import type { Clamp } from './api.ts';
import { jawOn } from './jaw-on.ts';

/** Joints whose ways differ by less than this, rad, are closed by clamps in one way. */
const ONE_WAY = (12 * Math.PI) / 180;
/** A tenon or dowel askew by less than this, mm over its depth, slides in by its own play. */
const PLAY = 0.2;

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
  const jaws = [scale3(direction, -1), direction].map((outwards) => jawOn(outwards, parts, joints));
  return {
    direction,
    opening: jaws.reduce((sum, { wood }) => sum + wood, 0),
    withCauls: jaws.reduce((sum, { withCaul }) => sum + withCaul, 0),
    joints: joints.map(({ id }) => id),
    cauls: jaws.flatMap(({ cauls }) => cauls),
    askew: joints.flatMap((joint) => askewOf(joint, direction)),
  };
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
