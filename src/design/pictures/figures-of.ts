import { standBase } from '../../base/index.ts';
import { figuresOfBase, valueOfDimension } from '../../drawing/index.ts';
import type { ParameterValue, Sketch } from '../../sketch/index.ts';
import { compute } from '../compute.ts';
import type { Design } from '../design-schema.ts';
import { formOfDesign, sketchOfDesign, valuesOfDesign } from '../form-of-design.ts';
import { type Memo, remember } from '../memo.ts';
import { type PictureOf, partPictureOf } from './picture-of.ts';

/** What the dimensions of a picture measure, and the parameters that they follow from. */
export interface Figures {
  /** By the names of the dimensions, mm or rad; of several of one name the first. */
  readonly values: ReadonlyMap<string, number>;
  readonly parameters: Readonly<Record<string, ParameterValue>>;
}

/**
 * The figures of a picture of a design; nothing where the design cannot be used. For a side of the base its parts are only stood up, which takes a
 * hundredth of the time; what joints leave of a part takes all of it.
 */
export function figuresOf(design: Design, of: PictureOf, memo: Memo): Figures | undefined {
  if ('side' in of) {
    const sketch = sketchIn(design, memo);
    const base = sketch === undefined || of.side === 'pictorial' ? undefined : standBase(sketch);
    if (sketch === undefined || base?.ok !== true || of.side === 'pictorial') return undefined;
    return { values: figuresOfBase(base.value, of.side), parameters: sketch.parameters };
  }
  const computed = compute(design, { memo, wanted: { patterns: [], standing: false } });
  if (!computed.ok) return undefined;
  const values = new Map<string, number>();
  for (const dimension of partPictureOf(computed.value, of.part)?.dimensions ?? []) {
    const value = valueOfDimension(dimension);
    if (value !== undefined && !values.has(dimension.name)) values.set(dimension.name, value);
  }
  return { values, parameters: computed.value.sketch.parameters };
}

function sketchIn(design: Design, memo: Memo): Sketch | undefined {
  const form = remember(memo, { stage: 'form', inputs: [design.form] }, () => formOfDesign(design));
  if (!form.ok) return undefined;
  const values = valuesOfDesign(design, form.value);
  const sketch = values.ok ? sketchOfDesign(design, form.value, values.value) : values;
  return sketch.ok && sketch.value.base !== undefined ? sketch.value : undefined;
}
