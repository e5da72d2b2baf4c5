import { type Box, distance, type Edge, line, type Outline, scale, type Vec } from '../../geometry/index.ts';
import type { Gap } from '../api.ts';
import type { UnroutedRun } from './find-runs.ts';
import { type Side, wasteStrip } from './side.ts';

/** How a board's outline passes a run of unrouted edges. */
export interface Passage {
  readonly gap: Gap;
  /** Edges that take the run's place in the template: routed edges run on, then a line across. */
  readonly short: readonly Edge[];
  /** The same with all room beyond, so that only routed edges feel an offset. */
  readonly long: readonly Edge[];
  /** Unrouted edges that have neither a run-on beyond them nor a routed neighbour whose offset carries on along them. */
  readonly passedOver: readonly Edge[];
  /** On the waste's side of each run-on: from the wood's corner, and from the template's end. Anticlockwise. */
  readonly pastCorner: readonly Outline[];
  readonly pastRunOn: readonly Outline[];
}

export interface PassageOptions {
  /** mm past the wood's corner. */
  readonly runOn: number;
  /** Room that `long` has beyond the template's end, and strips across, mm. */
  readonly beyond: number;
  /** Edges of the whole loop, none of which a run-on may hit. */
  readonly loop: readonly Edge[];
  /** Round the whole loop with room for run-on and more. */
  readonly box: Box;
}

/** The strips beside the run-ons of both sides, from the wood's corners on. */
export function stripsPastCorner(sides: readonly Side[], beyond: number, runOn: number): Outline[] {
  return sides
    .filter((side) => side.runsOn)
    .map((side) =>
      wasteStrip(side, side.corner, scale(side.endAlong, -1), {
        long: runOn + 2 * beyond,
        wide: 2 * beyond,
        tuck: 'backwards',
      }),
    );
}

/** Both routed edges run on to one place. */
export function meeting(a: Side, at: Vec, b: Side): Edge[] {
  return [line(a.corner, at, a.routed.tag), line(at, b.corner, b.routed.tag)];
}

/** What a Gap tells of a run. */
export function describe(run: UnroutedRun, kind: Gap['kind'], runOn: number, at: Vec): Gap {
  return { edges: [...new Set(run.edges.map((edge) => edge.tag.id))], kind, runOn, at };
}

/** Identity of an edge that closes a template past an unrouted edge. */
export function nameOf(edge: Edge): string {
  return `run-on.${edge.tag.id}`;
}

export function hasLength(edge: Edge): boolean {
  return distance(edge.from, edge.to) > 0;
}
