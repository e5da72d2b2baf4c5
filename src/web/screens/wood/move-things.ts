import { type Design, typedPlacement } from '../../../design/index.ts';
import { LAY_REACH, LAY_TURN } from '../../../geometry/index.ts';
import type { Lying, ToLay } from '../../../wood/index.ts';
import type { FiguresInHand, LaidThing } from '../../engine/answers/figures.ts';
import { moving } from '../../figure/moving.ts';
import { change, design } from '../../state/current.ts';
import { words } from '../../words/en.ts';

const said = words.wood.place;

/** The placements with the last move in them: any other ones have made the move void. */
let after = '';
const placementsOf = (now: Design | undefined): string => JSON.stringify(now?.wood?.placements ?? []);

/** Where a thing lies by all moves so far, those that the engine has not heard of as well. */
export function thingNow(thing: LaidThing): Lying {
  const now = moving.peek();
  return now?.thing.lying.id === thing.lying.id ? now.to : thing.lying;
}

/** Sets what was moved where it is now, laid by hand from now on. */
export function letThingGo(): void {
  const now = moving.peek();
  if (now === undefined) return;
  setPlace(now.thing.at, now.thing.toLay, now.to);
  moving.value = { ...now, ended: true };
  after = placementsOf(design.peek());
}

/** Sets where something lies; `at` is its number among the placements. */
export function setPlace(at: number, toLay: ToLay, to: Lying): void {
  const placement = { ...typedPlacement(to, [toLay]), pinned: true };
  change(said.moved(toLay.part), [{ path: ['wood', 'placements', at], to: placement }]);
}

/** Leaves a thing where it lies, but to the search. */
export function unpin({ at, toLay, lying }: LaidThing): void {
  change(said.left(toLay.part), [{ path: ['wood', 'placements', at], to: typedPlacement(lying, [toLay]) }]);
}

/** Once the engine has heard of a move, what it says is shown. */
export function hearMoved({ things }: FiguresInHand, now: Design): void {
  const held = moving.peek();
  if (held === undefined || !held.ended) return;
  const own = things.find(({ lying }) => lying.id === held.thing.lying.id);
  if (placementsOf(now) !== after || own === undefined || isThere(own.lying, held.to))
    moving.value = undefined;
  else moving.value = { ...held, thing: own };
}

/** Places are kept rounded. */
function isThere(a: Lying, b: Lying): boolean {
  const away = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
  const turned = Math.abs(a.turned - b.turned);
  return away < LAY_REACH && turned < LAY_TURN && a.board === b.board && a.mirrored === b.mirrored;
}
