import type { Cut } from '../api.ts';
import {
  type Blank,
  type CutError,
  cutError,
  heldCut,
  mirrorBlank,
  mirroredCut,
  mirrorPlane,
  type NextCut,
  nextCut,
  type SawnCut,
  type SawRange,
  type SawWay,
  sawnCut,
  waysToSaw,
} from '../end-cut/index.ts';
import type { MadePart } from '../made/api.ts';
import { blankOfPart, cutPlane } from './blank-of-part.ts';
import { extentAlong } from './extent-along.ts';

/** One cut of a part in every way that a maker sets it. */
export interface PartCut {
  /** Name of the plane. */
  readonly name: string;
  readonly cut: SawnCut;
  readonly blank: Blank;
  /** Edge against the fence; absent where the part is held in its blank. */
  readonly edge?: string;
  /** How it is made after the part's first cut; absent for that one. */
  readonly next?: NextCut;
  /** How the same cut of the other hand is made after this one; absent where there is no other hand. */
  readonly mirrored?: NextCut;
  /** Ways to make it on the maker's saw, best first. */
  readonly ways: readonly SawWay[];
  /** What half a degree does; of cuts across the part. */
  readonly error?: CutError;
  /** Length of the part along the fence, mm: the arm of that error. */
  readonly length: number;
}

/** The cuts that planes make in a part, those across its length in the order of the form. Cuts that miss the part are left out. */
export function cutsOfPart(made: MadePart, saw: SawRange): readonly PartCut[] {
  const isHanded = made.sketch.quantity.right > 0;
  let first: PartCut | undefined;
  return made.cuts
    .filter(({ meets }) => meets)
    .map((cut) => {
      const set = oneCut(made, cut, saw, first, isHanded);
      if (first === undefined && set.cut.kind === 'end') first = set;
      return set;
    });
}

function oneCut(
  made: MadePart,
  cut: Cut,
  saw: SawRange,
  first: PartCut | undefined,
  isHanded: boolean,
): PartCut {
  const { blank, edge } = blankOfPart(made, cut);
  const plane = cutPlane(cut);
  const sawn = sawnCut(plane, blank);
  const { along } = extentAlong(made.silhouette, blank.fenceAngle!);
  const length = along.most - along.least;
  const facts = { name: cut.name, cut: sawn, blank, length, ...(edge === undefined ? {} : { edge }) };
  if (sawn.kind !== 'end') return { ...facts, ways: [] };
  const ways = waysToSaw(plane, blank, saw);
  const [best] = ways;
  // What a saw makes with a wedge or at an auxiliary fence is no beginning for turning the work from there.
  const before = first?.ways[0];
  const after = before?.kind === 'direct' ? { next: nextCut(before, plane, blank, saw) } : {};
  const mirrored =
    best?.kind === 'direct'
      ? mirroredCut(best, plane, blank, saw)
      : heldCut(sawn.onBack, mirrorPlane(plane), mirrorBlank(blank), saw);
  return {
    ...facts,
    ways,
    error: cutError(plane, blank, { length }),
    ...after,
    ...(isHanded ? { mirrored } : {}),
  };
}
