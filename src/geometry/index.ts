export type { Arc, Box, Edge, EdgeRole, EdgeTag, Line, Outline, Region, Vec } from './api.ts';
export { boundsOfEdge, boundsOfEdges, boundsOfRegions, joinBoxes } from './bounds.ts';
export { arc, curvatureOf, directionAt, lengthOf, line, pointAt, reverseEdge, sweepOf } from './edge.ts';
export { ANGLE_TOLERANCE, FAIRING_TOLERANCE, POSITION_TOLERANCE } from './tolerance.ts';
export {
  moveBy,
  type Similarity,
  STAY,
  transformEdge,
  transformOutline,
  transformPoint,
  transformRegion,
  turnBy,
} from './transform.ts';
export {
  add,
  angleOf,
  between,
  cross,
  distance,
  dot,
  leftOf,
  length,
  middle,
  polar,
  scale,
  subtract,
  unit,
  vec,
} from './vec.ts';
