import { directionAt, scale } from '../../geometry/index.ts';
import { bridge } from './bridge.ts';
import { closeAcross } from './close-across.ts';
import type { UnroutedRun } from './find-runs.ts';
import { goAround } from './go-around.ts';
import { protrusion } from './lies-within.ts';
import type { Passage, PassageOptions } from './passage.ts';
import { makeSide } from './side.ts';

/**
 * How the template passes a run of unrouted edges (see Gap for the kinds). Straight continuations of the routed
 * neighbours keep their tags; an edge across is `run-on.<edge>`.
 */
export function passGap(run: UnroutedRun, options: PassageOptions): Passage {
  const { runOn } = options;
  const first = run.edges[0]!;
  const last = run.edges.at(-1)!;
  const a = makeSide({
    corner: first.from,
    along: directionAt(run.before, 1),
    routed: run.before,
    end: first,
    endAlong: directionAt(first, 0),
    hand: 1,
  });
  const b = makeSide({
    corner: last.to,
    along: scale(directionAt(run.after, 0), -1),
    routed: run.after,
    end: last,
    endAlong: scale(directionAt(last, 1), -1),
    hand: -1,
  });
  return (
    bridge(run, a, b) ??
    closeAcross(run, a, b, runOn, options) ??
    closeAcross(run, a, b, runOn + protrusion(run), options) ??
    goAround(run, a, b, options)
  );
}
