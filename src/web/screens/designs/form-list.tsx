import { useEffect, useState } from 'preact/hooks';
import { engineDo } from '../../engine/engine.ts';
import type { OutcomeOf } from '../../engine/protocol.ts';
import { beginFrom } from '../../state/designs.ts';
import { pictureOfForm } from '../../state/form-pictures.ts';
import { show } from '../../state/screen.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

const said = words.designs;

type Listed = OutcomeOf<'listForms'>[number];

/** The forms that come with the program, each with its picture, a way to begin. */
export function FormList() {
  const [forms, setForms] = useState<readonly Listed[]>([]);
  const [unit, setUnit] = useState<'mm' | 'in'>('mm');
  useEffect(() => {
    void engineDo('listForms', undefined).then(setForms);
  }, []);
  const begin = async ({ name, title }: Listed): Promise<void> => {
    await beginFrom(name, title, unit);
    show('shape');
  };
  const group = (title: string, isBase: boolean) => (
    <>
      <h3>{title}</h3>
      <ul class="forms">
        {forms
          .filter((form) => form.isBase === isBase)
          .map((form) => (
            <FormCard key={form.name} form={form} onBegin={() => void begin(form)} />
          ))}
      </ul>
    </>
  );
  return (
    <section aria-labelledby="begin">
      <h2 id="begin">{said.begin}</h2>
      <Choice
        label={said.unit}
        options={choicesOf(said.units)}
        chosen={unit}
        onChoose={setUnit}
        look="inline"
      />
      {forms.length === 0 ? <p class="hint">{words.loading}</p> : null}
      {forms.length === 0 ? null : group(said.bases, true)}
      {forms.length === 0 ? null : group(said.parts, false)}
    </section>
  );
}

function FormCard({ form, onBegin }: { readonly form: Listed; readonly onBegin: () => void }) {
  const picture = pictureOfForm(form.name).value;
  return (
    <li>
      <button type="button" onClick={onBegin}>
        <svg class="thumbnail" viewBox={picture?.box ?? '0 0 4 3'} aria-hidden="true">
          <path d={picture?.data ?? ''} />
        </svg>
        <strong>{form.title}</strong>
        <span>{form.about}</span>
      </button>
    </li>
  );
}
