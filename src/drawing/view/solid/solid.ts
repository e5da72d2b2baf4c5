import {
  directionToFrame,
  type EdgeRole,
  type Frame,
  pointToFrame,
  type Vec3,
} from '../../../geometry/index.ts';
import type { ViewedPart } from '../api.ts';
import { type FlatPrism, flattenPrism, frameWithin } from './flat-prism.ts';
import { lineInPrism, type Stretches } from './line-in-prism.ts';

/** A prism, and where its frame lies in the frame of its solid. */
export interface SeatedPrism {
  readonly name: string;
  readonly prism: FlatPrism;
  readonly frame: Frame;
}

/** One part as a view takes it: a flat-sided prism less its pockets, seen in the camera's frame (z towards the viewer). */
export interface Solid {
  readonly id: string;
  readonly roles: Readonly<Record<string, EdgeRole>>;
  readonly prism: FlatPrism;
  /** The part's frame, in the camera's. */
  readonly frame: Frame;
  readonly pockets: readonly SeatedPrism[];
}

export function solidOf(part: ViewedPart, camera: Frame, tolerance: number): Solid {
  const { region, thickness } = part.drawn;
  return {
    id: part.id,
    roles: Object.fromEntries(part.cuts.map(({ name, role }) => [name, role])),
    prism: flattenPrism(region, thickness, part.cuts, tolerance),
    frame: frameWithin(camera, part.frame),
    pockets: (part.pockets ?? []).map((pocket) => ({
      name: pocket.name,
      frame: pocket.frame,
      prism: flattenPrism(pocket.region, pocket.depth, [], tolerance),
    })),
  };
}

/** Where a line given in the solid's own frame runs in its wood. */
export function lineInSolid(solid: Solid, o: Vec3, d: Vec3, least = -Infinity): Stretches {
  const whole = lineInPrism(solid.prism, o, d, least);
  if (whole.length === 0) return whole;
  return solid.pockets.reduce((left, pocket) => without(left, lineInPocket(pocket, o, d)), whole);
}

/** Where a line given in the solid's own frame runs in a pocket of it. */
export function lineInPocket({ frame, prism }: SeatedPrism, o: Vec3, d: Vec3): Stretches {
  return lineInPrism(prism, pointToFrame(frame, o), directionToFrame(frame, d));
}

function without(from: Stretches, taken: Stretches): Stretches {
  return taken.reduce<Stretches>(
    (left, [start, end]) =>
      left.flatMap(([a, b]) =>
        [[a, Math.min(b, start)] as const, [Math.max(a, end), b] as const].filter(([p, q]) => p < q),
      ),
    from,
  );
}
