export { leastRadiusOfBlade } from './blades.ts';
export { clearanceHole } from './clearance-holes.ts';
export { highestSpeed, PASS_OVERLAP, THROUGH, usualDepthOfPass } from './cutters.ts';
export { type DowelSize, USUAL_DOWELS } from './dowels.ts';
export type { Figure } from './figure.ts';
export { SCREW, TAPE } from './fixings.ts';
export { KNEE_ROOM, OVERHANG, PLACES, USUAL_HEIGHTS } from './furniture.ts';
export { BEARING, BUSHING, RUN_ON } from './guides.ts';
export { DOWEL_RULES, GLUE_PRESSURE, GLUE_SPREAD, TENON_RULES } from './joinery.ts';
export { GRAIN_SLOPE, MOST_SPLAY } from './legs.ts';
export { type LooseTenonSize, USUAL_LOOSE_TENONS } from './loose-tenons.ts';
export { RESAW_RULES, ROUGH_BOARDS, type RoughBoard } from './lumber.ts';
export {
  EQUILIBRIUM_SOURCE,
  equilibriumMoisture,
  FIBRE_SATURATION,
  LINEAR_MOISTURE,
  SLOT_PLAY,
} from './moisture.ts';
export { SAG_LIMITS, STANDING_LOADS, TIPPING_LOAD, USUAL_ERRORS } from './statics.ts';
export { INSERT_RULES, THREADED_INSERTS } from './threaded-inserts.ts';
export { USUAL_WOOD_TYPED } from './usual-wood.ts';
export { WOOD_SCREWS, type WoodScrew } from './wood-screws.ts';
export { WOOD_SOURCES, WOODS, type Wood, woodCalled } from './woods.ts';
