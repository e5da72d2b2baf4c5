import { fail, ok, type Result } from '../../core/index.ts';
import {
  accountOf,
  checkLaid,
  type LayAccount,
  type LayCost,
  type LayFault,
  type Layout,
  type Lying,
  layAt,
  searchLayout,
  type ToLay,
} from '../../wood/index.ts';
import type { Computed } from '../computed.ts';
import type { Design } from '../design-schema.ts';
import { type DesignBoard, type LaySearch, resolveBoards } from './resolve-boards.ts';
import { toLayOf } from './to-lay.ts';
import { type ReadPlacement, readPlacements, typedPlacement } from './typed-placements.ts';

/** The boards of a design with what lies on them as it is placed now. */
export interface DesignLayout {
  readonly boards: readonly DesignBoard[];
  readonly toLay: readonly ToLay[];
  readonly lying: readonly Lying[];
  /** Of those to lay, by identity: what has no place. */
  readonly unlaid: readonly string[];
  readonly faults: readonly LayFault[];
  readonly account: LayAccount;
  readonly search: LaySearch;
}

export interface LayOptions {
  /** Throw away all places but those laid by hand. */
  readonly anew?: boolean;
  readonly seed?: number;
  readonly steps?: number;
  readonly shouldStop?: () => boolean;
  readonly onStep?: (done: number, of: number, best: LayCost) => void;
}

/** What lies where by the design as it is. Problems: what of its boards and placements cannot be read. */
export function layoutOfDesign(computed: Computed): Result<DesignLayout> {
  const read = readLayout(computed);
  return read.ok
    ? ok(
        layoutWith(
          read.value,
          read.value.placements.map(({ lying }) => lying),
        ),
      )
    : read;
}

/**
 * Lays everything that a design wants from its boards: places that are sound stay, as a pinned grid does, the rest is searched. Gives the
 * design with all places, and how the search ended.
 */
export function layDesign(
  computed: Computed,
  options: LayOptions = {},
): Result<{ readonly design: Design; readonly layout: DesignLayout; readonly found: Layout }> {
  const read = readLayout(computed);
  if (!read.ok) return read;
  const { boards, toLay, search, placements } = read.value;
  const kept = placements.filter(({ typed }) => typed.pinned === true || options.anew !== true);
  const own = boards.map(({ board }) => board);
  const faults = checkLaid(
    own,
    toLay,
    kept.map(({ lying }) => lying),
    search.rules,
  );
  const bad = new Set(faults.map(({ id }) => id));
  const staying = kept.filter(({ lying, typed }) => typed.pinned === true || !bad.has(lying.id));
  const { seed = search.seed, steps, shouldStop, onStep } = options;
  const found = searchLayout(
    { boards: own, toLay, pinned: staying.map(({ lying }) => lying), rules: search.rules },
    {
      seed,
      ...(steps === undefined ? {} : { steps }),
      ...(shouldStop === undefined ? {} : { shouldStop }),
      ...(onStep === undefined ? {} : { onStep }),
    },
  );
  const isNew = ({ id }: Lying): boolean => !staying.some(({ lying }) => lying.id === id);
  const all = [
    ...staying,
    ...found.lying.filter(isNew).map((lying) => ({ lying, typed: typedPlacement(lying, toLay) })),
  ];
  // In the order of what is laid, parts before templates: the file stays the same from one search to the next.
  const rank = ({ lying }: ReadPlacement): number => {
    const at = toLay.findIndex(({ id }) => id === lying.id);
    return toLay[at]?.grain === undefined ? at + toLay.length : at;
  };
  const typed = all.toSorted((a, b) => rank(a) - rank(b)).map((each) => each.typed);
  const design: Design = { ...computed.design, wood: { ...computed.design.wood, placements: typed } };
  return ok({ design, layout: layoutWith(read.value, found.lying), found });
}

interface ReadLayout {
  readonly boards: readonly DesignBoard[];
  readonly toLay: readonly ToLay[];
  readonly search: LaySearch;
  readonly placements: readonly ReadPlacement[];
}

function readLayout(computed: Computed): Result<ReadLayout> {
  const resolved = resolveBoards(computed.design);
  if (!resolved.ok) return resolved;
  const { boards, search } = resolved.value;
  const toLay = toLayOf(computed, boards);
  const { placements, problems } = readPlacements(computed.design, toLay);
  return problems.length > 0 ? fail(...problems) : ok({ boards, toLay, search, placements });
}

function layoutWith({ boards, toLay, search }: ReadLayout, lying: readonly Lying[]): DesignLayout {
  const own = boards.map(({ board }) => board);
  const known = lying.flatMap((each) => {
    const what = toLay.find(({ id }) => id === each.id);
    return what === undefined ? [] : [layAt(what, each)];
  });
  return {
    boards,
    toLay,
    lying,
    unlaid: toLay.filter(({ id }) => !lying.some((each) => each.id === id)).map(({ id }) => id),
    faults: checkLaid(own, toLay, lying, search.rules),
    account: accountOf(own, known, search.rules),
    search,
  };
}
