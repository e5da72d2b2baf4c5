import type { Arc, Edge, Vec } from '../api.ts';
import { lengthOf, pointAt, sweepOf } from '../edge.ts';

/**
 * Arcs are written in parts of at most a third of a turn: by its ends and radius alone, rounded to d, an arc of half a turn would
 * lose its centre by √(2 r d), which is 0.03 mm for r = 10 and d = 0.00005.
 */
const LONGEST_ARC = (2 / 3) * Math.PI + 1e-9;

/**
 * SVG path data of a run of edges, each beginning where the one before ends: lines and circular arcs (`A`), in fixed decimals,
 * without exponents. On a page y counts downwards: by default it is written negated; with `up` as it is. No edges give
 * an empty string. Closed runs end in `Z`.
 */
export function writeSvgPath(
  edges: readonly Edge[],
  closed: boolean,
  decimals = 4,
  yAxis: 'down' | 'up' = 'down',
): string {
  const first = edges[0];
  if (first === undefined) return '';
  const flip = yAxis === 'down' ? -1 : 1;
  const point = ({ x, y }: Vec): string => `${fixed(x, decimals)} ${fixed(flip * y, decimals)}`;
  const words = [`M${point(first.from)}`];
  for (const [i, edge] of edges.entries()) {
    if (edge.kind === 'line') {
      // Z draws the last side of a loop.
      const isClosing = closed && i === edges.length - 1 && i > 0;
      if (!isClosing && lengthOf(edge) > 0) words.push(`L${point(edge.to)}`);
      continue;
    }
    const radius = fixed(edge.radius, decimals);
    // SVG's sweep flag is set where y, as written, grows clockwise to the eye.
    const sweep = edge.turn * flip > 0 ? 1 : 0;
    for (const end of partEnds(edge)) words.push(`A${radius} ${radius} 0 0 ${sweep} ${point(end)}`);
  }
  if (closed) words.push('Z');
  return words.join('');
}

function partEnds(edge: Arc): Vec[] {
  const parts = Math.ceil(sweepOf(edge) / LONGEST_ARC);
  return Array.from({ length: parts }, (_, i) => pointAt(edge, (i + 1) / parts));
}

/** Fixed decimals without trailing zeros or a negative zero. */
function fixed(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}
