import { type BuiltBase, type TopFixings, topFixings } from '../base/index.ts';
import { type Finding, fail, ok, type Result } from '../core/index.ts';
import type { Similarity } from '../geometry/index.ts';
import { type Wood, woodCalled } from '../materials/index.ts';
import { parseAngle } from '../measure/index.ts';
import { lengthWords } from '../routing/index.ts';
import {
  checkLeaves,
  compose,
  type InsertPlan,
  insertFindings,
  insertPlan,
  inverse,
  type LeafMap,
  layAt,
  leafMap,
  leavesByHand,
  type MatchDrift,
  type MovedOnBoard,
  type MovingPart,
  matchDrift,
  movementOfParts,
  piecesOfBase,
  type ResawPlan,
  type ResawStack,
  resawFindings,
  resawStack,
  usualInsert,
} from '../wood/index.ts';
import type { Design, TypedWood } from './design-schema.ts';
import { lengthStyleOf } from './length-style.ts';
import { type OpenPlan, type ResolvedWood, resolveWood } from './resolve-wood.ts';
import { strangeNames, strangersIn } from './strange-wood-names.ts';
import { measureReader } from './typed-measures.ts';

/** One bookmatch with the leaves it is made of. */
export interface ComputedMatch {
  readonly map: LeafMap;
  readonly stack: ResawStack;
  readonly drift: readonly MatchDrift[];
}

/** What follows for the wood of a base. */
export interface ComputedWood {
  readonly parts: readonly MovingPart[];
  readonly top: TopFixings;
  readonly topWood: Wood;
  /** Absent where no insert of the thread is known. */
  readonly inserts?: InsertPlan;
  readonly stacks: readonly ResawStack[];
  readonly matches: readonly ComputedMatch[];
  readonly findings: readonly Finding[];
}

type TypedMatch = NonNullable<TypedWood['bookmatch']>[number];

/** The wood of a base, or what of its section in the design cannot be used; paths begin with `wood.`. */
export function woodOfDesign(design: Design, built: BuiltBase): Result<ComputedWood> {
  const resolved = resolveWood(design);
  if (!resolved.ok) return resolved;
  const { wood = {} } = design;
  const problems = [...strangersIn(wood, built), ...strangeNames(wood)];
  if (problems.length > 0) return fail(...problems);
  const say = lengthWords(lengthStyleOf(design));
  const planned = (wood.resaw ?? []).map(({ name }) => planFor(name, wood, resolved.value, built));
  const open = planned.flatMap((each) => (each.ok ? [] : each.problems));
  if (open.length > 0) return fail(...open);
  const stacks = planned.flatMap((each) => (each.ok ? [resawStack(each.value)] : []));
  const placed = placementsOf(design, built);
  if (!placed.ok) return placed;
  const matches = (wood.bookmatch ?? []).map((match) =>
    matchOf(match, stacks.find(({ plan }) => plan.name === match.resaw)!, built, placed.value),
  );
  const base = woodCalled(design.base?.wood ?? 'white oak')!;
  const topWood = resolved.value.topWood ?? base;
  const top = topFixings(built.base, topWood, resolved.value.year, resolved.value.held);
  const insert = resolved.value.insert ?? usualInsert(resolved.value.held.thread, topWood);
  const inserts = insert === undefined ? undefined : insertPlan(top, built.base.top, insert);
  return ok({
    parts: movementOfParts(boardsOf(design, built), resolved.value.year),
    top,
    topWood,
    ...(inserts === undefined ? {} : { inserts }),
    stacks,
    matches,
    findings: [
      ...stacks.flatMap(({ plan }) => resawFindings(plan, say)),
      ...matches.flatMap(({ map, stack }) => checkLeaves(map, stack, say)),
      // Without a word on the wood the inserts are a proposal that nobody asked for.
      ...(inserts === undefined || wood.top === undefined ? [] : insertFindings(inserts, say)),
    ],
  });
}

function boardsOf({ wood = {} }: Design, { list, made, base, woodOf }: BuiltBase) {
  return list.map(({ part, label, finished }) => {
    const own = made.find(({ name }) => name === part)!;
    const drawn = base.parts.find(({ id }) => id === own.members[0]!.part)!.drawn.name;
    const { width, thickness } = finished;
    const sawn = wood.sawn?.[drawn] ?? 'flat';
    return { part, label, wood: woodCalled(woodOf[part]!)!, sawn, width, thickness };
  });
}

