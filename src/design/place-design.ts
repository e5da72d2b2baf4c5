import { placeBase } from '../base/index.ts';
import { fail, ok, type Result } from '../core/index.ts';
import type { Sketch } from '../sketch/index.ts';
import type { PlacedDesign } from './base-of-design.ts';
import type { Design } from './design-schema.ts';
import { type Decided, formOfDesign, sketchOfDesign, valuesOfDesign } from './form-of-design.ts';
import { lengthStyleOf } from './length-style.ts';
import { type Memo, remember } from './memo.ts';

/** Draws the form of a design and, where it places its parts, stands them up: the first stages of every computation, a small part of its time. */
export function placeDesign(design: Design, memo: Memo): Result<PlacedDesign> {
  const sketch = sketchIn(design, memo);
  if (!sketch.ok) return sketch;
  const cut: Record<string, Sketch> = {};
  for (const [part, decided] of Object.entries(design.cut ?? {})) {
    const then = sketchIn(design, memo, asTheWoodIs(decided, part, design));
    if (!then.ok) {
      return fail(...then.problems.map((problem) => ({ ...problem, path: `cut.${part}` })));
    }
    cut[part] = then.value;
  }
  const lengths = lengthStyleOf(design);
  const inputs = [sketch.value, cut, lengths];
  return remember(memo, { stage: 'placed', inputs }, () => {
    if (sketch.value.base === undefined) return ok({ sketch: sketch.value, cut });
    const placed = placeBase(sketch.value, cut, lengths);
    return placed.ok ? ok({ sketch: sketch.value, cut, placed: placed.value }) : placed;
  });
}

/** What was measured on a part that is cut is so of the very wood, whenever it was measured. */
function asTheWoodIs(decided: Decided, part: string, { measured }: Design): Decided {
  const [thickness, length] = [measured.thickness?.[part], measured.length?.[part]];
  if (thickness === undefined && length === undefined) return decided;
  const then = decided.measured;
  return {
    ...decided,
    measured: {
      ...then,
      ...(thickness !== undefined && { thickness: { ...then.thickness, [part]: thickness } }),
      ...(length !== undefined && { length: { ...then.length, [part]: length } }),
    },
  };
}

function sketchIn(design: Design, memo: Memo, decided: Decided = design): Result<Sketch> {
  const inputs = [design.form, decided.parameters, decided.measured, design.units];
  return remember(memo, { stage: 'sketch', inputs }, () => {
    const form = remember(memo, { stage: 'form', inputs: [design.form] }, () => formOfDesign(design));
    if (!form.ok) return form;
    const values = valuesOfDesign(design, form.value, decided);
    return values.ok ? sketchOfDesign(design, form.value, values.value, decided) : values;
  });
}
