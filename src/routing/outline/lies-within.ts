import { cross, norm, POSITION_TOLERANCE, pointAt, subtract, type Vec } from '../../geometry/index.ts';
import type { UnroutedRun } from './find-runs.ts';

/** How far the run stands out beyond the straight line across it, mm; no more than that line is long. */
export function protrusion(run: UnroutedRun): number {
  const from = run.edges[0]!.from;
  const across = subtract(run.edges.at(-1)!.to, from);
  const wide = norm(across.x, across.y);
  if (wide === 0) return 0;
  const heights = samples(run).map((p) => -cross(across, subtract(p, from)) / wide);
  return Math.min(wide, Math.max(0, ...heights));
}

/** Does the run lie on the wood's side (left) of every leg of a path? */
export function liesWithin(run: UnroutedRun, path: readonly Vec[]): boolean {
  const points = samples(run);
  return path.slice(1).every((to, at) => {
    const from = path[at]!;
    const leg = subtract(to, from);
    const long = norm(leg.x, leg.y);
    return points.every((p) => cross(leg, subtract(p, from)) >= -POSITION_TOLERANCE * long);
  });
}

function samples(run: UnroutedRun): Vec[] {
  return run.edges.flatMap((edge) =>
    edge.kind === 'line' ? [edge.from, edge.to] : [0, 0.25, 0.5, 0.75, 1].map((t) => pointAt(edge, t)),
  );
}
