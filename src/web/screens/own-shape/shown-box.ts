import type { ScreenScene } from '../../../drawing/index.ts';
import { boundsOfEdges, type Edge, project } from '../../../geometry/index.ts';
import { type Photograph, sheet } from './photograph.ts';

/** Paper to draw on where there is no photograph, mm. */
export const BOARD = { width: 600, height: 900 };
/** mm left round what lies beyond the paper. */
const AIR = 20;

export function pictureBox({ width, height }: Photograph): ScreenScene['box'] {
  return { x: 0, y: 0, width, height };
}

/** What of the plane is looked at: three sheets across round the one that was marked, or bare paper. */
export function planeBox(photo: Photograph | undefined): ScreenScene['box'] {
  if (photo?.made === undefined) return { x: 0, y: -BOARD.height, ...BOARD };
  const { toPlane } = photo.made;
  const { width, height } = sheet.value;
  const corners = [
    { x: 0, y: 0 },
    { x: photo.width, y: 0 },
    { x: photo.width, y: photo.height },
    { x: 0, y: photo.height },
  ].map((corner) => project(corner, toPlane));
  const most = 4 * Math.max(width, height);
  const xs = corners.flatMap((corner) => (corner === undefined ? [] : [corner.x]));
  const ys = corners.flatMap((corner) => (corner === undefined ? [] : [corner.y]));
  const left = Math.max(-most, Math.min(0, ...xs));
  const right = Math.min(most, Math.max(width, ...xs));
  const low = Math.max(-most, Math.min(0, ...ys));
  const high = Math.min(most, Math.max(height, ...ys));
  return { x: left, y: -high, width: right - left, height: high - low };
}

/** The paper with all that is drawn, wherever an outline came to lie: y down. */
export function boxRound(paper: ScreenScene['box'], edges: readonly Edge[]): ScreenScene['box'] {
  if (edges.length === 0) return paper;
  const { minX, minY, maxX, maxY } = boundsOfEdges(edges);
  const left = Math.min(paper.x, minX - AIR);
  const top = Math.min(paper.y, -maxY - AIR);
  const right = Math.max(paper.x + paper.width, maxX + AIR);
  const low = Math.max(paper.y + paper.height, -minY + AIR);
  return left === paper.x &&
    top === paper.y &&
    right === paper.x + paper.width &&
    low === paper.y + paper.height
    ? paper
    : { x: left, y: top, width: right - left, height: low - top };
}
