import type { PlacedLoop } from './placed-loop.ts';

/** Which loops wind round a place that moves about, region by region. */
export interface Around {
  /** How often each loop winds round it. */
  readonly windings: Int32Array;
  /** Regions whose outer loop winds round it. */
  readonly outers: Set<number>;
  /** Numbers (in the list of loops) of each region's holes that wind round it. */
  readonly holes: readonly Set<number>[];
  /** Regions in whose material it lies. */
  readonly materials: Set<number>;
}

/** A place outside everything. */
export function newAround(loops: readonly PlacedLoop[]): Around {
  const holes: Set<number>[] = [];
  for (const { region } of loops) while (holes.length <= region) holes.push(new Set());
  return { windings: new Int32Array(loops.length), outers: new Set(), holes, materials: new Set() };
}

export function clearAround({ windings, outers, holes, materials }: Around): void {
  windings.fill(0);
  outers.clear();
  for (const each of holes) each.clear();
  materials.clear();
}

/** Loop number k winds round the place so much more often from now on. */
export function changeAround(around: Around, loops: readonly PlacedLoop[], k: number, change: number): void {
  const before = around.windings[k]!;
  const after = before + change;
  around.windings[k] = after;
  if ((before === 0) === (after === 0)) return;
  const { region, loop } = loops[k]!;
  const { outers, materials } = around;
  const holes = around.holes[region]!;
  if (loop === 0) put(outers, region, after !== 0);
  else put(holes, k, after !== 0);
  put(materials, region, outers.has(region) && holes.size === 0);
}

export function isAroundNothing({ outers, holes }: Around): boolean {
  return outers.size === 0 && holes.every(({ size }) => size === 0);
}

function put(set: Set<number>, item: number, isIn: boolean): void {
  if (isIn) set.add(item);
  else set.delete(item);
}
