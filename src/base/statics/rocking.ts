import {
  cross3,
  dot3,
  heightOver,
  length3,
  type Plane3,
  POSITION_TOLERANCE,
  planeThrough,
  scale3,
  subtract3,
  unit3,
  type Vec3,
} from '../../geometry/index.ts';

/** The end of a foot, in any position of the base (mm), z roughly upwards. */
export interface FootEnd {
  readonly name: string;
  readonly at: Vec3;
}

/** A way in which the base stands still on a flat floor. */
export interface Stance {
  /** Feet that carry it: three, or more where they lie in one plane. */
  readonly carrying: readonly string[];
  /** The others, each with the gap under it, mm, smallest first. */
  readonly gaps: readonly { readonly name: string; readonly gap: number }[];
  /** The largest gap, mm: 0 when it does not rock. */
  readonly rock: number;
}

export interface Rocking {
  /** One, or two when the centre of mass lies over the line on which it rocks. None when it falls over. */
  readonly stances: readonly Stance[];
  /** mm: what the least of the stances leaves under a foot, Infinity when there is none. */
  readonly rock: number;
  /**
   * With four feet: by how much (mm) each is too long, when the other three are taken as right; negative when too short. Trimming
   * one that is too long, or packing under one that is too short, by this cures the rock. Empty for other numbers of feet.
   */
  readonly off: readonly { readonly name: string; readonly long: number }[];
}

/**
 * How a base rocks whose feet do not lie in one plane. It comes to rest on three feet, all others above their plane, with the centre of mass
 * over the triangle between them, seen square to that plane. Feet within POSITION_TOLERANCE of the plane carry too. Throws
 * a RangeError for fewer than three feet.
 */
export function rocking(feet: readonly FootEnd[], centre: Vec3): Rocking {
  if (feet.length < 3) throw new RangeError(`${feet.length} feet make no plane`);
  const stances: Stance[] = [];
  for (const three of triples(feet)) {
    const floor = floorUnder(three);
    if (floor === undefined || !isOver(centre, three, floor)) continue;
    const heights = feet.map(({ name, at }) => ({ name, gap: heightOver(floor, at) }));
    if (heights.some(({ gap }) => gap < -POSITION_TOLERANCE)) continue;
    const carrying = heights.filter(({ gap }) => gap <= POSITION_TOLERANCE).map(({ name }) => name);
    if (stances.some((known) => known.carrying.join() === carrying.join())) continue;
    const gaps = heights.filter(({ gap }) => gap > POSITION_TOLERANCE).sort((a, b) => a.gap - b.gap);
    stances.push({ carrying, gaps, rock: gaps.at(-1)?.gap ?? 0 });
  }
  stances.sort((a, b) => a.rock - b.rock);
  return { stances, rock: stances[0]?.rock ?? Infinity, off: feet.length === 4 ? offOfFour(feet) : [] };
}

type Three = readonly [Vec3, Vec3, Vec3];

function triples(feet: readonly FootEnd[]): Three[] {
  const found: Three[] = [];
  for (const [i, a] of feet.entries()) {
    for (const [j, b] of feet.slice(i + 1).entries()) {
      for (const c of feet.slice(i + j + 2)) found.push([a.at, b.at, c.at]);
    }
  }
  return found;
}

/** The plane of three feet, its normal upwards; nothing when they stand in one line. */
function floorUnder([a, b, c]: Three): Plane3 | undefined {
  const normal = cross3(subtract3(b, a), subtract3(c, a));
  const longest = Math.max(length3(subtract3(b, a)), length3(subtract3(c, a)), length3(subtract3(c, b)));
  if (length3(normal) <= POSITION_TOLERANCE * longest) return undefined;
  return planeThrough(a, normal.z < 0 ? scale3(normal, -1) : normal);
}

/** Does the point lie over the triangle, seen square to its plane? Its sides count as within. */
function isOver(p: Vec3, [a, b, c]: Three, { normal }: Plane3): boolean {
  const turn = Math.sign(dot3(normal, cross3(subtract3(b, a), subtract3(c, a))));
  const sides: readonly (readonly [Vec3, Vec3])[] = [
    [a, b],
    [b, c],
    [c, a],
  ];
  return sides.every(([from, to]) => {
    const inwards = scale3(cross3(normal, unit3(subtract3(to, from))), turn);
    return dot3(inwards, subtract3(p, from)) >= -POSITION_TOLERANCE;
  });
}

function offOfFour(feet: readonly FootEnd[]): Rocking['off'] {
  return feet.flatMap(({ name, at }, i) => {
    const others = feet.filter((_, j) => j !== i).map((foot) => foot.at) as unknown as Three;
    const floor = floorUnder(others);
    return floor === undefined ? [] : [{ name, long: -heightOver(floor, at) || 0 }];
  });
}
