import { areaOfOutline, offsetRegions, type Region } from '../../geometry/index.ts';
import { woodCalled } from '../../materials/index.ts';
import type { ToLay } from '../../wood/index.ts';
import type { Computed, ComputedPart } from '../computed.ts';
import type { DesignBoard } from './resolve-boards.ts';

/** mm of sheet round a template, for the saw. */
const ROUND_TEMPLATE = 3;

/**
 * Everything that a design's boards have to give: for each part that carries leaves one place on each board of its bookmatch, from which all
 * leaves of that board take theirs; for every other part as many places as there are pieces; and on sheets one template of each part.
 */
export function toLayOf(computed: Computed, boards: readonly DesignBoard[]): readonly ToLay[] {
  const hasSheets = boards.some(({ board }) => board.kind === 'sheet');
  const made = computed.base?.made.map(({ name }) => name);
  // Cauls, which glue-up needs besides, come out of scrap.
  const wanted = computed.parts.filter(({ part }) => made === undefined || made.includes(part.name));
  return wanted.flatMap((each) => [
    ...partToLay(computed, each, boards),
    ...(hasSheets ? templateToLay(each, boards) : []),
  ]);
}

function partToLay(
  computed: Computed,
  { part, routing }: ComputedPart,
  boards: readonly DesignBoard[],
): readonly ToLay[] {
  const { name, region, grain, thickness } = part;
  const blank = largest(routing.blank) ?? region;
  const ownWood = woodCalled(computed.base?.woodOf[name] ?? '');
  const isOwnWood = ({ wood }: DesignBoard): boolean =>
    wood === undefined || ownWood === undefined || woodCalled(wood) === ownWood;
  const sawnUp = new Set((computed.design.wood?.bookmatch ?? []).flatMap((match) => match.boards ?? []));
  // A board that is resawn gives leaves and nothing else.
  const fitting = boards.filter(
    (each) =>
      each.board.kind === 'board' &&
      each.board.thickness >= thickness &&
      !sawnUp.has(each.board.name) &&
      isOwnWood(each),
  );
  const common = { part: name, region, blank, grain };
  const leaves = leavesOf(computed, name);
  if (leaves.length > 0) {
    return leaves.map(({ board, pieces }, at) => ({
      ...common,
      id: `${name} ${at + 1}`,
      pieces,
      face: 'up',
      boards: boards.some((each) => each.board.name === board)
        ? [board]
        : fitting.map((each) => each.board.name),
    }));
  }
  return piecesOf(computed, part.name, part.quantity.left + part.quantity.right).map((piece, at) => ({
    ...common,
    id: `${name} ${at + 1}`,
    pieces: [piece],
    face: 'either',
    boards: fitting.map((each) => each.board.name),
  }));
}

/** Pieces by board, the uppermost leaf first. */
function leavesOf({ wood }: Computed, part: string): readonly { board: string; pieces: readonly string[] }[] {
  const byBoard = new Map<string, { readonly leaf: number; readonly piece: string }[]>();
  for (const { map } of wood?.matches ?? []) {
    for (const { board = '', leaf, piece, face } of map.places) {
      const own = map.pieces.find(({ id }) => id === piece);
      if (own?.part !== part) continue;
      const named = face === 'face' ? own.name : `${own.name} back`;
      byBoard.set(board, [...(byBoard.get(board) ?? []), { leaf, piece: named }]);
    }
  }
  return [...byBoard].map(([board, leaves]) => ({
    board,
    pieces: leaves.toSorted((a, b) => a.leaf - b.leaf).map(({ piece }) => piece),
  }));
}

/** As they are marked on the wood; numbered where they have no mark. */
function piecesOf({ base }: Computed, part: string, quantity: number): readonly string[] {
  const members = base?.made.find(({ name }) => name === part)?.members;
  if (members !== undefined) return members.map(({ mark, part: placed }) => (mark === '' ? placed : mark));
  return Array.from({ length: quantity }, (_, at) => (quantity === 1 ? part : `${part} ${at + 1}`));
}

function templateToLay({ part, routing }: ComputedPart, boards: readonly DesignBoard[]): readonly ToLay[] {
  const region = largest(routing.template);
  if (region === undefined) return [];
  const blank = largest(offsetRegions([{ outer: region.outer, holes: [] }], ROUND_TEMPLATE));
  const sheets = boards.filter(({ board }) => board.kind === 'sheet').map(({ board }) => board.name);
  const id = `${part.name} template`;
  return [{ id, part: part.name, pieces: [id], region, blank: blank!, face: 'either', boards: sheets }];
}

function largest(regions: readonly Region[]): Region | undefined {
  const area = (region: Region): number => areaOfOutline(region.outer);
  return regions.reduce<Region | undefined>(
    (best, region) => (best === undefined || area(region) > area(best) ? region : best),
    undefined,
  );
}
