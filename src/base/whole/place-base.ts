import { ok, type Result } from '../../core/index.ts';
import type { LengthStyle } from '../../measure/index.ts';
import type { Sketch } from '../../sketch/index.ts';
import type { StandingBase } from '../api.ts';
import { type KeptBase, keepCutParts } from '../kept/keep-cut-parts.ts';
import { standBase } from '../stand/stand-base.ts';

/**
 * Stands up the base that a sketch places: all that its views need. Parts cut already keep the shape that they had in the form `cut`, as it was
 * then, by the form's name of the part. Fails where parts cannot be placed.
 */
export function placeBase(
  sketch: Sketch,
  cut: Readonly<Record<string, Sketch>>,
  lengths: LengthStyle,
): Result<KeptBase> {
  const stood = standBase(sketch);
  if (!stood.ok) return stood;
  const then = new Map<string, StandingBase>();
  for (const [part, before] of Object.entries(cut)) {
    const old = standBase(before);
    if (old.ok) then.set(part, old.value);
  }
  return ok(keepCutParts(stood.value, then, lengths));
}
