import type { Arc, Edge, Outline, Region, Vec } from './api.ts';
import { reverseEdge } from './edge.ts';

/**
 * A similarity of the plane: p ↦ scale · turn(p, mirrored first about the y axis if asked) + shift.
 * Angles in radians; shift in mm; scale positive.
 */
export interface Similarity {
  readonly turn: number;
  readonly shift: Vec;
  readonly scale: number;
  /** x ↦ −x before the turn. */
  readonly mirrored: boolean;
}

export const STAY: Similarity = { turn: 0, shift: { x: 0, y: 0 }, scale: 1, mirrored: false };

export function moveBy(x: number, y: number): Similarity {
  return { ...STAY, shift: { x, y } };
}

export function turnBy(angle: number): Similarity {
  return { ...STAY, turn: angle };
}

export function transformPoint(p: Vec, by: Similarity): Vec {
  const x = by.mirrored ? -p.x : p.x;
  const c = Math.cos(by.turn) * by.scale;
  const s = Math.sin(by.turn) * by.scale;
  return { x: c * x - s * p.y + by.shift.x, y: s * x + c * p.y + by.shift.y };
}

/** The edge moved; a mirror keeps the order of its ends and flips the turn of an arc. */
export function transformEdge(edge: Edge, by: Similarity): Edge {
  const from = transformPoint(edge.from, by);
  const to = edge.to === edge.from ? from : transformPoint(edge.to, by);
  if (edge.kind === 'line') return { ...edge, from, to };
  const turn: Arc['turn'] = by.mirrored ? (edge.turn === 1 ? -1 : 1) : edge.turn;
  return { ...edge, from, to, centre: transformPoint(edge.centre, by), radius: edge.radius * by.scale, turn };
}

/** The loop moved, its direction kept: a mirrored loop is also travelled the other way. */
export function transformOutline(outline: Outline, by: Similarity): Outline {
  const edges = outline.edges.map((edge) => transformEdge(edge, by));
  return { edges: by.mirrored ? edges.reverse().map(reverseEdge) : edges };
}

export function transformRegion(region: Region, by: Similarity): Region {
  return {
    outer: transformOutline(region.outer, by),
    holes: region.holes.map((hole) => transformOutline(hole, by)),
  };
}
