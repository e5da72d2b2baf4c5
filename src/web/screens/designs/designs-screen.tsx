import { useEffect, useState } from 'preact/hooks';
import { engineDo } from '../../engine/engine.ts';
import type { OutcomeOf } from '../../engine/protocol.ts';
import { beginFrom, designs, notOpened, setDeleted } from '../../state/designs.ts';
import { show } from '../../state/screen.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { DesignCard } from './design-card.tsx';
import { FilesPanel } from './files-panel.tsx';
import { LinkPanel } from './link-panel.tsx';
import { PagePanel } from './page-panel.tsx';

const said = words.designs;

/** The designs that this browser keeps, and the forms that one begins from. */
export function DesignsScreen() {
  const kept = designs.value.filter(({ deleted }) => deleted === undefined);
  const lastDeleted = designs.value
    .filter(({ deleted }) => deleted !== undefined)
    .toSorted((a, b) => b.deleted!.localeCompare(a.deleted!));
  return (
    <div class="designs-screen">
      <h1>{words.screens.designs}</h1>
      {notOpened.value === undefined ? null : (
        <p class="problem" role="alert">
          {notOpened.value}
        </p>
      )}
      <section aria-labelledby="kept">
        <h2 id="kept">{said.kept}</h2>
        {kept.length === 0 ? <p class="hint">{said.empty}</p> : null}
        <ul class="cards">
          {kept.map((stored) => (
            <DesignCard key={stored.id} stored={stored} />
          ))}
        </ul>
        {lastDeleted.map(({ id, name }) => (
          <p key={id} class="deleted" role="status">
            {said.removed(name)} <Button onClick={() => void setDeleted(id, false)}>{said.back}</Button>
          </p>
        ))}
      </section>
      <FormList />
      <FilesPanel />
      <LinkPanel />
      <PagePanel />
    </div>
  );
}

/** The forms that come with the program, each a way to begin. */
function FormList() {
  const [forms, setForms] = useState<OutcomeOf<'listForms'>>([]);
  const [unit, setUnit] = useState<'mm' | 'in'>('mm');
  useEffect(() => {
    void engineDo('listForms', undefined).then(setForms);
  }, []);
  const begin = async (form: string, title: string): Promise<void> => {
    await beginFrom(form, title, unit);
    show('shape');
  };
  const group = (title: string, isBase: boolean) => (
    <>
      <h3>{title}</h3>
      <ul class="forms">
        {forms
          .filter((form) => form.isBase === isBase)
          .map(({ name, title: label, about }) => (
            <li key={name}>
              <button type="button" onClick={() => void begin(name, label)}>
                <strong>{label}</strong>
                <span>{about}</span>
              </button>
            </li>
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
