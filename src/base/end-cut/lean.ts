import { norm } from '../../geometry/index.ts';
/** How a leg leans that leans both ways. Angles in rad. */
export interface Lean {
  /** From plumb. */
  readonly lean: number;
  /** Direction of the line of lean in plan, from the rake direction towards the splay direction. */
  readonly line: number;
  /** Length of the leg over its height. */
  readonly lengthPerHeight: number;
}

/**
 * Lean of a leg with this rake (seen from the side) and splay (seen from the front), both from plumb and within a quarter turn.
 * lean = atan √(tan² rake + tan² splay), line = atan2(tan splay, tan rake), length / height = √(1 + tan² rake + tan² splay).
 * Elementary: the run of the leg on a height of one.
 */
export function leanOf(rake: number, splay: number): Lean {
  const [a, b] = [Math.tan(rake), Math.tan(splay)];
  const run = norm(a, b);
  return { lean: Math.atan(run), line: Math.atan2(b, a), lengthPerHeight: norm(1, run) };
}

/** The way back: rake and splay of a leg that leans so. */
export function rakeAndSplayOf({ lean, line }: Pick<Lean, 'lean' | 'line'>): {
  readonly rake: number;
  readonly splay: number;
} {
  return {
    rake: Math.atan(Math.tan(lean) * Math.cos(line)),
    splay: Math.atan(Math.tan(lean) * Math.sin(line)),
  };
}
