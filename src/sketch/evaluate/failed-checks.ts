import type { Problem } from '../../core/index.ts';
import type { Kind } from '../expression/kind.ts';
import type { Value } from '../expression/value-scope.ts';
import { openDesk } from './desk.ts';
import type { Sheet } from './sheet.ts';
import { show, showAngle, showPoint } from './show.ts';

/** The form's own checks that do not hold, each with its message filled in. */
export function failedChecks(sheet: Sheet): readonly Problem[] {
  const problems: Problem[] = [];
  for (const { needs, say, when } of sheet.form.data.checks ?? []) {
    const desk = openDesk(sheet);
    if (desk.holds(when) === true && desk.holds(needs) === false) {
      desk.refuse(needs.source.place, 'form.check', fillMessage(say, sheet), needs.source.text);
    }
    problems.push(...desk.problems.filter((problem) => !problems.includes(problem)));
  }
  return problems;
}

/** `{name}` becomes the value of that name in the maker's unit. */
export function fillMessage(message: string, sheet: Sheet): string {
  return message.replace(/\{([^{}]*)\}/g, (whole, name: string) => {
    const value = sheet.values.get(name);
    const kind = sheet.form.kinds.get(name);
    return value?.ok && kind !== undefined ? inWords(value.value, kind, sheet) : whole;
  });
}

function inWords(value: Value, kind: Kind, { style }: Sheet): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (typeof value === 'object') return 'x' in value ? showPoint(value, style) : showAngle(value.facing);
  if (kind.type === 'quantity' && kind.length === 1 && kind.angle === 0) return show(value, style);
  if (kind.type === 'quantity' && kind.length === 0 && kind.angle === 1) return showAngle(value);
  return `${Number(value.toPrecision(6))}`;
}
