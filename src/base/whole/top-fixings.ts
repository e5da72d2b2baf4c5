import {
  boundsOfRegions,
  pointToWorld,
  type Region,
  STAY,
  transformRegion,
  type Vec,
} from '../../geometry/index.ts';
import { clearanceHole, USUAL_WOOD_TYPED, type Wood } from '../../materials/index.ts';
import type { StandingBase } from '../api.ts';
import { facesOf } from '../contact/faces-of.ts';
import {
  type Climate,
  type FixingSlot,
  fixingSlot,
  type Sawn,
  type SeasonalMovement,
  seasonalMovement,
} from '../statics/index.ts';

/** A place where the top is screwed to the base, seen from above, mm. */
export interface FixingPoint {
  /** The placed part that it goes through. */
  readonly part: string;
  readonly at: Vec;
  /** The upper face that it lies on, seen from above. */
  readonly footprint: readonly Region[];
  /** Slot across the top's grain; a round hole on its middle line. */
  readonly slot: FixingSlot;
}

/** With the air and the way of holding that it was reckoned for. */
export interface TopFixings extends AirOfYear, TopHeld {
  readonly points: readonly FixingPoint[];
  readonly movement: SeasonalMovement;
}

/** The air of a room through the year, and the moisture content of the wood when it is worked, %. */
export interface AirOfYear {
  readonly dry: Climate;
  readonly damp: Climate;
  readonly made: number;
}

/** Rooms heated in winter and open in summer, and wood as joiners use it (common practice): shared/tables/usual-wood.json. */
export const USUAL_YEAR: AirOfYear = {
  dry: airOf(USUAL_WOOD_TYPED.room.dry),
  damp: airOf(USUAL_WOOD_TYPED.room.damp),
  made: Number.parseFloat(USUAL_WOOD_TYPED.room.made),
};

function airOf({
  temperature,
  humidity,
}: {
  readonly temperature: string;
  readonly humidity: string;
}): Climate {
  return { celsius: Number.parseFloat(temperature), humidity: Number.parseFloat(humidity) / 100 };
}

/** The top and what holds it: how its growth rings lie, and the thread of its bolts or screws. */
export interface TopHeld {
  readonly sawn: Sawn;
  readonly thread: string;
}

/** An M6 bolt or a screw of that size. */
export const USUAL_TOP: TopHeld = { sawn: 'flat', thread: 'M6' };

/** From the end of a part to its first fixing, and no farther from one to the next, mm (common practice). */
const FROM_END = 60;
const APART = 320;
/** A face narrower or shorter than this, mm, takes no screw. */
const LEAST = { width: 16, length: 60 } as const;
const LEVEL = 0.05;

/**
 * Where a solid top, its grain along the table, is fixed to the parts that it lies on: along each of their upper faces, with a slot that
 * lets it move across its grain from the middle line, which is held still. Throws for a thread whose clearance hole no table knows.
 */
export function topFixings(
  base: StandingBase,
  topWood: Wood,
  year: AirOfYear = USUAL_YEAR,
  held: TopHeld = USUAL_TOP,
): TopFixings {
  const { top, parts } = base;
  const movement = seasonalMovement({ width: top.width, wood: topWood, sawn: held.sawn, ...year });
  const hole = clearanceHole(held.thread);
  if (hole === undefined) throw new RangeError(`no clearance hole is known for ${held.thread}`);
  const points = parts.flatMap((part) =>
    facesOf(part)
      .filter(({ plane }) => plane.normal.z > 1 - 1e-6 && Math.abs(plane.offset - top.level) < LEVEL)
      .flatMap(({ frame, regions }) => {
        const box = boundsOfRegions(regions);
        const [width, height] = [box.maxX - box.minX, box.maxY - box.minY];
        const along = width > height ? ('x' as const) : ('y' as const);
        const length = Math.max(width, height);
        if (Math.min(width, height) < LEAST.width || length < LEAST.length) return [];
        const fromAbove = { ...STAY, turn: Math.atan2(frame.x.y, frame.x.x), shift: frame.origin };
        const footprint = regions.map((region) => transformRegion(region, fromAbove));
        const middle = { x: (box.minX + box.maxX) / 2, y: (box.minY + box.maxY) / 2 };
        return placesAlong(length).map((from) => {
          const own = { ...middle, [along]: (along === 'x' ? box.minX : box.minY) + from };
          const at = pointToWorld(frame, { ...own, z: 0 });
          return {
            part: part.id,
            at: { x: at.x, y: at.y },
            footprint,
            slot: fixingSlot(at.y, top.width, movement, hole),
          };
        });
      }),
  );
  return { points, movement, ...year, ...held };
}

/** Evenly from end to end; a short face has one in its middle. */
function placesAlong(length: number): readonly number[] {
  const span = length - 2 * FROM_END;
  if (span < FROM_END) return [length / 2];
  const count = Math.ceil(span / APART);
  return Array.from({ length: count + 1 }, (_, at) => FROM_END + (at * span) / count);
}
