import type { Edge, Vec } from '../api.ts';
import { newPieces, type Pieces, releasePieces } from '../arrangement/pieces.ts';
import { CLEAR, longestEdge } from '../arrangement/place-clear-of-corners.ts';
import { PLACE, type Walls, walkThrough } from '../arrangement/walk.ts';
import { addLoops, setPlace, wallsOfPieces } from '../arrangement/walls-of-pieces.ts';
import { pointAt } from '../edge.ts';
import { searchBoxTree } from '../index-tree/box-tree.ts';
import { nearestOnEdge } from '../measure/nearest.ts';
import { markLists, reals, releaseLists } from '../memory/lists.ts';
import { POSITION_TOLERANCE } from '../tolerance.ts';
import { type Around, changeAround, clearAround, isAroundNothing, newAround } from './around.ts';
import type { Fault } from './fault.ts';
import type { PlacedLoop } from './placed-loop.ts';

/** A place that is asked, on a loop with number `own`. */
interface Asked {
  readonly own: number;
  readonly edge: Edge;
}

/** A loop on the wrong side of another: outside its outer loop, in the hole with number `other`, or in the material of region `other`. */
interface Wrong {
  readonly own: number;
  readonly how: 'outside' | 'in-hole' | 'in-material';
  readonly other: number;
  /** The first place asked that says so. */
  readonly place: number;
}

/**
 * Loops on the wrong side of each other: holes outside their outer loop or in another hole, regions in each other's material.
 * Loops that do not cross lie wholly on one side, so one place tells; where any cross, every edge's middle is asked. A place on the line
 * of a loop tells nothing of it. Found on one way from place to place, counting the loops that are entered and left.
 */
export function findNestingFaults(loops: readonly PlacedLoop[], crossed: boolean): Fault[] {
  if (loops.length < 2) return [];
  const mark = markLists();
  const pieces = newPieces();
  try {
    const loopOf = addLoops(pieces, loops);
    const walls = wallsOfPieces(pieces);
    const asked = loops.flatMap(({ edges }, own): Asked[] =>
      crossed ? edges.map((edge) => ({ own, edge })) : [{ own, edge: longestEdge(edges) }],
    );
    const places = reals(PLACE * asked.length);
    asked.forEach(({ edge }, k) => {
      setPlace(places, k, edge, CLEAR);
    });
    const around = newAround(loops);
    const found = new Map<string, Wrong>();
    walkThrough(walls, places, {
      begin: () => {
        clearAround(around);
        found.clear();
      },
      pass: (piece, change) => changeAround(around, loops, loopOf[piece]!, change),
      arrive: (place) => {
        for (const wrong of wrongsAt(loops, around, asked[place]!.own, place)) {
          const key = `${wrong.own} ${wrong.how} ${wrong.other}`;
          const known = found.get(key);
          if (known !== undefined && known.place < place) continue;
          if (
            isClear(walls, pieces, pointOf(asked[place]!), (piece) => concerns(loops, wrong, loopOf[piece]!))
          )
            found.set(key, wrong);
        }
      },
      isOut: () => isAroundNothing(around),
    });
    return [...found.values()]
      .sort(inOrder(loops))
      .map((wrong) => faultOf(loops, wrong, pointOf(asked[wrong.place]!)));
  } finally {
    releasePieces(pieces);
    releaseLists(mark);
  }
}

function pointOf({ edge }: Asked): Vec {
  return pointAt(edge, CLEAR);
}

function* wrongsAt(
  loops: readonly PlacedLoop[],
  { outers, holes, materials }: Around,
  own: number,
  place: number,
): Generator<Wrong> {
  const { region, loop } = loops[own]!;
  if (loop === 0) {
    for (const other of materials) if (other !== region) yield { own, how: 'in-material', other, place };
    return;
  }
  if (!outers.has(region)) yield { own, how: 'outside', other: region, place };
  for (const other of holes[region]!) if (other !== own) yield { own, how: 'in-hole', other, place };
}

/** Must a place be off loop number k to tell? */
function concerns(loops: readonly PlacedLoop[], { how, other }: Wrong, k: number): boolean {
  if (how === 'in-hole') return k === other;
  const { region, loop } = loops[k]!;
  return region === other && (how === 'in-material' || loop === 0);
}

/** On the line itself neither side can be told. */
function isClear(
  { tree }: Walls,
  { source, own }: Pieces,
  p: Vec,
  concerned: (piece: number) => boolean,
): boolean {
  const near = POSITION_TOLERANCE;
  return !searchBoxTree(
    tree,
    p.x - near,
    p.y - near,
    p.x + near,
    p.y + near,
    (piece) => concerned(piece) && nearestOnEdge(own[source[piece]!]!, p).distance <= near,
  );
}

/** Holes of the first region first, each with the outer loop first; then regions in each other. */
function inOrder(loops: readonly PlacedLoop[]): (a: Wrong, b: Wrong) => number {
  const rank = ({ how }: Wrong): number => (how === 'outside' ? 0 : 1);
  const isRegion = ({ how }: Wrong): number => (how === 'in-material' ? 1 : 0);
  return (a, b) =>
    isRegion(a) - isRegion(b) ||
    loops[a.own]!.region - loops[b.own]!.region ||
    a.own - b.own ||
    rank(a) - rank(b) ||
    a.other - b.other;
}

function faultOf(loops: readonly PlacedLoop[], { own, how, other }: Wrong, at: Vec): Fault {
  const { region, loop } = loops[own]!;
  const what = {
    outside: 'lies outside the outer loop',
    'in-hole': `lies inside hole ${loops[other]?.loop}`,
    'in-material': `lies in the material of region ${other}`,
  }[how];
  return {
    kind: how === 'outside' ? 'hole-outside' : 'overlap',
    at,
    region,
    loop,
    edge: 0,
    message: `loop ${loop} of region ${region} ${what}`,
  };
}
