import { ok, type Result } from '../../core/index.ts';
import type { Edge, EdgeTag } from '../api.ts';
import { FAIRING_TOLERANCE } from '../tolerance.ts';
import { IDENTITY } from './affine.ts';
import { edgesOfSegments } from './edges-of-segments.ts';
import { parsePathData } from './parse-path-data.ts';
import { mapSegment } from './path-segments.ts';

/** One run of edges of a path, in the order drawn. */
export interface SvgRun {
  readonly edges: readonly Edge[];
  /** Ended by `Z`: its last edge ends exactly where its first begins. */
  readonly closed: boolean;
}

export interface ReadSvgPathOptions {
  /** How far arcs may lie from curves that are none, mm; 0.005 by default. */
  readonly tolerance?: number;
  /** `down` (the default): y is counted downwards in the data, as on a page, and is negated. `up`: taken as it is. */
  readonly yAxis?: 'down' | 'up';
}

/**
 * The runs of lines and arcs that SVG path data draw, one user unit to the millimetre. Circular arcs stay exact; cubics, quadratics
 * and ellipses become tangent-continuous arcs. Data that cannot be read come back as a problem with its column.
 */
export function readSvgPath(d: string, tag: EdgeTag, options: ReadSvgPathOptions = {}): Result<SvgRun[]> {
  const { tolerance = FAIRING_TOLERANCE, yAxis = 'down' } = options;
  const parsed = parsePathData(d);
  if (!parsed.ok) return parsed;
  const by = yAxis === 'down' ? { ...IDENTITY, d: -1 } : IDENTITY;
  const runs = parsed.value.map(({ segments, closed }) => ({
    edges: edgesOfSegments(
      segments.map((segment) => mapSegment(segment, by)),
      tag,
      tolerance,
    ),
    closed,
  }));
  return ok(runs.filter(({ edges }) => edges.length > 0));
}
