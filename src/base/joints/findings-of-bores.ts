import type { Finding } from '../../core/index.ts';
import { RESIDUE_TOLERANCE } from '../../geometry/index.ts';
import type { Wall } from '../joint-rules/index.ts';
import type { Bore } from './api.ts';
import type { JointPair, Side } from './joint-pair.ts';
import type { Shop } from './shop.ts';

interface WallRules {
  readonly wall: number;
  readonly bottomWall: number;
}

/** What is to be said of the wood that the bores of a joint leave in one part: where it is least, along the drilled line and beside it. */
export function findingsOfBores(
  pair: JointPair,
  side: Side,
  bores: readonly Bore[],
  rules: WallRules,
  shop: Shop,
): readonly Finding[] {
  const walls = bores.map((bore) => ({ bore, walls: shop.walls(side.part, bore) }));
  const least = (pick: (each: (typeof walls)[number]) => Wall | undefined) =>
    walls
      .flatMap((each) => {
        const wall = pick(each);
        return wall === undefined ? [] : [{ bore: each.bore, wall }];
      })
      .toSorted((p, q) => p.wall.wood - q.wall.wood)[0];
  const bottom = least((each) => each.walls.bottom);
  const around = least((each) => each.walls.around);
  const found: Finding[] = [];
  if (bottom !== undefined && bottom.wall.wood < rules.bottomWall - RESIDUE_TOLERANCE)
    found.push(behind(pair, side, bottom.bore, bottom.wall, rules.bottomWall, shop));
  const isSameWall = bottom !== undefined && found.length > 0 && bottom.wall.on === around?.wall.on;
  if (around !== undefined && !isSameWall && around.wall.wood < rules.wall - RESIDUE_TOLERANCE)
    found.push(beside(pair, side, around.bore, around.wall, rules.wall, shop));
  return found;
}

function behind(
  { sketch }: JointPair,
  side: Side,
  bore: Bore,
  wall: Wall,
  limit: number,
  { say }: Shop,
): Finding {
  const out = wall.wood <= 0;
  const depth = bore.depth + wall.wood - limit;
  const what = bore.kind === 'hole' ? 'hole' : 'mortise';
  return {
    ...common(side, bore, wall),
    code: out ? 'joint.breaks-through' : 'joint.wall-thin',
    severity: out ? 'stop' : 'caution',
    message: out
      ? `${sketch.label}: the ${what} in ${side.part.label}, ${say(bore.depth)} deep, comes out at ${nameOf(wall.on)}, ${say(-wall.wood)} before its bottom.`
      : `${sketch.label}: the ${what} in ${side.part.label} leaves ${say(wall.wood)} of wood behind it along the drilled line, to ${nameOf(wall.on)}.`,
    measured: { value: wall.wood, unit: 'mm' },
    limit: { value: limit, unit: 'mm' },
    cure:
      depth > 0
        ? `${say(depth)} deep, it would leave ${say(limit)}.`
        : `No depth leaves ${say(limit)}: the part would have to be ${say(-depth)} thicker there, or the joint stand elsewhere.`,
  };
}

function beside(
  { sketch }: JointPair,
  side: Side,
  bore: Bore,
  wall: Wall,
  limit: number,
  { say }: Shop,
): Finding {
  const out = wall.wood <= 0;
  const what = bore.kind === 'hole' ? 'hole' : 'mortise';
  const short = limit - wall.wood;
  return {
    ...common(side, bore, wall),
    code: out ? 'joint.breaks-through' : 'joint.wall-thin',
    severity: out ? 'stop' : 'caution',
    message: out
      ? `${sketch.label}: the ${what} in ${side.part.label} breaks out of ${nameOf(wall.on)}, by ${say(-wall.wood)}.`
      : `${sketch.label}: the ${what} in ${side.part.label} leaves ${say(wall.wood)} of wood beside it, to ${nameOf(wall.on)}.`,
    measured: { value: wall.wood, unit: 'mm' },
    limit: { value: limit, unit: 'mm' },
    cure: `Moved away from ${nameOf(wall.on)} by ${say(short)}, or made smaller by as much, it would leave ${say(limit)}.`,
  };
}

const common = ({ part }: Side, { own }: Bore, { on }: Wall): Pick<Finding, 'part' | 'edges' | 'at'> => ({
  part: part.drawn.name,
  edges: ['face', 'back', 'pocket'].includes(on) ? [] : [on],
  at: { x: own.origin.x, y: own.origin.y },
});

/** A face as makers read it. */
const nameOf = (on: string): string => NAMES[on] ?? on.replaceAll('_', ' ');

const NAMES: Readonly<Record<string, string>> = {
  face: 'the face side',
  back: 'the back',
  pocket: 'the halving',
};
