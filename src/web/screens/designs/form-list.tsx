import { LISTED_FORMS } from 'virtual:listed-forms';
import { useState } from 'preact/hooks';
import type { ListedForm } from '../../forms/listed-forms.ts';
import { beginFrom, designs } from '../../state/designs.ts';
import { show } from '../../state/screen.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';

const said = words.designs;

/** The forms that come with the program, each with its picture, a way to begin. */
export function FormList() {
  const [unit, setUnit] = useState<'mm' | 'in'>('mm');
  const begin = async ({ name, title }: ListedForm): Promise<void> => {
    await beginFrom(name, unusedName(title), unit);
    show('shape');
  };
  const group = (title: string, isBase: boolean) => (
    <>
      <h3>{title}</h3>
      <ul class="forms">
        {LISTED_FORMS.filter((form) => form.isBase === isBase).map((form) => (
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
      {group(said.bases, true)}
      {group(said.parts, false)}
    </section>
  );
}

function FormCard({ form, onBegin }: { readonly form: ListedForm; readonly onBegin: () => void }) {
  const { box, data } = form.picture;
  return (
    <li>
      <button type="button" onClick={onBegin}>
        <svg class="thumbnail" viewBox={box} aria-hidden="true">
          <path d={data} />
        </svg>
        <strong>{form.title}</strong>
        <span>{form.about}</span>
      </button>
    </li>
  );
}

/** The title of a form, numbered where designs are called so already. */
function unusedName(title: string): string {
  const taken = new Set(designs.value.map(({ name }) => name));
  if (!taken.has(title)) return title;
  for (let count = 2; ; count++) if (!taken.has(`${title} ${count}`)) return `${title} ${count}`;
}
