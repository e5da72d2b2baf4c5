import { add, angleOf, scale } from '../../geometry/index.ts';
import type { BlowOut } from '../../routing/index.ts';
import { type Drawing, letter, pathMark, textMark } from '../layout/drawing.ts';
import { polygon, readable, stroke } from '../layout/strokes.ts';
import type { PatternSource } from './source.ts';

/** A backing block as drawn, mm. */
const BLOCK = { long: 18, broad: 7 } as const;

/** A block in the waste behind a corner that would break out. */
export function drawBackingBlock(
  drawing: Drawing,
  source: PatternSource,
  { at, along, away }: BlowOut,
): void {
  const clear = source.routing.tooling.sawAllowance + 1.2;
  const corner = add(at, scale(away, clear));
  const [a, b] = [corner, add(corner, scale(along, BLOCK.long))];
  const [c, d] = [add(b, scale(away, BLOCK.broad)), add(a, scale(away, BLOCK.broad))];
  drawing.draw([
    pathMark('fixing', polygon([a, b, c, d]), true),
    pathMark('fixing', [stroke(a, c), stroke(b, d)]),
  ]);
  const angle = readable(angleOf(along));
  const middle = add(add(a, scale(along, BLOCK.long / 2)), scale(away, BLOCK.broad + 2.6));
  letter(
    drawing,
    ['backing block here', 'block'].flatMap((text) =>
      [0, 12, -12, 24].map((shift) =>
        textMark(text, add(middle, scale(along, shift)), {
          height: 2.5,
          angle,
          align: 'middle',
          role: 'fixing',
        }),
      ),
    ),
  );
}
