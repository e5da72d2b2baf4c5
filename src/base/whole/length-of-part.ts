import type { Sketch } from '../../sketch/index.ts';
import { standBase } from '../stand/stand-base.ts';
import { extentAlong } from './extent-along.ts';

/**
 * How long a part of the form comes out, mm: along its grain from the long point of one end to that of the other, tenons left out. Of copies
 * that differ the first counts. Undefined where the form does not draw or place it.
 */
export function lengthOfPart(sketch: Sketch, part: string): number | undefined {
  const drawn = sketch.parts.find(({ name }) => name === part);
  if (drawn === undefined) return undefined;
  if (sketch.base === undefined) return spanOf([drawn.region], drawn.grain);
  const stood = standBase(sketch);
  if (!stood.ok) return undefined;
  const placed = stood.value.parts.find(({ drawn: { name } }) => name === part);
  return placed === undefined ? undefined : spanOf(placed.silhouette, drawn.grain);
}

function spanOf(regions: Parameters<typeof extentAlong>[0], grain: number): number {
  const { along } = extentAlong(regions, grain);
  return along.most - along.least;
}
