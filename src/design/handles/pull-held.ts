import type { Vec } from '../../geometry/index.ts';
import { RAD_PER_DEGREE } from '../../measure/index.ts';
import { type Pulled, pullHandle, type Seen, type Steps, settleHandle } from '../../sketch/index.ts';
import type { Design } from '../design-schema.ts';
import { lengthStyleOf } from '../length-style.ts';
import type { HeldHandle } from './hold-handle.ts';

/**
 * Where a held handle comes to when it is pulled to a target, and which parameters follow: mm in its part's plane or, for a handle of the
 * base, in the picture whose axes `seen` gives (a camera of a view). Reckoned from where it was taken hold of, so that the way of the pointer
 * does not matter; only what the handle needs is evaluated. Nothing when the form's checks did not hold to begin with.
 */
export function pullHeld({ grip }: HeldHandle, target: Vec, seen?: Seen): Pulled | undefined {
  return pullHandle(grip, target, seen);
}

/**
 * The end of a pull in the design's own steps: lengths to what it prints (0.1 mm, 1/32 in), angles to 0.1°, ratios to 0.001; the whole form is
 * drawn, and where that fails it goes part of the way. Nothing when the design could not be drawn to begin with.
 */
export function settleHeld(
  { design, grip, thickness }: HeldHandle,
  pulled: Pulled,
  target: Vec,
  seen?: Seen,
): Pulled | undefined {
  return settleHandle(grip, pulled, target, stepsOf(design), {
    thickness,
    ...(seen === undefined ? {} : { seen }),
  });
}

/** As fine as angles and ratios are usually set (common practice). */
const ANGLE_STEP = RAD_PER_DEGREE / 10;
const RATIO_STEP = 0.001;
const MM_PER_INCH = 25.4;

function stepsOf(design: Design): Steps {
  const style = lengthStyleOf(design);
  const length = style.unit === 'mm' ? 10 ** -style.decimals : MM_PER_INCH / style.denominator;
  return { length, angle: ANGLE_STEP, ratio: RATIO_STEP };
}
