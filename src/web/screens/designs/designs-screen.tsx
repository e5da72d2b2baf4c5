import { designs, notOpened } from '../../state/designs.ts';
import { words } from '../../words/en.ts';
import { DeletedDesign } from './deleted-design.tsx';
import { DesignCard } from './design-card.tsx';
import { FilesPanel } from './files-panel.tsx';
import { FormList } from './form-list.tsx';
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
        {lastDeleted.length === 0 ? null : (
          <ul class="gone">
            {lastDeleted.map(({ id, name }) => (
              <DeletedDesign key={id} id={id} name={name} />
            ))}
          </ul>
        )}
      </section>
      <FormList />
      <FilesPanel />
      <LinkPanel />
      <PagePanel />
    </div>
  );
}
