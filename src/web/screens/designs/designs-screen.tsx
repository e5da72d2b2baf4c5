import { useEffect, useRef } from 'preact/hooks';
import { designs, notOpened } from '../../state/designs.ts';
import { linkRefused } from '../../state/links.ts';
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
      {linkRefused.value === undefined ? null : <RefusedLink why={linkRefused.value} />}
      <section aria-labelledby="kept">
        <h2 id="kept">{said.kept}</h2>
        {kept.length === 0 ? <p class="hint">{said.empty}</p> : null}
        <ul class="cards">
          {kept.map((stored) => (
            <DesignCard
              key={stored.id}
              stored={stored}
              hasTwin={kept.some(
                ({ id, changed }) => id !== stored.id && changed.slice(0, 10) === stored.changed.slice(0, 10),
              )}
            />
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

/** Whether it came by the address or was pasted below: said at the head of the page, which comes into view. */
function RefusedLink({ why }: { readonly why: string }) {
  const own = useRef<HTMLDivElement>(null);
  useEffect(() => own.current?.scrollIntoView({ block: 'nearest' }), [why]);
  return (
    <div ref={own} class="refused" role="alert">
      <h2>{words.link.refused}</h2>
      <p>{why}</p>
      <p>{words.link.refusedHelp}</p>
    </div>
  );
}
