import type { Edge, EdgeTag, Vec } from '../api.ts';
import { line } from '../edge.ts';
import { fitArcsToBezier } from '../fairing/fit-arcs-to-bezier.ts';
import { cross, distance, length } from '../vec.ts';
import { type EllipseArc, isCircle, type PathSegment } from './path-segments.ts';

/** An ellipse is drawn by cubics of at most this sweep: they stray from it by 4e-7 of its size. */
const ELLIPSE_PIECE = Math.PI / 6;

/** Lines and arcs for segments: lines and circular arcs as they are, other curves within a tolerance (mm). */
export function edgesOfSegments(segments: readonly PathSegment[], tag: EdgeTag, tolerance: number): Edge[] {
  return segments.flatMap((segment): readonly Edge[] => {
    switch (segment.kind) {
      case 'line':
        return distance(segment.from, segment.to) === 0 ? [] : [line(segment.from, segment.to, tag)];
      case 'cubic':
        return fitArcsToBezier(segment.curve, tag, tolerance).edges;
      case 'ellipse':
        return isCircle(segment) ? [circularArc(segment, tag)] : ellipseArcs(segment, tag, tolerance);
      default:
        return segment satisfies never;
    }
  });
}

function circularArc(segment: EllipseArc, tag: EdgeTag): Edge {
  const { from, to, u, v } = segment;
  const turn = cross(u, v) * segment.sweep > 0 ? 1 : -1;
  // A transform's rounding is shared out, so that both ends lie on the circle.
  const centre = from.x === to.x && from.y === to.y ? segment.centre : onBisector(segment.centre, from, to);
  return { kind: 'arc', from, to, centre, radius: distance(from, centre), turn, tag };
}

/** The place nearest to p that is as far from a as from b. */
function onBisector(p: Vec, a: Vec, b: Vec): Vec {
  const chord = { x: b.x - a.x, y: b.y - a.y };
  const squared = chord.x * chord.x + chord.y * chord.y;
  const off = ((p.x - (a.x + b.x) / 2) * chord.x + (p.y - (a.y + b.y) / 2) * chord.y) / squared;
  return { x: p.x - off * chord.x, y: p.y - off * chord.y };
}

function ellipseArcs(segment: EllipseArc, tag: EdgeTag, tolerance: number): Edge[] {
  const { from, to, centre, u, v, start, sweep } = segment;
  if (length(u) === 0 || length(v) === 0) return [line(from, to, tag)];
  const pieces = Math.ceil(Math.abs(sweep) / ELLIPSE_PIECE);
  const step = sweep / pieces;
  const reach = (4 / 3) * Math.tan(step / 4);
  const at = (angle: number): Vec => ({
    x: centre.x + u.x * Math.cos(angle) + v.x * Math.sin(angle),
    y: centre.y + u.y * Math.cos(angle) + v.y * Math.sin(angle),
  });
  const ahead = (p: Vec, angle: number, by: number): Vec => ({
    x: p.x + by * (v.x * Math.cos(angle) - u.x * Math.sin(angle)),
    y: p.y + by * (v.y * Math.cos(angle) - u.y * Math.sin(angle)),
  });
  const edges: Edge[] = [];
  let p0 = from;
  for (let i = 0; i < pieces; i++) {
    const a = start + i * step;
    const b = a + step;
    const p3 = i === pieces - 1 ? to : at(b);
    edges.push(
      ...fitArcsToBezier({ p0, p1: ahead(p0, a, reach), p2: ahead(p3, b, -reach), p3 }, tag, tolerance).edges,
    );
    p0 = p3;
  }
  return edges;
}
