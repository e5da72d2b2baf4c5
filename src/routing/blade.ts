import { type Edge, pointAt, type Region } from '../geometry/index.ts';
import { leastRadiusOfBlade } from '../materials/index.ts';
import type { Blade, Routing } from './api.ts';

/**
 * The tightest hollow of a saw line, and the widest blade of the list that follows it. Bulges are sawn past and trimmed in
 * steps, and a sharp inside corner is sawn into from both sides, so only hollow arcs count.
 */
export function bladeFor(
  blank: readonly Region[],
  blades: readonly Blade[],
): Pick<Routing, 'blade' | 'tightestCurve'> {
  const hollow = blank
    .flatMap(({ outer }) => outer.edges)
    .filter((edge): edge is Extract<Edge, { kind: 'arc' }> => edge.kind === 'arc' && edge.turn === -1)
    .reduce<Extract<Edge, { kind: 'arc' }> | undefined>(
      (least, edge) => (least === undefined || edge.radius < least.radius ? edge : least),
      undefined,
    );
  const fits = [...blades]
    .sort((a, b) => b.width - a.width)
    .map((blade) => ({ blade, leastRadius: leastRadiusOfBlade(blade.width) }))
    .find(
      ({ leastRadius }) =>
        leastRadius !== undefined && (hollow === undefined || leastRadius <= hollow.radius),
    );
  return {
    ...(fits?.leastRadius === undefined
      ? {}
      : { blade: { blade: fits.blade, leastRadius: fits.leastRadius } }),
    ...(hollow === undefined ? {} : { tightestCurve: { radius: hollow.radius, at: pointAt(hollow, 0.5) } }),
  };
}
