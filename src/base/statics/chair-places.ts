import { POSITION_TOLERANCE } from '../../geometry/index.ts';
import { PLACES } from '../../materials/index.ts';
import { type Measured, measure } from './measured.ts';

/** One side of a table, mm. */
export interface SideOfTable {
  /** Clear width between feet and stretchers, where chairs go in. */
  readonly between: number;
  /** Length of the top along that side. */
  readonly along: number;
  readonly arms: boolean;
  /** Width of the maker's own chairs, arms included; usual chairs unless given. */
  readonly chair?: number;
}

export interface ChairPlaces {
  /** How many sit here. */
  readonly places: number;
  /** What keeps one more from it: the feet, or the length of the top. */
  readonly limitedBy: 'feet' | 'top';
  /** Width of a chair reckoned with, mm. */
  readonly chair: number;
  /** Wood-free width that the chairs take, and that one more would need, mm. */
  readonly needed: number;
  readonly neededForMore: number;
  /** Length of the top for each place, beside what is comfortable; absent when nobody sits here. */
  readonly perPlace?: Measured;
}

/**
 * How many chairs go in at one side: n chairs and the gaps between them within the clear width between feet, and 24 in of the top
 * for each. Widths are usual practice (see the table's figures).
 */
export function chairPlaces({ between, along, arms, chair: own }: SideOfTable): ChairPlaces {
  const chair = own ?? PLACES.chair.value + (arms ? PLACES.armsWiden.value : 0);
  const gap = PLACES.gap.value;
  const needed = (places: number): number => (places === 0 ? 0 : places * (chair + gap) - gap);
  const byFeet = Math.max(0, wholes(between + gap, chair + gap));
  const byTop = Math.max(0, wholes(along, PLACES.leastWidth.value));
  const places = Math.min(byFeet, byTop);
  const found = {
    places,
    limitedBy: byFeet <= byTop ? 'feet' : 'top',
    chair,
    needed: needed(places),
    neededForMore: needed(places + 1),
  } as const;
  if (places === 0) return found;
  const perPlace = measure('places.width', along / places, { least: PLACES.comfortableWidth });
  return { ...found, perPlace };
}

/** How often a width goes into another whole, whatever rounding says. */
const wholes = (room: number, width: number): number => Math.floor((room + POSITION_TOLERANCE) / width);
