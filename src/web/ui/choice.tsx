import { useId } from 'preact/hooks';

interface ChoiceProps<Value extends string> {
  readonly label: string;
  /** What is offered, with its words. */
  readonly options: readonly (readonly [value: Value, said: string])[];
  readonly chosen: Value;
  readonly onChoose: (value: Value) => void;
  /** `inline`: its label stands before it, not above; `bare`: its label is read out and not shown. */
  readonly look?: 'above' | 'inline' | 'bare';
  /** Said when the pointer rests on it. */
  readonly help?: string | undefined;
}

/** One of a few. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const { label, options, chosen, onChoose, look = 'above', help } = props;
  const id = useId();
  return (
    <div class={`choice ${look}`} title={help}>
      <label for={id} class={look === 'bare' ? 'hidden-label' : undefined}>
        {label}
      </label>
      <select id={id} value={chosen} onChange={(event) => onChoose(event.currentTarget.value as Value)}>
        {options.map(([value, said]) => (
          <option key={value} value={value}>
            {said}
          </option>
        ))}
      </select>
    </div>
  );
}

/** What a table of words offers, in its order. */
export function choicesOf<Value extends string>(
  words: Readonly<Record<Value, string>>,
): readonly (readonly [Value, string])[] {
  return Object.entries(words) as unknown as readonly (readonly [Value, string])[];
}
