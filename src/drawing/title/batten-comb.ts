import { curvatureComb, type Edge, lengthOf, line, type Region } from '../../geometry/index.ts';
import type { PathMark } from '../api.ts';
import { edgesOf } from '../layout/edges-of.ts';

/** A batten curve comes as many arcs of one name; corners and single arcs have nothing to be judged by a comb. */
const LEAST_ARCS = 3;
/** The longest tooth as a share of the length of the curve, and how many teeth stand along it, about. */
const REACH = 0.12;
const TEETH = 60;
const TAG = { id: 'comb', role: 'left' } as const;

/** Curvature combs on the batten curves of an outline: teeth, and the line through their tips, by which the eye judges whether it is fair. */
export function battenComb(region: Region): readonly PathMark[] {
  const runs = new Map<string, Edge[]>();
  for (const edge of edgesOf([region])) {
    runs.set(edge.tag.id, [...(runs.get(edge.tag.id) ?? []), edge]);
  }
  return [...runs.values()].flatMap((edges): readonly PathMark[] => {
    if (edges.filter(({ kind }) => kind === 'arc').length < LEAST_ARCS) return [];
    const length = edges.reduce((sum, edge) => sum + lengthOf(edge), 0);
    const most = Math.max(...edges.map((edge) => (edge.kind === 'arc' ? 1 / edge.radius : 0)));
    const teeth = curvatureComb(edges, (REACH * length) / most, length / TEETH, 'curve');
    const strokes = teeth.map(({ foot, tip }) => line(foot, tip, TAG));
    const tips = teeth.slice(1).map(({ tip }, at) => line(teeth[at]!.tip, tip, TAG));
    return [
      { kind: 'path', role: 'thin', edges: strokes, closed: false },
      { kind: 'path', role: 'check', edges: tips, closed: false },
    ];
  });
}
