export { leastRadiusOfBlade } from './blades.ts';
export { highestSpeed, PASS_OVERLAP, THROUGH, usualDepthOfPass } from './cutters.ts';
export { SCREW, TAPE } from './fixings.ts';
export { BEARING, BUSHING, RUN_ON } from './guides.ts';
export { GRAIN_SLOPE, MOST_SPLAY } from './legs.ts';
