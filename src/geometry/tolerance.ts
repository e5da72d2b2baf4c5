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

/** Ends closer than this (mm) become one vertex of an arrangement: above rounding, a tenth of one place. */
export const VERTEX_SNAP = 1e-8;

/**
 * Vertices of a boolean that lie farther apart than this (mm) stay two, where the result then has none nearer to each other than VERTEX_SNAP: which of two
 * near ones is right shows only when both are there. A line bent to the wrong one is off by half as much.
 */
export const FINE_SNAP = 2e-9;

/**
 * Two carriers nearer to each other than this (mm) are not told apart: the rounding of a circle of 1e6 mm radius is
 * 2e-10 mm. An end this near to an edge lies on it; a touch no deeper than this is a touch.
 */
export const CARRIER_TOLERANCE = 1e-9;

/**
 * What is cut off a parallel before it is crossed with others lies at least this much (mm) nearer to the source than the offset: the
 * loose end must not be taken for the crossing that bounds the offset.
 */
export const TRIM_MARGIN = 1e-6;

/**
 * Two edges of a boolean that cross farther than this (mm) from every end and every other crossing cross plainly, however the
 * last digits fall: ten times what may lie between an arc's ends and its circle.
 */
export const PLAIN_CLEARANCE = 1e-6;

/** And at an angle of at least this (rad): at a flatter one the rounding of a crossing would reach the clearance. */
export const PLAIN_ANGLE = 1e-4;

/** And whose arcs have smaller radii than this (mm), so that the rounding of their circles stays below 1e-11 mm. */
export const LARGEST_PLAIN_RADIUS = 1e5;

/**
 * An arc of larger radius (mm) is written as a line: the rounding of its centre would reach 1e-8 mm, and over 100 mm the
 * line strays by 1e-4 mm and turns by 5e-6 rad only.
 */
export const STRAIGHT_RADIUS = 1e7;

/**
 * Wood left or lost that reaches less than this (mm) from the line is none: half of what a pattern on paper promises
 * (0.02 mm), far below what a cutter's runout leaves.
 */
export const RESIDUE_TOLERANCE = 0.01;

/**
 * Edges that turn by less than this (rad) carry each other on: in so blunt an inside corner a cutter of 50 mm leaves
 * 0.0013 mm.
 */
export const SMOOTH_TURN = 0.02;

/**
 * Figures that differ by less than this share are one figure: what converting units and turning by quarter turns leaves
 * of rounding (1e-16 a step), far below what anyone types.
 */
export const FIGURE_ROUNDING = 1e-12;

/** Faces of two parts standing nearer to each other than this (mm), or further into each other, touch: half of what a pattern promises. */
export const CONTACT_TOLERANCE = 0.01;

/** Faces turned from each other by less than this (rad) lie flat: 0.01 mm over a contact of 100 mm. */
export const CONTACT_TURN = 1e-4;

/** Contacts smaller than this (mm²) are none: what CONTACT_TOLERANCE leaves along an edge of 100 mm. */
export const CONTACT_AREA = 1;

/**
 * How far (mm) a chord may lie from the ellipse arc that a slanting plane cuts out of a round wall: far below what a pattern
 * promises, and few chords (23 for a quarter of 100 mm radius).
 */
export const SECTION_TOLERANCE = 0.005;

/** A plane that leans from square to a part's faces by less than this (rad) is square to them: 0.0005 mm through 50 mm of wood. */
export const SQUARE_TURN = 1e-5;

/** Two parts whose outlines and joints lie within this (mm) of each other are made from one pattern: half of what it promises. */
export const SAME_MADE = 0.01;

/**
 * How far (mm) the chords of a solid may lie from its arcs: half of CONTACT_TOLERANCE, so that parts which touch along an arc neither
 * run into each other nor miss each other by what the chords leave.
 */
export const SOLID_CHORD = 0.005;

/**
 * Three known points of a photograph count as lying in one line when the sine of the smallest corner of their triangle is below this:
 * what one of them is off by would show two hundred times as large. The corners of a board up to 200 times as long as wide will do.
 */
export const FLATTEST_CORNER = 0.005;

/** A pulled point nearer than this (mm) to where it was pulled to has arrived: half of what a pattern promises. */
export const HANDLE_TOLERANCE = 0.01;

/** How far (mm) the straight sides by which parts are nested on a board may lie outside their arcs: far less than a saw allowance. */
export const LAY_CHORD = 0.1;

/** Parts on a board that overlap by less than this (mm²) touch, and so do parts that overlap nowhere by more than LAY_REACH (mm): typed places are rounded. */
export const LAY_AREA = 0.5;
export const LAY_REACH = 0.02;

/** Grain off the board's by less than this (rad) beyond what is allowed is within it: 0.02 mm over 2 m. */
export const LAY_TURN = 1e-5;

/** A drawn arc that stands off its chord by less than this (mm) is a line, and points nearer than this are one: no paper shows it. */
export const FLAT_ARC = 1e-3;