/** A plan with what it leaves out: finished thickness and glued faces from the match that names it, rough thickness from that match's boards. */
function planFor(
  name: string,
  { bookmatch = [], resaw = [] }: TypedWood,
  { plans, thickness }: ResolvedWood,
  { made }: BuiltBase,
): Result<ResawPlan> {
  const plan: OpenPlan = plans.find((each) => each.name === name)!;
  const path = `wood.resaw.${resaw.findIndex((each) => each.name === name)}`;
  const matches = bookmatch.filter((match) => match.resaw === name);
  const parts = matches.flatMap((match) => match.parts);
  const thick = parts.map(({ part }) => made.find((each) => each.name === part)!.sketch.thickness);
  const boards = matches.flatMap((match) => match.boards ?? []).map((board) => thickness.get(board)!);
  const rough = plan.rough ?? (boards.length === 0 ? undefined : Math.min(...boards));
  const finished = plan.finished ?? (thick.length === 0 ? undefined : Math.max(...thick));
  const glued = plan.glued ?? (parts.some(({ faces }) => faces.length === 2) ? 2 : 1);
  if (rough === undefined)
    return missing(`${path}.rough`, 'the thickness of the rough board, as no bookmatch names boards for it');
  if (finished === undefined)
    return missing(`${path}.finished`, 'the finished thickness, as no bookmatch names parts for it');
  return ok({ ...plan, rough, finished, glued });
}

function missing(path: string, expected: string): Result<ResawPlan> {
  const message = `${path}: found nothing, expected ${expected}.`;
  return fail({ code: 'design.missing', message, path, found: 'nothing', expected });
}

function matchOf(
  typed: TypedMatch,
  stack: ResawStack,
  built: BuiltBase,
  { placed, moved }: PatternsOnBoards,
): ComputedMatch {
  const { name, arrangement, boards = [], parts, centre = 'near', leaves } = typed;
  const pieces = piecesOfBase(
    built,
    parts.map(({ part }) => part),
  );
  const match = { name, arrangement, boards, parts, centre };
  const planned = leafMap(match, pieces, stack.plan.leaves, placed, moved);
  const map = leaves === undefined ? planned : leavesByHand(planned, leaves);
  return { map, stack, drift: matchDrift(map, stack) };
}

interface PatternsOnBoards {
  /** From the plane of each part's pattern to the board's, where the design places it: the first placement counts. */
  readonly placed: ReadonlyMap<string, Similarity>;
  /** From there to where it lies on another board. */
  readonly moved: MovedOnBoard;
}

function placementsOf(design: Design, { made }: BuiltBase): Result<PatternsOnBoards> {
  const reader = measureReader(design.units.length);
  const placed = new Map<string, Similarity>();
  const onBoards = new Map<string, Similarity>();
  const keyOf = (part: string, board: string): string => JSON.stringify([part, board]);
  const range = { least: 0, most: 20_000 };
  for (const [at, typed] of (design.wood?.placements ?? []).entries()) {
    const { part, board, pieces = [], mirrored = false } = typed;
    const own = made.find(({ name }) => name === part);
    if (own === undefined || onBoards.has(keyOf(part, board))) continue;
    const angle = parseAngle(String(typed.turned ?? 0));
    const { region, grain } = own.sketch;
    const x = reader.length(typed.x, `wood.placements.${at}.x`, range);
    const y = reader.length(typed.y, `wood.placements.${at}.y`, range);
    const toLay = {
      id: part,
      part,
      pieces,
      region,
      blank: region,
      grain,
      face: 'either',
      boards: [],
    } as const;
    const lying = { id: part, board, at: { x, y }, turned: angle.ok ? angle.value : 0, mirrored };
    const { toBoard } = layAt(toLay, lying);
    onBoards.set(keyOf(part, board), toBoard);
    if (!placed.has(part)) placed.set(part, toBoard);
  }
  if (reader.problems.length > 0) return fail(...reader.problems);
  const moved: MovedOnBoard = (part, board) => {
    const [first, there] = [placed.get(part), onBoards.get(keyOf(part, board))];
    return first === undefined || there === undefined || first === there
      ? undefined
      : compose(there, inverse(first));
  };
  return ok({ placed, moved });
}
