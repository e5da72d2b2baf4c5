import {
  add,
  areaOfRegions,
  circleOutline,
  directionAt,
  type Edge,
  line,
  moveBy,
  type Outline,
  offsetRegions,
  POSITION_TOLERANCE,
  perimeterOfOutline,
  type Region,
  reverseEdge,
  scale,
  subtract,
  subtractRegions,
  transformEdge,
  uniteRegions,
} from '../geometry/index.ts';
import type { Tooling } from './api.ts';
import { extendOutline } from './outline/extend-outline.ts';
import { isRouted } from './outline/find-runs.ts';
import { offsetRoutedEdges } from './outline/offset-routed-edges.ts';

/** mm of wood that is left on ends for trimming, where the template runs on far enough (common practice). */
const USUAL_END = 25;

/** mm by which the guide should be on the template before the cutter meets the wood. */
const ENGAGED = 5;

/**
 * Wood left beyond sawn and joint ends, mm, where the maker asks for none in particular: 25, or what the run-on leaves
 * once the guide is on the template before the cutter meets the wood; never less than the saw allowance.
 */
export function usualEndAllowance({ runOn, cutter, sawAllowance }: Tooling): number {
  return Math.max(sawAllowance, Math.min(USUAL_END, runOn - cutter.diameter / 2 - ENGAGED));
}

/**
 * The rough-sawn blank: sawn and joint ends that routed edges run on past grown by the end allowance (mm), edges that stay
 * as the board came not at all, all others by the saw allowance (mm). No openings.
 */
export function blankOf(outer: Outline, sawAllowance: number, endAllowance: number): readonly Region[] {
  if (!outer.edges.some(isRouted)) return offsetRegions([{ outer, holes: [] }], endAllowance);
  const extended = extendOutline(outer, endAllowance, sawAllowance);
  const board = offsetRoutedEdges(extended, sawAllowance);
  // In the middle of a run nothing else carries the blank past a sawn or joint edge.
  const margins = extended.passedOver.filter(isEnd).map((edge) => sweptOut(edge, sawAllowance));
  const wood = [...margins, ...roundCorners(outer, sawAllowance)];
  const blank = wood.reduce<readonly Region[]>((whole, more) => uniteRegions(whole, [more]), board);
  const least = leastRound(outer, Math.min(sawAllowance, endAllowance));
  // Mostly it lies inside already; united all the same, it would only cut edges into pieces.
  const isLess =
    areaOfRegions(subtractRegions(least, blank)) > POSITION_TOLERANCE * perimeterOfOutline(outer);
  return isLess ? uniteRegions(blank, least) : blank;
}

/**
 * What stands within `by` mm of the part, but for what lies beyond edges that stay as the board came. The run-ons are cut
 * straight across from tip to tip: over a slanted or hollow end they may leave less than they run on.
 */
function leastRound(outer: Outline, by: number): readonly Region[] {
  if (by === 0) return [];
  const grown = offsetRegions([{ outer, holes: [] }], by);
  const beyond = outer.edges
    .filter(({ tag }) => tag.role === 'left')
    .map((edge) => sweptOut(runOnBothWays(edge, 2 * by), 2 * by));
  return beyond.length === 0 ? grown : subtractRegions(grown, beyond);
}

/** A line made longer by `by` mm at both ends; an arc stays as it is. */
function runOnBothWays(edge: Edge, by: number): Edge {
  if (edge.kind === 'arc') return edge;
  const along = scale(directionAt(edge, 0), by);
  return line(subtract(edge.from, along), add(edge.to, along), edge.tag);
}

const isEnd = ({ tag }: Edge): boolean => tag.role === 'sawn' || tag.role === 'joint';

/** The same allowance round every corner between two ends: what is left on them alone meets in a notch at the corner itself. */
function roundCorners({ edges }: Outline, by: number): Region[] {
  if (by === 0) return [];
  return edges
    .filter((edge, i) => isEnd(edge) && isEnd(edges[(i + 1) % edges.length]!))
    .map(({ to, tag }) => ({ outer: circleOutline(to, by, tag, 1), holes: [] }));
}

/** What an edge passes over when it is moved out of the wood, square to its middle. */
function sweptOut(edge: Edge, by: number): Region {
  const along = directionAt(edge, 0.5);
  const out = scale({ x: along.y, y: -along.x }, by);
  const moved = transformEdge(edge, moveBy(out.x, out.y));
  const { tag } = edge;
  // Out of the wood is to the right of an edge: its moved copy first, then back along the edge itself.
  const edges = [moved, line(moved.to, edge.to, tag), reverseEdge(edge), line(edge.from, moved.from, tag)];
  return { outer: { edges }, holes: [] };
}
