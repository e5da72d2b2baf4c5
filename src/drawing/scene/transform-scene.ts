import { polar, type Similarity, transformEdge, transformPoint, type Vec } from '../../geometry/index.ts';
import type { Mark, Scene, TextMark } from '../api.ts';
import { boundsOfMarks } from './bounds-of-marks.ts';

/**
 * The mark moved, turned and scaled. A mirror moves text to its mirrored place but leaves it readable: the letters stand
 * on the same side of their baseline and run the other way along it.
 */
export function transformMark(mark: Mark, by: Similarity): Mark {
  if (mark.kind === 'path') return { ...mark, edges: mark.edges.map((edge) => transformEdge(edge, by)) };
  const at = transformPoint(mark.at, by);
  const direction = turned(polar(mark.angle), by);
  const along = by.mirrored ? { x: -direction.x, y: -direction.y } : direction;
  return {
    ...mark,
    at,
    angle: Math.atan2(along.y, along.x),
    height: mark.height * by.scale,
    align: by.mirrored ? OTHER_END[mark.align] : mark.align,
  };
}

const OTHER_END: Readonly<Record<TextMark['align'], TextMark['align']>> = {
  left: 'right',
  middle: 'middle',
  right: 'left',
};

/** Every mark moved, and the box that then holds them all. */
export function transformScene(scene: Scene, by: Similarity): Scene {
  const marks = scene.marks.map((mark) => transformMark(mark, by));
  return { marks, box: boundsOfMarks(marks) };
}

function turned(direction: Vec, by: Similarity): Vec {
  return transformPoint(direction, { ...by, scale: 1, shift: { x: 0, y: 0 } });
}
