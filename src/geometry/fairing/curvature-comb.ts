import type { Edge, Vec } from '../api.ts';
import { curvatureOf, directionAt, lengthOf, pointAt } from '../edge.ts';
import { leftOf } from '../vec.ts';

/** One tooth of a comb. */
export interface CombTooth {
  /** On the curve. */
  readonly foot: Vec;
  /** Off the curve on the outside of its bend, by curvature times scale. */
  readonly tip: Vec;
  /** 1/mm, positive where the curve turns left. */
  readonly curvature: number;
}

/** Whose curvature a comb shows: that of each arc, which is the same from end to end; or that of the one curve that the arcs stand for. */
export type CombOf = 'arcs' | 'curve';

/**
 * Teeth square to a run of edges, as long as the curvature there times a scale (mm²), by which the eye judges whether it is
 * fair: tips of a fair curve rise and fall in few steps and cross it only where it is meant to turn the other way. Teeth stand
 * at both ends of every edge and between them no farther apart than `step` (mm, positive). Of a curve to which arcs were fitted an
 * arc has the mean curvature over its length: the curve's own lies, nearly, on straight lines from middle to middle.
 */
export function curvatureComb(
  edges: readonly Edge[],
  scale: number,
  step: number,
  of: CombOf = 'arcs',
): CombTooth[] {
  if (!(step > 0)) throw new RangeError(`teeth need a positive distance, not ${step}`);
  const teeth: CombTooth[] = [];
  const sound = edges.filter((edge) => lengthOf(edge) > 0);
  const along = of === 'curve' ? meansAlong(sound) : undefined;
  let before = 0;
  for (const edge of sound) {
    const long = lengthOf(edge);
    const gaps = Math.max(1, Math.ceil(long / step));
    for (let i = 0; i <= gaps; i++) {
      const foot = pointAt(edge, i / gaps);
      const out = leftOf(directionAt(edge, i / gaps));
      const curvature = along?.(before + (long * i) / gaps) ?? curvatureOf(edge);
      const high = -curvature * scale;
      teeth.push({ foot, tip: { x: foot.x + high * out.x, y: foot.y + high * out.y }, curvature });
    }
    before += long;
  }
  return teeth;
}

/** Curvature by the way along the edges (mm): straight from middle to middle, and straight on beyond the first and the last. */
function meansAlong(edges: readonly Edge[]): ((way: number) => number) | undefined {
  if (edges.length < 2) return undefined;
  let before = 0;
  const means = edges.map((edge) => {
    const long = lengthOf(edge);
    before += long;
    return { way: before - long / 2, curvature: curvatureOf(edge) };
  });
  return (way) => {
    const after = means.findIndex((mean) => mean.way > way);
    const at = Math.min(Math.max(1, after === -1 ? means.length - 1 : after), means.length - 1);
    const [a, b] = [means[at - 1]!, means[at]!];
    return a.curvature + ((way - a.way) / (b.way - a.way)) * (b.curvature - a.curvature);
  };
}
