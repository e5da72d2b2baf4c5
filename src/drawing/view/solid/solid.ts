import { once } from '../../../core/index.ts';
import { directionToFrame, type Frame, pointToFrame, type Vec3 } from '../../../geometry/index.ts';
import type { ViewedPart } from '../api.ts';
import { type SolidEdge, sharpEdgesOfPrism } from './edges-of-prism.ts';
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
  readonly prism: FlatPrism;
  /** Its edges but those within curved walls, pockets left out; found when first asked for. */
  readonly sharp: () => readonly SolidEdge[];
  /** The part's frame, in the camera's. */
  readonly frame: Frame;
  readonly pockets: readonly SeatedPrism[];
}

/** Parts as a camera sees them. Copies that are drawn and cut alike share their prism and its edges. */
export function solidsOf(parts: readonly ViewedPart[], camera: Frame, tolerance: number): readonly Solid[] {
  const shapes: { readonly part: ViewedPart; readonly shape: Pick<Solid, 'prism' | 'sharp'> }[] = [];
  return parts.map((part) => {
    const alike = shapes.find((each) => each.part.drawn === part.drawn && each.part.cuts === part.cuts);
    const shape = alike?.shape ?? shapeOf(part, tolerance);
    if (alike === undefined) shapes.push({ part, shape });
    return {
      ...shape,
      id: part.id,
      frame: frameWithin(camera, part.frame),
      pockets: (part.pockets ?? []).map((pocket) => ({
        name: pocket.name,
        frame: pocket.frame,
        prism: flattenPrism(pocket.region, pocket.depth, [], tolerance),
      })),
    };
  });
}

function shapeOf(
  { drawn: { region, thickness }, cuts }: ViewedPart,
  tolerance: number,
): Pick<Solid, 'prism' | 'sharp'> {
  const prism = flattenPrism(region, thickness, cuts, tolerance);
  const roles = Object.fromEntries(cuts.map(({ name, role }) => [name, role]));
  return { prism, sharp: once(() => sharpEdgesOfPrism(prism, roles)) };
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
