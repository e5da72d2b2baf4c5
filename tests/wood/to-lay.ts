import { polygonOutline, type Region, vec } from '../../src/geometry/index.ts';
import type { Board, LayRules, ToLay } from '../../src/wood/index.ts';

const TAG = { id: 'edge', role: 'routed' } as const;

export const polygon = (...corners: readonly (readonly [number, number])[]): Region => ({
  outer: polygonOutline(
    corners.map(([x, y]) => vec(x, y)),
    TAG,
  ),
  holes: [],
});

/** A rectangle with its grain along its height. */
export const strip = (width: number, height: number): Region =>
  polygon([0, 0], [width, 0], [width, height], [0, height]);

export function boardOf(length: number, width: number, more: Partial<Board> = {}): Board {
  return { name: 'A', kind: 'board', length, width, thickness: 30, defects: [], grain: 0, ...more };
}

export function layOf(id: string, region: Region, more: Partial<ToLay> = {}): ToLay {
  return {
    id,
    part: id,
    pieces: [id],
    region,
    blank: more.region ?? region,
    grain: Math.PI / 2,
    face: 'up',
    boards: ['A'],
    ...more,
  };
}

export const CLOSE: LayRules = { grainWithin: 0, between: 0, allowed: [] };
