/** Every tolerance of the geometry, one per kind of quantity, each with its reason. */

/**
 * Two positions closer than this (mm) are one place. Far below anything that paper or wood shows
 * (0.02 mm), far above the rounding of doubles at the size of a table (1e-12 mm at 2 m).
 */
export const POSITION_TOLERANCE = 1e-7;

/** Directions closer than this (rad) are one direction: 1e-9 rad moves the end of a 10 m edge by 1e-5 mm. */
export const ANGLE_TOLERANCE = 1e-9;

/** How far (mm) the arcs that stand for a batten curve may lie from it. Stated on the paper as well. */
export const FAIRING_TOLERANCE = 0.005;
