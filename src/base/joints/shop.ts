import {
  type DowelSize,
  type LooseTenonSize,
  USUAL_DOWELS,
  USUAL_LOOSE_TENONS,
  WOOD_SCREWS,
  type WoodScrew,
} from '../../materials/index.ts';
import { formatLength, type LengthStyle } from '../../measure/index.ts';
import { type DowelRules, dowelRules, type TenonRules, tenonRules } from '../joint-rules/index.ts';
import type { Pocket } from './api.ts';
import { type AskWalls, rememberedWalls } from './walls-of-bore.ts';

/** What the shop has; usual sizes and rules of the trade stand in for what is not said. */
export interface JointOptions {
  readonly looseTenons?: readonly LooseTenonSize[];
  readonly dowels?: readonly DowelSize[];
  /** Own rules in place of the usual ones, by the names in shared/tables/joinery.json. */
  readonly tenonRules?: Partial<TenonRules>;
  readonly dowelRules?: Partial<DowelRules>;
  /** Number of the wood screw: 8 unless said otherwise. */
  readonly screw?: number;
  /** Diameter of the cutter that clears pockets, mm: 12 unless said otherwise. */
  readonly cutter?: number;
  /** How lengths are written in findings: in millimetres unless said otherwise. */
  readonly lengths?: LengthStyle;
}

/** The options with everything filled in. */
export interface Shop {
  readonly looseTenons: readonly LooseTenonSize[];
  readonly dowels: readonly DowelSize[];
  readonly tenonRules: TenonRules;
  readonly dowelRules: DowelRules;
  readonly screw: WoodScrew;
  readonly cutter: number;
  readonly say: (mm: number) => string;
  readonly walls: AskWalls;
  /** What halved joints take out of a part. */
  readonly pocketsOf: (part: string) => readonly Pocket[];
}

const USUAL_SCREW = 8;
const USUAL_CUTTER = 12;
const MILLIMETRES: LengthStyle = { unit: 'mm', decimals: 1 };

/** Throws a RangeError for a screw that the table does not know. */
export function shopOf(options: JointOptions, pocketsOf: Shop['pocketsOf'] = () => []): Shop {
  const number = options.screw ?? USUAL_SCREW;
  const screw = WOOD_SCREWS.find((each) => each.number === number);
  if (screw === undefined) throw new RangeError(`no wood screw No. ${number}`);
  return {
    looseTenons: options.looseTenons ?? USUAL_LOOSE_TENONS,
    dowels: options.dowels ?? USUAL_DOWELS,
    tenonRules: tenonRules(options.tenonRules),
    dowelRules: dowelRules(options.dowelRules),
    screw,
    cutter: options.cutter ?? USUAL_CUTTER,
    walls: rememberedWalls(pocketsOf),
    pocketsOf,
    say: (mm) => formatLength(mm, options.lengths ?? MILLIMETRES),
  };
}

/** The same shop with loose tenons and dowels shorter than this alone, mm. */
export function withShorter(shop: Shop, than: number): Shop {
  const isShorter = ({ length }: { readonly length: number }): boolean => length < than - 1e-6;
  return {
    ...shop,
    looseTenons: shop.looseTenons.filter(isShorter),
    dowels: shop.dowels.filter(isShorter),
  };
}
