import { type Box, circleOutline, polygonOutline, type Region, vec } from '../../geometry/index.ts';
import { STANDING_LOADS, type Wood } from '../../materials/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { PlacedPart, StandingBase } from '../api.ts';
import type { Joint } from '../joints/api.ts';
import {
  clearWidths,
  findCollisions,
  floorContact,
  lowestOver,
  measureSolids,
  type Solid,
  type SolidKernel,
  withSolids,
} from '../solids/index.ts';
import {
  chairPlaces,
  kneeClearance,
  overhang,
  rectangleSection,
  rocking,
  thighClearance,
  tipping,
} from '../statics/index.ts';
import { cornersInWorld, footEnds } from './corners-in-world.ts';
import { pocketsOf } from './pockets-of.ts';
import { sagOfBeam, stiffnessOfBeam } from './sag-of-beam.ts';
import { findingsOfStanding } from './say-standing.ts';
import type { StandingUp } from './standing.ts';
import { withJoinery } from './with-joinery.ts';

export interface StandingOptions {
  readonly woodOf: (part: PlacedPart) => Wood;
  readonly topWood: Wood;
  readonly lengths: LengthStyle;
}

/** How far in from the front edge knees reach, and how far a chair goes in, mm, and up to which height feet and chairs need room. */
const KNEE_DEPTH = 450;
const CHAIR_DEPTH = 300;
const CHAIR_HEIGHT = 450;
/** Share of the top's length over which a sitter's knees are looked for. */
const SEATED_SHARE = 0.5;
/** Corners no further than this from the underside of the top carry it, mm. */
const CARRIES = 0.05;

/** Weighs the base, looks for parts in each other's way, and reckons how it stands: tipping, rocking, overhang, sag, room for knees and chairs. */
export function standingUp(
  kernel: SolidKernel,
  base: StandingBase,
  joints: readonly Joint[],
  options: StandingOptions,
): StandingUp {
  return withSolids(
    kernel,
    base.parts,
    (solids) => stand(kernel, solids, base, joints, options),
    (part) => pocketsOf(joints, part),
  );
}

function stand(
  kernel: SolidKernel,
  solids: readonly Solid[],
  base: StandingBase,
  joints: readonly Joint[],
  options: StandingOptions,
): StandingUp {
  const { top, parts, use } = base;
  const bare = measureSolids(solids, (part) => options.woodOf(part).density);
  const { measured, joinery } = withJoinery(bare, joints, parts, options.woodOf);
  const topOutline = outlineOfTop(base);
  const area = top.shape === 'round' ? (Math.PI * top.length * top.width) / 4 : top.length * top.width;
  const topMass = area * top.thickness * 1e-9 * options.topWood.density;
  const mass = measured.mass + topMass;
  const centre = vec((measured.centre.x * measured.mass) / mass, (measured.centre.y * measured.mass) / mass);
  const { feet } = floorContact(kernel, solids, base.levellers);
  const corners = feet.flatMap(({ part, regions }) =>
    regions.flatMap(({ outer }) => outer.edges.map(({ from }) => ({ name: part, at: from }))),
  );
  const ends = footEnds(parts);
  const carriers = parts.flatMap(cornersInWorld).filter(({ z }) => Math.abs(z - top.level) < CARRIES);
  const load = STANDING_LOADS[use].value;
  const beams = parts.filter(({ beam }) => beam);
  const stiffness =
    stiffnessOfTop(base, options.topWood) +
    beams.reduce((sum, part) => sum + stiffnessOfBeam(part, options.woodOf(part)), 0);
  const facts: Omit<StandingUp, 'findings'> = {
    measured,
    joinery,
    topMass,
    collisions: findCollisions(kernel, solids),
    ...(corners.length === 0 ? {} : { tipping: tipping({ feet: corners, mass, centre, top: [topOutline] }) }),
    ...(ends.length < 3 ? {} : { rocking: rocking(ends, { ...centre, z: top.level }) }),
    overhang:
      carriers.length === 0 || corners.length === 0
        ? []
        : overhang({
            top: [topOutline],
            carriers,
            feet: corners.map(({ at }) => at),
            seatedEnds: false,
          }),
    ...roomOf(kernel, solids, base),
    beams: beams.flatMap((part) => {
      const wood = options.woodOf(part);
      const share = stiffnessOfBeam(part, wood) / stiffness;
      return sagOfBeam(part, joints, { load: load + topMass, wood, share });
    }),
    load,
  };
  return { ...facts, findings: findingsOfStanding(facts, base, options.lengths) };
}

/** The top bends along the table with the beams under it, N·mm²; of a round one its middle half counts. */
function stiffnessOfTop({ top }: StandingBase, wood: Wood): number {
  const width = top.shape === 'round' ? top.width / 2 : top.width;
  return rectangleSection(width, top.thickness).secondMoment * wood.modulusOfElasticity;
}

function outlineOfTop({ top }: StandingBase): Region {
  const tag = { id: 'top', role: 'left' } as const;
  const [x, y] = [top.length / 2, top.width / 2];
  const outer =
    top.shape === 'round'
      ? circleOutline({ x: 0, y: 0 }, x, tag)
      : polygonOutline([vec(-x, -y), vec(x, -y), vec(x, y), vec(-x, y)], tag);
  return { outer, holes: [] };
}

/** Room for knees and chairs at the front of a table or a desk; sitters of benches and stools need none under the seat. */
function roomOf(
  kernel: SolidKernel,
  solids: readonly Solid[],
  { top, use }: StandingBase,
): Pick<StandingUp, 'knees' | 'chairs'> {
  if (use !== 'table' && use !== 'desk') return { knees: [] };
  const front = -top.width / 2;
  const half = (top.length * SEATED_SHARE) / 2;
  const over: Box = {
    minX: -half,
    maxX: half,
    minY: front,
    maxY: front + Math.min(KNEE_DEPTH, top.width / 2),
  };
  const height = Math.min(lowestAbove(kernel, solids, over), top.level);
  const widths = clearWidths(
    kernel,
    solids,
    {
      min: { x: -top.length / 2, y: over.minY, z: 0 },
      max: { x: top.length / 2, y: front + Math.min(CHAIR_DEPTH, top.width / 2), z: CHAIR_HEIGHT },
    },
    'x',
  );
  const widest = Math.max(0, ...widths.map(({ width }) => width));
  return {
    knees: [
      ...kneeClearance({ height, width: widest }, use === 'desk' ? 'desk' : 'dining'),
      thighClearance(height),
    ],
    chairs: chairPlaces({ between: widest, along: top.length, arms: false }),
  };
}

/** Wood low down (ties, stretchers, feet) is stepped over, not sat under: knees are above this height, mm. */
const BELOW_KNEES = 400;

function lowestAbove(kernel: SolidKernel, solids: readonly Solid[], over: Box): number {
  const high = solids.filter(({ part }) => cornersInWorld(part).every(({ z }) => z > BELOW_KNEES));
  return lowestOver(kernel, high, over)?.z ?? Infinity;
}
