import {
  areaOfRegions,
  boundsOfRegions,
  centroidOfRegions,
  intersectRegions,
  LAY_AREA,
  LAY_REACH,
  LAY_TURN,
  offsetRegions,
  type Region,
  subtractRegions,
} from '../../geometry/index.ts';
import type { Board, Laid, LayFault, LayRules, Lying, ToLay } from './api.ts';
import { boardRegion } from './board-region.ts';
import { layAt } from './lay-at.ts';
import { offTheGrain } from './off-the-grain.ts';

/**
 * Everything that is wrong with where things lie, found by the outline kernel from the true outlines: blanks off the board or over each
 * other (with the room between neighbours), parts over defects that are not allowed, grain too far off the board's, the wrong face up.
 * A region found counts from LAY_AREA on, unless it is nowhere as wide as LAY_REACH: what touches does not overlap.
 */
export function checkLaid(
  boards: readonly Board[],
  toLay: readonly ToLay[],
  lying: readonly Lying[],
  rules: LayRules,
): readonly LayFault[] {
  const faults: LayFault[] = [];
  const onBoard = new Map<string, Laid[]>();
  const seen = new Set<string>();
  for (const each of lying) {
    const { id, board: name } = each;
    const board = boards.find((one) => one.name === name);
    const what = toLay.find((one) => one.id === id);
    if (seen.has(id)) faults.push({ kind: 'laid-twice', id, board: name });
    seen.add(id);
    if (board === undefined) faults.push({ kind: 'unknown-board', id, board: name });
    if (what === undefined) faults.push({ kind: 'unknown-part', id, board: name });
    if (board === undefined || what === undefined) continue;
    const laid = layAt(what, each);
    faults.push(...faultsAlone(board, laid, rules));
    const others = onBoard.get(name) ?? [];
    for (const other of others) faults.push(...overlapOf(laid, other, rules));
    onBoard.set(name, [...others, laid]);
  }
  return faults;
}

/** What is wrong with one by itself. */
function faultsAlone(board: Board, laid: Laid, rules: LayRules): LayFault[] {
  const { toLay, lying } = laid;
  const who = { id: toLay.id, board: board.name };
  const faults: LayFault[] = [];
  if (!toLay.boards.includes(board.name)) faults.push({ kind: 'wrong-board', ...who });
  if (toLay.face !== 'either' && (toLay.face === 'down') !== lying.mirrored)
    faults.push({ kind: 'wrong-face', ...who });
  const off = offTheGrain(board, toLay, lying);
  if (off > rules.grainWithin + LAY_TURN)
    faults.push({ kind: 'off-the-grain', ...who, measured: off, limit: rules.grainWithin });
  const beyond = worth(subtractRegions([laid.blank], [boardRegion(board)]));
  if (beyond.length > 0) faults.push({ kind: 'off-the-board', ...who, ...placed(beyond) });
  for (const { kind, region } of board.defects) {
    if (rules.allowed.includes(kind)) continue;
    const over = worth(intersectRegions([laid.region], [region]));
    if (over.length > 0) faults.push({ kind: 'over-a-defect', ...who, defect: kind, ...placed(over) });
  }
  return faults;
}

function overlapOf(laid: Laid, other: Laid, { between }: LayRules): LayFault[] {
  const a = boundsOfRegions([laid.blank]);
  const b = boundsOfRegions([other.blank]);
  const gap = Math.max(a.minX - b.maxX, b.minX - a.maxX, a.minY - b.maxY, b.minY - a.maxY);
  if (gap >= between) return [];
  const room = between > 0 ? offsetRegions([solid(other.blank)], between) : [solid(other.blank)];
  const both = worth(intersectRegions([solid(laid.blank)], room));
  if (both.length === 0) return [];
  const { id } = laid.toLay;
  return [{ kind: 'overlap', id, board: laid.lying.board, other: other.toLay.id, ...placed(both) }];
}

/** Nothing is laid into the opening of another. */
function solid({ outer }: Region): Region {
  return { outer, holes: [] };
}

function worth(regions: readonly Region[]): readonly Region[] {
  return regions.filter(
    (region) => areaOfRegions([region]) > LAY_AREA && offsetRegions([region], -LAY_REACH / 2).length > 0,
  );
}

function placed(regions: readonly Region[]): Pick<LayFault, 'at' | 'measured' | 'limit'> {
  return { at: centroidOfRegions(regions), measured: areaOfRegions(regions), limit: 0 };
}
