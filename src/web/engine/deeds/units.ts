import { changeUnits, type Design } from '../../../design/index.ts';
import { readForm } from '../../../sketch/index.ts';

/** The design in another unit: all its lengths stay what they are. */
export function toUnits({ design, unit }: { readonly design: Design; readonly unit: 'mm' | 'in' }): Design {
  const form = readForm(design.form.text.join('\n'), design.form.name);
  return form.ok ? changeUnits(design, form.value, unit) : design;
}
