export type { Arc, Box, Edge, EdgeRole, EdgeTag, Line, Outline, Region, Vec } from './api.ts';
export {
  type FillRule,
  intersectRegions,
  regionsFromLoops,
  subtractRegions,
  symmetricDifference,
  uniteRegions,
} from './boolean/booleans.ts';
export { boundsOfEdge, boundsOfEdges, boundsOfRegions, joinBoxes } from './bounds.ts';
export { clipEdges } from './clip/clip-edges.ts';
export { clipEdgesToRegions } from './clip/clip-edges-to-regions.ts';
export { arc, directionAt, lengthOf, line, pointAt, reverseEdge, sweepOf } from './edge.ts';
export { curvatureComb } from './fairing/curvature-comb.ts';
export { fairBatten } from './fairing/fair-batten.ts';
export { fitArcsToBezier } from './fairing/fit-arcs-to-bezier.ts';
export { fitArcsToPoints } from './fairing/fit-arcs-to-points.ts';
export { intersectEdges } from './intersect/intersect-edges.ts';
export { distanceAlong, placeAlong, pointAlong } from './measure/along.ts';
export { areaOfOutline, areaOfRegions } from './measure/area.ts';
export { chordAlong } from './measure/chord-along.ts';
export { locate } from './measure/locate.ts';
export { centroidOfRegions, momentsOfRegions } from './measure/moments.ts';
export { nearestOnEdge, nearestOnEdges } from './measure/nearest.ts';
export { neckOf } from './measure/neck.ts';
export { perimeterOfOutline, perimeterOfRegions } from './measure/perimeter.ts';
export { tightPlaces } from './measure/tight-places.ts';
export { offsetRegions } from './offset/offset-regions.ts';
export { closeRegions, openRegions } from './offset/open-close.ts';
export type { PointPair, Projection, ProjectionFound } from './projective/api.ts';
export { invertProjection, projectTwice } from './projective/matrix.ts';
export { matrix2d } from './projective/matrix-2d.ts';
export { matrix3d } from './projective/matrix-3d.ts';
export { project } from './projective/project.ts';
export { projectionFromPoints } from './projective/projection-from-points.ts';
export { projectionOfSimilarity } from './projective/projection-of-similarity.ts';
export { similarityFromPoints } from './projective/similarity-from-points.ts';
export { solveLinear } from './projective/solve-linear.ts';
export { type Stretch, stretchAt } from './projective/stretch-at.ts';
export {
  type FourCorners,
  liesOnLongSide,
  type TruePhotograph,
  truePhotograph,
} from './projective/true-photograph.ts';
export { circleOutline } from './shapes/circle-outline.ts';
export { polygonOutline } from './shapes/polygon-outline.ts';
export { slotOutline } from './shapes/slot-outline.ts';
export type { Frame, Plane3, Vec3 } from './space/api.ts';
export {
  directionToFrame,
  directionToWorld,
  frameAlong,
  planeToFrame,
  planeToWorld,
  pointToFrame,
  pointToWorld,
  WORLD,
} from './space/frame.ts';
export { flipPlane, heightOver, planeThrough } from './space/plane3.ts';
export {
  add3,
  cross3,
  distance3,
  dot3,
  length3,
  scale3,
  subtract3,
  turn3,
  unit3,
  vec3,
} from './space/vec3.ts';
export type { Stroke, StrokeLoop } from './strokes/api.ts';
export { edgesOfLoop, edgesOfStroke } from './strokes/edges-of-loop.ts';
export { type Hold, type Snap, snapPoint } from './strokes/snap-point.ts';
export { readSvgDrawing, type SvgShape } from './svg-path/read-svg-drawing.ts';
export { readSvgPath } from './svg-path/read-svg-path.ts';
export { writeSvgPath } from './svg-path/write-svg-path.ts';
export {
  ANGLE_TOLERANCE,
  CONTACT_AREA,
  CONTACT_TOLERANCE,
  CONTACT_TURN,
  FAIRING_TOLERANCE,
  FIGURE_ROUNDING,
  FLAT_ARC,
  FLATTEST_CORNER,
  HANDLE_TOLERANCE,
  LAY_AREA,
  LAY_CHORD,
  LAY_REACH,
  LAY_TURN,
  POSITION_TOLERANCE,
  RESIDUE_TOLERANCE,
  SAME_MADE,
  SECTION_TOLERANCE,
  SMOOTH_TURN,
  SOLID_CHORD,
  SQUARE_TURN,
  STRAIGHT_RADIUS,
} from './tolerance.ts';
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
export { findFaults } from './validity/find-faults.ts';
export { simplifyRegions } from './validity/simplify-regions.ts';
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
  norm,
  polar,
  scale,
  subtract,
  unit,
  vec,
} from './vec.ts';
