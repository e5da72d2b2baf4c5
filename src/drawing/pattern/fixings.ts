import { circleOutline } from '../../geometry/index.ts';
import type { Fixing } from '../../routing/index.ts';
import type { Mark } from '../api.ts';
import { pathMark } from '../layout/drawing.ts';
import { cornersOf, type OrientedBox } from '../layout/oriented-box.ts';
import { DRAWN, polygon, step, stroke } from '../layout/strokes.ts';
import type { PatternSource } from './source.ts';

/**
 * Where the template is fixed: a wash for each patch of tape, on which lettering may stand; a ring with a slot for each
 * screw; the same ring doubled where the waste of an opening is held down.
 */
export function fixingMarks(source: PatternSource): {
  readonly patches: readonly Mark[];
  readonly screws: readonly Mark[];
} {
  const patches: Mark[] = [];
  const screws: Mark[] = [];
  for (const { kind, at, width, height, turn } of source.routing.fixings) {
    if (kind === 'tape') {
      const corners = cornersOf(patchBox({ at, width, height, turn }));
      patches.push({ kind: 'path', role: 'fixing', edges: polygon(corners), closed: true, fill: 'tint' });
      continue;
    }
    const radius = 2;
    screws.push(
      pathMark('fixing', circleOutline(at, radius, DRAWN, 1).edges, true),
      pathMark('fixing', [
        stroke(step(at, { x: 0.6, y: 0.8 }, -radius), step(at, { x: 0.6, y: 0.8 }, radius)),
      ]),
    );
    if (kind === 'waste') {
      screws.push(pathMark('fixing', circleOutline(at, radius + 0.9, DRAWN, 1).edges, true));
    }
  }
  return { patches, screws };
}

/** The patches of tape that a pattern shows, as boxes. */
export function tapePatches(source: PatternSource): readonly OrientedBox[] {
  return source.routing.fixings.filter(({ kind }) => kind === 'tape').map(patchBox);
}

function patchBox({ at, width, height, turn }: Omit<Fixing, 'kind'>): OrientedBox {
  return { centre: at, halfWidth: width / 2, halfHeight: height / 2, angle: turn };
}
