export type { Cut, PlacedPart, StandingBase } from './api.ts';
export { standBase } from './stand/stand-base.ts';
