import type { DescribedParameter } from '../../../sketch/index.ts';
import { problems } from '../../engine/engine.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { change, design } from '../../state/current.ts';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

/** What the maker decides in the form, as a list. */
export function FigureList() {
  const form = useAnswer('form');
  if (form === undefined) return null;
  return (
    <section class="figures" aria-label={words.shape.parameters}>
      {form.parameters.map((parameter) => (
        <Figure key={parameter.name} parameter={parameter} />
      ))}
    </section>
  );
}

function Figure({ parameter }: { readonly parameter: DescribedParameter }) {
  const { name, label, help, kind } = parameter;
  const inHand = design.value;
  if (inHand === undefined) return null;
  const typed = inHand.parameters[name] ?? parameter.default;
  const set = (to: string | boolean): void => change(label, [{ path: ['parameters', name], to }]);
  if (kind === 'yes-no') {
    return (
      <label class="yes-no" title={help}>
        <input
          type="checkbox"
          checked={typed === true || typed === 'yes'}
          onChange={(event) => set(event.currentTarget.checked)}
        />
        {label}
      </label>
    );
  }
  if (kind === 'choice') {
    return (
      <label class="choice" title={help}>
        {label}
        <select value={String(typed)} onChange={(event) => set(event.currentTarget.value)}>
          {Object.entries(parameter.options).map(([option, said]) => (
            <option key={option} value={option}>
              {said}
            </option>
          ))}
        </select>
      </label>
    );
  }
  const problem = problems.value.find(({ path }) => path === `parameters.${name}`)?.message;
  return (
    <MeasureField
      label={label}
      kind={kind}
      text={String(typed)}
      unit={inHand.units.length}
      hint={help}
      problem={problem}
      onChange={set}
    />
  );
}
