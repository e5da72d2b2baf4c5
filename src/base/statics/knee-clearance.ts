import { type Figure, KNEE_ROOM } from '../../materials/index.ts';
import { type Measured, measure } from './measured.ts';

/** Room that a sitter finds, mm. */
export interface KneeRoom {
  /** Floor to the lowest wood over the knees. */
  readonly height: number;
  /** Between what stands left and right of the knees. */
  readonly width: number;
  /** From the top's edge inwards to the first wood at the height of the knees, and at the floor. */
  readonly depthAtKnee?: number;
  readonly depthAtFoot?: number;
}

export type SittingUse = 'dining' | 'desk' | 'accessible';

const LIMITS: Readonly<Record<SittingUse, Readonly<Partial<Record<keyof KneeRoom, Figure>>>>> = {
  dining: { height: KNEE_ROOM.diningHeight, width: KNEE_ROOM.diningWidth },
  desk: {
    height: KNEE_ROOM.deskHeight,
    width: KNEE_ROOM.deskWidth,
    depthAtKnee: KNEE_ROOM.deskDepthAtKnee,
    depthAtFoot: KNEE_ROOM.deskDepthAtFoot,
  },
  accessible: {
    height: KNEE_ROOM.accessibleHeight,
    width: KNEE_ROOM.accessibleWidth,
    depthAtKnee: KNEE_ROOM.accessibleDepth,
  },
};

/** Sets the room for knees and feet beside what such a use asks for, each with its source; what was not measured is left out. */
export function kneeClearance(room: KneeRoom, use: SittingUse): readonly Measured[] {
  const limits = LIMITS[use];
  const found: Measured[] = [];
  for (const name of ['height', 'width', 'depthAtKnee', 'depthAtFoot'] as const) {
    const [value, least] = [room[name], limits[name]];
    if (value === undefined) continue;
    found.push(measure(`knees.${name}`, value, least === undefined ? {} : { least }));
  }
  return found;
}

/**
 * Room for the thighs: from a seat of this height (mm, the usual dining chair unless given) to the lowest wood over the knees, beside what
 * thighs take.
 */
export function thighClearance(
  height: number,
  seatHeight: number = KNEE_ROOM.diningSeatHeight.value,
): Measured {
  return measure('knees.thighs', height - seatHeight, { least: KNEE_ROOM.thighs });
}
