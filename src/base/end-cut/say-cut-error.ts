import type { CutError } from './cut-error.ts';
import { type CutStyle, sayAngle, sayHair, sayLength, TEXT, USUAL_STYLE } from './words.ts';

/** What a slip does, in two sentences. `length` (mm) is that of the part, as given to cutError. */
export function sayCutError(
  error: CutError,
  length: number,
  style: CutStyle = USUAL_STYLE,
): readonly string[] {
  return (['mitre', 'tilt'] as const).map((of) =>
    TEXT.slip(
      sayAngle(error.slip, style),
      of,
      sayHair(error[of].gap, style),
      sayLength(length, style),
      sayLength(error[of].farEnd, style),
    ),
  );
}
