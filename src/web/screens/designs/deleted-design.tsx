import { useState } from 'preact/hooks';
import { letGoForGood, setDeleted } from '../../state/designs.ts';
import type { StoredDesign } from '../../store/database.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

const said = words.designs;

/** A deleted design: it can be brought back until it is let go for good, which is asked twice. */
export function DeletedDesign({ id, name }: Pick<StoredDesign, 'id' | 'name'>) {
  const [isAsked, setAsked] = useState(false);
  return (
    <li class="deleted">
      <span role="status">{said.removed(name)}</span>{' '}
      {isAsked ? (
        <>
          <span>{said.sure}</span>{' '}
          <Button autoFocus onClick={() => setAsked(false)}>
            {said.stay}
          </Button>{' '}
          <Button look="quiet" aria-label={`${said.goNow}: ${name}`} onClick={() => void letGoForGood(id)}>
            {said.goNow}
          </Button>
        </>
      ) : (
        <>
          <Button aria-label={`${said.back}: ${name}`} onClick={() => void setDeleted(id, false)}>
            {said.back}
          </Button>{' '}
          <Button look="quiet" aria-label={`${said.forGood}: ${name}`} onClick={() => setAsked(true)}>
            {said.forGood}
          </Button>
        </>
      )}
    </li>
  );
}
