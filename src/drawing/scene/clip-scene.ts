import { type Box, clipEdges } from '../../geometry/index.ts';
import type { Mark, Scene } from '../api.ts';
import { boundsOfMark } from './bounds-of-marks.ts';

/**
 * What of a scene lies in an upright box: lines cut exactly at its border, each piece a mark of its own; text and filled
 * shapes whole as soon as they touch it. The new scene's box is the given one.
 */
export function clipScene(scene: Scene, box: Box): Scene {
  return { marks: scene.marks.flatMap((mark) => clipMark(mark, box)), box };
}

function clipMark(mark: Mark, box: Box): readonly Mark[] {
  const bounds = boundsOfMark(mark);
  const isApart =
    bounds.maxX < box.minX || bounds.minX > box.maxX || bounds.maxY < box.minY || bounds.minY > box.maxY;
  if (isApart) return [];
  const isWithin =
    bounds.minX >= box.minX && bounds.maxX <= box.maxX && bounds.minY >= box.minY && bounds.maxY <= box.maxY;
  if (isWithin || mark.kind === 'text' || mark.fill !== undefined) return [mark];
  return clipEdges(mark.edges, box).map((edges) => ({ ...mark, edges, closed: false }));
}
