/** Limits that keep a hostile file cheap. The largest form in use takes a tenth of each. */

/** Characters in a file. */
export const MOST_CHARACTERS = 128 * 1024;
/** Characters in a line: indentation and compact nesting cannot grow past it. */
export const MOST_LINE_CHARACTERS = 1000;
/** Maps and lists inside each other. */
export const MOST_DEPTH = 10;
/** Texts, maps and lists in a file. */
export const MOST_NODES = 20_000;
/** Characters in an expression. */
export const MOST_EXPRESSION_CHARACTERS = 400;
/** Brackets, signs and calls inside each other in an expression. */
export const MOST_EXPRESSION_DEPTH = 40;
/** Parameters, values, points, planes, openings, corners, parts and checks together. */
export const MOST_DECLARATIONS = 400;
/** Places of a base, planes of a base, and pieces of wood that stand in it once every place is copied. */
export const MOST_PLACES = 60;
export const MOST_BASE_PLANES = 100;
export const MOST_COPIES = 200;
/** Edges in all outlines together. */
export const MOST_EDGES = 400;
/** Points that one batten curve runs through. */
export const MOST_NAILS = 100;
/** Points that all batten curves of a form run through. */
export const MOST_NAILS_IN_ALL = 400;
/** Farthest place from the origin along either axis, mm: 100 m, as the longest length that is read. */
export const FARTHEST = 100_000;
/** Largest figure (mm, mm², rad, …) that an expression may come to. */
export const LARGEST_FIGURE = 1e9;
