import { useEffect, useRef } from 'preact/hooks';
import { formatAngle, formatLength } from '../../../measure/index.ts';
import type { DescribedParameter } from '../../../sketch/index.ts';
import { foresee, problems } from '../../engine/engine.ts';
import { useAnswer } from '../../engine/use-answer.ts';
import { change, design } from '../../state/current.ts';
import { lengthStyle, plainLength } from '../../state/lengths.ts';
import { pulledTo } from '../../state/pulling.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';
import { soughtParameter } from './shown-picture.ts';
import { UnitChoice } from './unit-choice.tsx';

/** What the maker decides in the form, as a list; a figure that was measured on the wood stands as it was measured. */
export function FigureList() {
  const form = useAnswer('form');
  const list = useRef<HTMLElement>(null);
  const sought = soughtParameter.value;
  useEffect(() => {
    if (sought === undefined) return;
    const row = list.current?.querySelector<HTMLElement>(`[data-parameter="${sought}"] :is(input, select)`);
    row?.focus();
    row?.scrollIntoView({ block: 'center' });
    soughtParameter.value = undefined;
  }, [sought]);
  if (form === undefined) return <section class="figures" />;
  return (
    <section class="figures" aria-label={words.shape.parameters} ref={list}>
      <header>
        <h2>{form.title}</h2>
        <UnitChoice />
      </header>
      {form.parameters.map((parameter) => (
        <div key={parameter.name} class="figure-row" data-parameter={parameter.name}>
          <Figure parameter={parameter} />
        </div>
      ))}
    </section>
  );
}

function Figure({ parameter }: { readonly parameter: DescribedParameter }) {
  const { name, label, help, kind } = parameter;
  const inHand = design.value;
  if (inHand === undefined) return null;
  const measured = inHand.measured.parameters?.[name];
  const pulled = pulledTo.value?.parameters[name];
  const typed = pulled ?? measured ?? inHand.parameters[name] ?? defaultAsTyped(parameter);
  const section = measured === undefined ? ['parameters'] : ['measured', 'parameters'];
  const edits = (to: string | boolean) => [{ path: [...section, name], to }];
  const set = (to: string | boolean): void => change(label, edits(to));
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
      <Choice
        label={label}
        options={choicesOf(parameter.options)}
        chosen={String(typed)}
        onChoose={set}
        help={help}
      />
    );
  }
  const problem = problems.value.find(({ path }) => path?.endsWith(`parameters.${name}`) === true)?.message;
  return (
    <MeasureField
      label={measured === undefined ? label : words.shape.measured(label)}
      kind={kind}
      text={String(typed)}
      unit={inHand.units.length}
      range={rangeOf(parameter)}
      hint={help}
      problem={problem}
      isMoving={pulled !== undefined}
      onTyping={(to) => foresee(edits(to))}
      onTake={set}
    />
  );
}

type Figures = Extract<DescribedParameter, { readonly least: number }>;

function rangeOf(parameter: Figures) {
  const { least, most } = parameter;
  return { least, most, words: words.shape.range(sayFigure(parameter, least), sayFigure(parameter, most)) };
}

/** A figure of a parameter as one would type it in the design's unit. */
function sayFigure({ kind }: Figures, value: number): string {
  if (kind === 'length') return plainLength(value);
  if (kind === 'angle') return formatAngle(value, { unit: 'deg', decimals: 1 }).replace('.0°', '°');
  return `${value}`;
}

/** A default of the form as one would type it in the design's unit. */
function defaultAsTyped(parameter: DescribedParameter): string | number | boolean {
  if (parameter.kind === 'length') return formatLength(parameter.default, lengthStyle());
  if (parameter.kind === 'angle') return formatAngle(parameter.default, { unit: 'deg', decimals: 1 });
  return parameter.default;
}
