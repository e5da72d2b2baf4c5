import { useEffect, useState } from 'preact/hooks';
import { engineDo } from '../../engine/engine.ts';
import type { OutcomeOf } from '../../engine/protocol.ts';
import { beginFrom, designs, takeInHand } from '../../state/designs.ts';
import { show } from '../../state/screen.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

/** The designs that this browser keeps, and the forms that one begins from. */
export function DesignsScreen() {
  const [forms, setForms] = useState<OutcomeOf<'listForms'>>([]);
  useEffect(() => {
    void engineDo('listForms', undefined).then(setForms);
  }, []);
  const kept = designs.value.filter(({ deleted }) => deleted === undefined);
  return (
    <div class="designs-screen">
      <h1>{words.screens.designs}</h1>
      <h2>{words.designs.kept}</h2>
      {kept.length === 0 ? <p class="hint">{words.designs.empty}</p> : null}
      <ul class="cards">
        {kept.map(({ id, name, form }) => (
          <li key={id}>
            <Button
              onClick={async () => {
                if (await takeInHand(id)) show('shape');
              }}
            >
              {name} <small>{form}</small>
            </Button>
          </li>
        ))}
      </ul>
      <h2>{words.designs.begin}</h2>
      <ul class="cards">
        {forms.map(({ name, title, about }) => (
          <li key={name}>
            <Button
              onClick={async () => {
                await beginFrom(name, title, 'mm');
                show('shape');
              }}
            >
              {title} <small>{about}</small>
            </Button>
          </li>
        ))}
      </ul>
    </div>
  );
}
