import { namesIn } from '../expression/node.ts';
import { keyOf, needsByKey } from '../form/check-cycles.ts';
import { expressionsIn } from '../form/expressions-in.ts';
import type { Form } from '../form/form.ts';
import type { HandleSpec } from '../schema/handle.ts';

/** What has to be made of a form for a handle and for the form's checks, in the order of making. */
export function orderFor(spec: HandleSpec, { data, order }: Form): readonly string[] {
  const needs = needsByKey(data);
  const wanted = new Set(
    [spec, data.checks].flatMap(expressionsIn).flatMap((expression) => namesIn(expression.node)),
  );
  if ('corner' in spec && spec.corner !== undefined) {
    const { outline } = spec.corner;
    const { start, edges } = data.outlines[outline]!;
    for (const name of namesIn(start.node)) wanted.add(name);
    for (const index of edges.keys()) wanted.add(keyOf(outline, index));
  }
  // Goes on to what is added while it runs.
  for (const key of wanted) for (const need of needs.get(key) ?? []) wanted.add(need);
  return order.filter((key) => wanted.has(key));
}
