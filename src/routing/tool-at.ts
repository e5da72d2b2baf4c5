import {
  distance,
  distanceAlong,
  locate,
  nearestOnEdges,
  type Outline,
  offsetRegions,
  perimeterOfOutline,
  placeAlong,
  type Region,
  type Vec,
} from '../geometry/index.ts';
import type { Routing } from './api.ts';
import { guideDiameter } from './guide.ts';

/** Loops that the middle of the cutter runs along, mm in the part's plane. */
export interface ToolPath {
  readonly guideRadius: number;
  readonly cutterRadius: number;
  readonly loops: readonly Outline[];
}

/** The tool standing at one place of its path. */
export interface ToolPlace {
  readonly loop: number;
  /** mm along the loop from its start. */
  readonly along: number;
  /** Middle of guide and cutter. */
  readonly middle: Vec;
  /** Where the guide runs on the template, and where the cutter meets the wood. */
  readonly onTemplate: Vec;
  readonly onWood: Vec;
  /** The drawn edge nearest to what is pointed at. */
  readonly edge: string;
  readonly onEdge: Vec;
  /**
   * mm from that place of the drawn edge to the cutter: positive where wood stays, about 0 where the cutter touches it,
   * negative where the cutter goes beyond it.
   */
  readonly gap: number;
}

/**
 * Where the middle of the cutter can run, with guide radius g: round the template grown by g, and in each of its openings that the guide
 * enters at the plunge, round the opening shrunk by g. A pocket whose mouth the guide does not enter has no path.
 */
export function toolPathOf(routing: Routing): ToolPath {
  const guide = guideDiameter(routing.tooling.guide) / 2;
  const boards = routing.template.map(({ outer }) => ({ outer, holes: [] }));
  const outside = offsetRegions(boards, guide).map(({ outer }) => outer);
  const inside = routing.openings
    .filter(({ plunge }) => plunge === 'free')
    .flatMap(({ template, cut }) =>
      offsetRegions(template, -guide)
        .filter((piece) => isReached(piece, cut))
        .flatMap(loopsOf),
    );
  return {
    guideRadius: guide,
    cutterRadius: routing.tooling.cutter.diameter / 2,
    loops: [...outside, ...inside],
  };
}

/** The tool where it comes nearest to a point; undefined where there is no template to run along. */
export function toolAt(
  path: ToolPath,
  part: Region,
  { template }: Pick<Routing, 'template'>,
  near: Vec,
): ToolPlace | undefined {
  const reached = path.loops
    .map((loop, at) => ({ loop, at, away: nearestOnEdges(loop.edges, near).distance }))
    .reduce<{ loop: Outline; at: number; away: number } | undefined>(
      (best, each) => (best === undefined || each.away < best.away ? each : best),
      undefined,
    );
  if (reached === undefined) return undefined;
  const place = { loop: reached.at, along: distanceAlong(reached.loop, near) };
  return standAt(path, part, template, place, near);
}

/** The tool moved on along its loop by so many mm, with the path's own direction. */
export function toolMoved(
  path: ToolPath,
  part: Region,
  { template }: Pick<Routing, 'template'>,
  { loop, along }: Pick<ToolPlace, 'loop' | 'along'>,
  by: number,
): ToolPlace {
  const round = perimeterOfOutline(path.loops[loop]!);
  const next = along + by - round * Math.floor((along + by) / round);
  const { point } = placeAlong(path.loops[loop]!, next);
  return standAt(path, part, template, { loop, along: next }, point);
}

function standAt(
  { loops, cutterRadius }: ToolPath,
  part: Region,
  template: readonly Region[],
  { loop, along }: Pick<ToolPlace, 'loop' | 'along'>,
  near: Vec,
): ToolPlace {
  const { point: middle } = placeAlong(loops[loop]!, along);
  const drawn = loopsOf(part).flatMap(({ edges }) => edges);
  const wood = nearestOnEdges(drawn, middle);
  const pointed = nearestOnEdges(drawn, near);
  return {
    loop,
    along,
    middle,
    onTemplate: nearestOnEdges(
      template.flatMap(loopsOf).flatMap(({ edges }) => edges),
      middle,
    ).point,
    onWood: wood.point,
    edge: drawn[pointed.index]!.tag.id,
    onEdge: pointed.point,
    gap: distance(pointed.point, middle) - cutterRadius,
  };
}

/** Only the piece that the cutter was let into has been cut. */
function isReached({ outer }: Region, cut: readonly Region[]): boolean {
  return locate(cut, outer.edges[0]!.from) === 'inside';
}

function loopsOf({ outer, holes }: Region): readonly Outline[] {
  return [outer, ...holes];
}
