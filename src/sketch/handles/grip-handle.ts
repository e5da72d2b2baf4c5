import { fail, ok, type Result } from '../../core/index.ts';
import type { ParameterValue } from '../api.ts';
import { noSuch } from '../form/complaints.ts';
import type { Form } from '../form/form.ts';
import { own } from '../form/own.ts';
import { checkRanges } from '../parameters/check-ranges.ts';
import type { Grip, Mover } from './api.ts';
import { orderFor } from './order-for.ts';

/**
 * Takes hold of a handle of a form at given parameters (internal units). Those in `fixed` do not follow: what is measured stays.
 * Problems: `handle.unknown`; `handle.fixed` when nothing is left to follow; those of parameters beyond their range.
 */
export function gripHandle(
  form: Form,
  values: Readonly<Record<string, ParameterValue>>,
  name: string,
  fixed: readonly string[] = [],
): Result<Grip> {
  const spec = own(form.data.handles, name);
  if (spec === undefined) {
    const all = Object.keys(form.data.handles ?? {});
    return fail({ code: 'handle.unknown', message: noSuch('handle', name, all), found: name.slice(0, 40) });
  }
  const inForce = checkRanges(form, values);
  if (!inForce.ok) return inForce;
  const movers = spec.moves.flatMap(({ text }): readonly Mover[] => {
    const parameter = form.data.parameters[text]!;
    if (fixed.includes(text) || !('least' in parameter) || parameter.least === parameter.most) return [];
    return [{ name: text, least: parameter.least, most: parameter.most }];
  });
  if (movers.length === 0) {
    const message = `${spec.label} cannot be pulled: what it moves is measured already`;
    return fail({ code: 'handle.fixed', message, found: name });
  }
  return ok({ form, name, spec, order: orderFor(spec, form), values: inForce.value, movers });
}
