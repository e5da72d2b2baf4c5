import { type Arc, type Edge, pointAt, sweepOf, type Vec } from '../../geometry/index.ts';
import type { ContourStep } from '../lettering/lettering.ts';

/** Puts a point of the drawing (y up) on the page of an SVG (y down), as text. */
export type Place = (p: Vec) => string;

/** Arcs longer than this (rad) are written in two, so that no reader can take the wrong one of two arcs. */
const LONGEST_ARC = (17 / 18) * Math.PI;

/** The place function for a drawing whose upper left corner is `corner`, with so many decimals. */
export function placeFrom(corner: Vec, decimals: number): Place {
  return (p) => `${writeNumber(p.x - corner.x, decimals)} ${writeNumber(corner.y - p.y, decimals)}`;
}

/** A number with at most so many decimals, without trailing zeros, never −0. */
export function writeNumber(value: number, decimals: number): string {
  const text = value.toFixed(decimals);
  const short = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return short === '-0' ? '0' : short;
}

/** SVG path data of edges: arcs as arcs; a new subpath wherever an edge does not begin where the one before ended. */
export function pathData(edges: readonly Edge[], closed: boolean, place: Place, decimals: number): string {
  const parts: string[] = [];
  let pen: string | undefined;
  for (const edge of edges) {
    const start = place(edge.from);
    if (start !== pen) parts.push(`M${start}`);
    const pieces = edge.kind === 'arc' ? piecesOf(edge) : [];
    if (edge.kind === 'line') parts.push(`L${place(edge.to)}`);
    for (const end of pieces) {
      const radius = writeNumber((edge as Arc).radius, decimals);
      // Anticlockwise with y up is SVG's negative direction with y down: sweep flag 0.
      parts.push(`A${radius} ${radius} 0 0 ${(edge as Arc).turn === 1 ? 0 : 1} ${place(end)}`);
    }
    pen = place(edge.to);
  }
  if (closed && edges.length > 0) parts.push('Z');
  return parts.join('');
}

/** Ends of the pieces of an arc, each short enough to be written with one command. */
function piecesOf(edge: Arc): readonly Vec[] {
  const count = Math.ceil(sweepOf(edge) / LONGEST_ARC);
  return Array.from({ length: count }, (_, i) => pointAt(edge, (i + 1) / count));
}

/** SVG path data of a letter's contours. */
export function contourData(steps: readonly ContourStep[], place: Place): string {
  return steps
    .map((step) => {
      switch (step.kind) {
        case 'move':
          return `M${place(step.to)}`;
        case 'line':
          return `L${place(step.to)}`;
        case 'quadratic':
          return `Q${place(step.control)} ${place(step.to)}`;
        case 'cubic':
          return `C${place(step.control1)} ${place(step.control2)} ${place(step.to)}`;
        case 'close':
          return 'Z';
        default:
          return step satisfies never;
      }
    })
    .join('');
}
