import { type EdgeTag, polygonOutline, type Region, vec } from '../../geometry/index.ts';
import type { Board } from './api.ts';

const TAG: EdgeTag = { id: 'board', role: 'left' };

/** The board's upper face. */
export function boardRegion({ length, width }: Pick<Board, 'length' | 'width'>): Region {
  const corners = [vec(0, 0), vec(length, 0), vec(length, width), vec(0, width)];
  return { outer: polygonOutline(corners, TAG), holes: [] };
}
