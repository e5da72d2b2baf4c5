import { formatAngle, formatLength, parseAngle, parseLength, parseRatio } from '../../../measure/index.ts';
import type { PatientOutcome } from '../../engine/patient/deeds.ts';
import { Choice } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

const said = words.study;
const COUNTS = [3, 5, 7, 9] as const;

/** What can be gone through in a design. */
export type Choices = Extract<PatientOutcome<'studyChoices'>, { ok: true }>['value'];
export type Chosen = Choices[number];

interface AxisFieldsProps {
  readonly label: string;
  readonly choices: Choices;
  readonly chosen: Chosen | undefined;
  readonly unit: 'mm' | 'in';
  /** May be none, in these words. */
  readonly none?: string;
  readonly onChange: (chosen: Chosen | undefined) => void;
}

/** Which figure a study goes through, from where to where, in how many steps. */
export function AxisFields({ label, choices, chosen, unit, none, onChange }: AxisFieldsProps) {
  const set = (change: Partial<Chosen>): void => {
    if (chosen !== undefined) onChange({ ...chosen, ...change });
  };
  return (
    <fieldset class="study-axis">
      <legend>{label}</legend>
      <Choice
        label={said.figure}
        options={[
          ...(none === undefined ? [] : [['', none] as const]),
          ...choices.map(({ parameter, label: name }) => [parameter, name] as const),
        ]}
        chosen={chosen?.parameter ?? ''}
        onChoose={(name) => onChange(choices.find(({ parameter }) => parameter === name))}
      />
      {chosen === undefined ? null : (
        <>
          {(['from', 'to'] as const).map((end) => (
            <MeasureField
              key={`${chosen.parameter} ${end}`}
              label={said[end]}
              kind={chosen.kind}
              unit={unit}
              text={written(chosen, chosen[end], unit)}
              onTake={(text) => {
                const value = read(chosen, text, unit);
                if (value !== undefined) set({ [end]: value });
              }}
            />
          ))}
          <Choice
            label={said.steps}
            options={[...new Set([...COUNTS, chosen.count])]
              .toSorted((a, b) => a - b)
              .map((count) => [`${count}`, `${count}`])}
            chosen={`${chosen.count}`}
            onChoose={(count) => set({ count: Number(count) })}
          />
        </>
      )}
    </fieldset>
  );
}

function written({ kind }: Chosen, value: number, unit: 'mm' | 'in'): string {
  if (kind === 'length') {
    return formatLength(value, unit === 'mm' ? { unit: 'mm', decimals: 0 } : { unit: 'in', denominator: 16 });
  }
  return kind === 'angle' ? formatAngle(value, { unit: 'deg', decimals: 1 }) : `${Number(value.toFixed(3))}`;
}

function read({ kind }: Chosen, text: string, unit: 'mm' | 'in'): number | undefined {
  const found =
    kind === 'length' ? parseLength(text, { unit }) : kind === 'angle' ? parseAngle(text) : parseRatio(text);
  return found.ok ? found.value : undefined;
}
