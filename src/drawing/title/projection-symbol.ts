import { arc, type Vec } from '../../geometry/index.ts';
import type { Mark } from '../api.ts';
import { pathMark } from '../layout/drawing.ts';
import { DRAWN, polygon, stroke } from '../layout/strokes.ts';

/**
 * The sign of first-angle projection after ISO 5456-2 (proportions from memory): a cut cone from the side, its small end to the left, and at
 * its right what one sees from the left. With `h` the height of the lettering beside it the cone is 2 h long, h and 2 h wide.
 */
export function projectionSymbol(middle: Vec, h: number): readonly Mark[] {
  const [cone, rings] = [
    { x: middle.x - 1.75 * h, y: middle.y },
    { x: middle.x + 1.75 * h, y: middle.y },
  ];
  const at = (centre: Vec, x: number, y: number): Vec => ({ x: centre.x + x * h, y: centre.y + y * h });
  const ring = (radius: number): Mark => {
    const start = at(rings, radius, 0);
    return pathMark('visible', [arc(start, start, rings, 1, DRAWN)], true);
  };
  return [
    pathMark(
      'visible',
      polygon([at(cone, -1, -0.5), at(cone, 1, -1), at(cone, 1, 1), at(cone, -1, 0.5)]),
      true,
    ),
    ring(0.5),
    ring(1),
    pathMark('axis', [stroke(at(cone, -1.5, 0), at(rings, 1.5, 0))]),
    pathMark('axis', [stroke(at(rings, 0, -1.5), at(rings, 0, 1.5))]),
  ];
}
