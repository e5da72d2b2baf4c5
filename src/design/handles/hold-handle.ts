import { ok, type Result } from '../../core/index.ts';
import { type Grip, gripHandle } from '../../sketch/index.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign, thicknessOfDesign, valuesOfDesign } from '../form-of-design.ts';
import { type Memo, remember } from '../memo.ts';

/** A handle of a design taken hold of, to be pulled any number of times. */
export interface HeldHandle {
  readonly design: Design;
  readonly grip: Grip;
  /** Thicknesses measured, mm, by part. */
  readonly thickness: Readonly<Record<string, number>>;
}

/**
 * Takes hold of a handle (by its name in `Sketch.handles`) of a design as it is now. Parameters that were measured on the work do not follow.
 * With the memo of `compute` the form is not read again, which takes most of the time. Problems: those of the design's form and
 * parameters; `handle.unknown`, `handle.fixed`.
 */
export function holdHandle(design: Design, name: string, memo: Memo = new Map()): Result<HeldHandle> {
  const form = remember(memo, { stage: 'form', inputs: [design.form] }, () => formOfDesign(design));
  if (!form.ok) return form;
  const values = valuesOfDesign(design, form.value);
  if (!values.ok) return values;
  const thickness = thicknessOfDesign(design);
  if (!thickness.ok) return thickness;
  const measured = Object.keys(design.measured.parameters ?? {});
  const grip = gripHandle(form.value, values.value, name, measured);
  return grip.ok ? ok({ design, grip: grip.value, thickness: thickness.value }) : grip;
}
