import { type Frame, type Plane3, scale3, turn3, type Vec3 } from '../../geometry/index.ts';
import type { CopyOfPlace, MirrorAcross } from '../../sketch/index.ts';

/** A motion of the whole base onto itself or beside itself: mirrored first, then turned about the plumb line through the middle, then moved. */
export interface Motion {
  readonly mirrored: readonly MirrorAcross[];
  readonly turn: number;
  readonly shift: Vec3;
}

const STILL: Motion = { mirrored: [], turn: 0, shift: { x: 0, y: 0, z: 0 } };
const UP: Vec3 = { x: 0, y: 0, z: 1 };

/** Where each copy of a place stands, the place itself first: each step applies to all that the steps before it made. */
export function motionsOf(copies: readonly CopyOfPlace[]): readonly Motion[] {
  return copies.reduce<readonly Motion[]>(
    (made, step) => {
      switch (step.kind) {
        case 'mirror':
          return made.concat(made.map((motion) => mirrorMotion(motion, step.across)));
        case 'repeat':
          return numbers(step.count).flatMap((k) =>
            made.map((motion) => ({ ...motion, shift: plus(motion.shift, scale3(step.step, k)) })),
          );
        case 'turn':
          return numbers(step.count).flatMap((k) => {
            const by = (2 * Math.PI * k) / step.count;
            return made.map((motion) => ({
              ...motion,
              turn: motion.turn + by,
              shift: turn3(motion.shift, UP, by),
            }));
          });
        default:
          return step satisfies never;
      }
    },
    [STILL],
  );
}

export function moveDirection(v: Vec3, { mirrored, turn }: Motion): Vec3 {
  return turn3(mirrored.reduce(reflect, v), UP, turn);
}

export function movePoint(p: Vec3, motion: Motion): Vec3 {
  return plus(moveDirection(p, motion), motion.shift);
}

export function movePlane(plane: Plane3, motion: Motion): Plane3 {
  const normal = moveDirection(plane.normal, motion);
  const { shift } = motion;
  return {
    normal,
    offset: plane.offset + normal.x * shift.x + normal.y * shift.y + normal.z * shift.z,
  };
}

/** Is the copy a mirror image? */
export const changesHand = ({ mirrored }: Motion): boolean => mirrored.length % 2 === 1;

/** The frame of a copy: of a mirror image the x axis is turned round, so that it stays right-handed and its face side the face side. */
export function moveFrame(frame: Frame, motion: Motion): Frame {
  const x = moveDirection(frame.x, motion);
  return {
    origin: movePoint(frame.origin, motion),
    x: changesHand(motion) ? scale3(x, -1) : x,
    y: moveDirection(frame.y, motion),
    z: moveDirection(frame.z, motion),
  };
}

function mirrorMotion(motion: Motion, across: MirrorAcross): Motion {
  return {
    mirrored: [...motion.mirrored, across],
    turn: -motion.turn,
    shift: reflect(motion.shift, across),
  };
}

const reflect = (v: Vec3, across: MirrorAcross): Vec3 =>
  across === 'left-right' ? { ...v, x: -v.x } : { ...v, y: -v.y };

const plus = (a: Vec3, b: Vec3): Vec3 => ({ x: a.x + b.x, y: a.y + b.y, z: a.z + b.z });

const numbers = (count: number): readonly number[] => Array.from({ length: count }, (_, at) => at);
