import { type Outline, pointAt, SOLID_CHORD, sweepOf } from '../../geometry/index.ts';

/**
 * The corners of a loop, its arcs as chords whose ends lie on them and which stray from them by at most SOLID_CHORD. An arc
 * travelled either way gives the same chords.
 */
export function cornersOfOutline({ edges }: Outline): [number, number][] {
  return edges.flatMap((edge) => {
    const count = edge.kind === 'line' ? 1 : chordsFor(edge.radius, sweepOf(edge));
    return Array.from({ length: count }, (_, at): [number, number] => {
      const { x, y } = pointAt(edge, at / count);
      return [x, y];
    });
  });
}

/** A chord over an angle a stands off its arc by r (1 − cos(a / 2)). Three at least, so that a whole circle keeps an area. */
function chordsFor(radius: number, sweep: number): number {
  const most = 4 * Math.asin(Math.min(1, Math.sqrt(SOLID_CHORD / (2 * radius))));
  const whole = sweep > Math.PI ? 3 : 1;
  return Math.max(whole, Math.ceil(sweep / most));
}
