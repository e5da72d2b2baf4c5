import { z } from 'zod';
import table from '../../shared/tables/woods.json';

/** A wood as its published tables know it: clear, straight-grained, at 12 % moisture content, means. */
export interface Wood {
  readonly name: string;
  readonly botanical: string;
  readonly kind: 'hardwood' | 'softwood';
  /** kg/m³ at 12 % moisture content. */
  readonly density: number;
  /** MPa, along the grain, from bending tests at a span of 14 depths: deflection by shear is in it. */
  readonly modulusOfElasticity: number;
  /** MPa: stress at which it breaks in bending. */
  readonly modulusOfRupture: number;
  /** Shares of the green size that are lost until ovendry. */
  readonly shrinkage: { readonly radial: number; readonly tangential: number };
  /** Share of its size by which it changes for 1 % of moisture content, between 6 and 14 %. */
  readonly change: { readonly radial: number; readonly tangential: number };
  /** Where the figures come from and how surely: see the head of shared/tables/woods.json. */
  readonly status: { readonly strength: string; readonly shrinkage: string; readonly change: string };
}

const share = z.number().positive();
const woodTable = z.object({
  sources: z.object({ strength: z.string(), shrinkage: z.string(), change: z.string() }),
  rows: z.array(
    z.object({
      name: z.string(),
      botanical: z.string(),
      kind: z.enum(['hardwood', 'softwood']),
      specificGravity: share,
      volumeAt: z.enum(['12 %', 'green']),
      rupture: share,
      elasticity: share,
      strengthStatus: z.string(),
      radial: share,
      tangential: share,
      volumetric: share,
      shrinkageStatus: z.string(),
      changeRadial: share,
      changeTangential: share,
      changeStatus: z.string(),
    }),
  ),
});

/** One pound-force on a square inch in MPa: 4.4482216152605 N on 645.16 mm², both exact. */
const MPA_PER_PSI = 4.4482216152605 / 645.16;

/** Moisture content at which the figures are given, and that below which wood shrinks, both shares. */
const AT = 0.12;
const SATURATION = 0.3;

const { sources, rows } = woodTable.parse(table);

/** The tables that the figures of every wood come from. */
export const WOOD_SOURCES = sources;

/** Every wood of the table, in its order. */
export const WOODS: readonly Wood[] = rows.map((row) => ({
  name: row.name,
  botanical: row.botanical,
  kind: row.kind,
  density: densityOf(row),
  modulusOfElasticity: row.elasticity * 1e6 * MPA_PER_PSI,
  modulusOfRupture: row.rupture * MPA_PER_PSI,
  shrinkage: { radial: row.radial / 100, tangential: row.tangential / 100 },
  change: { radial: row.changeRadial, tangential: row.changeTangential },
  status: { strength: row.strengthStatus, shrinkage: row.shrinkageStatus, change: row.changeStatus },
}));

/** The wood of this name, whatever the case of its letters. */
export function woodCalled(name: string): Wood | undefined {
  const wanted = name.trim().toLowerCase();
  return WOODS.find((wood) => wood.name.toLowerCase() === wanted);
}

/**
 * kg/m³ at 12 %: 1000 G (1 + M) with the specific gravity on the volume at 12 % (Wood Handbook, ch. 4, from memory). One on green
 * volume is brought there by the volumetric shrinkage, taken as even from 30 % down to dry.
 */
function densityOf(row: (typeof rows)[number]): number {
  const shrunk = row.volumeAt === 'green' ? (row.volumetric / 100) * (1 - AT / SATURATION) : 0;
  return (1000 * row.specificGravity * (1 + AT)) / (1 - shrunk);
}
