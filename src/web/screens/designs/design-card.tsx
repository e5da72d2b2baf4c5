import { useRef, useState } from 'preact/hooks';
import { currentId } from '../../state/current.ts';
import { saveDesign } from '../../state/design-files.ts';
import { asItIs, copyDesign, renameDesign, setDeleted, takeInHand, today } from '../../state/designs.ts';
import { show } from '../../state/screen.ts';
import type { StoredDesign } from '../../store/database.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

const said = words.designs;

interface DesignCardProps {
  readonly stored: StoredDesign;
  /** Another was changed on the same day: the time tells them apart. */
  readonly hasTwin: boolean;
}

/** One design of the list: its picture and name take it up; beside them what else can be done with it. */
export function DesignCard({ stored, hasTwin }: DesignCardProps) {
  const [isNaming, setNaming] = useState(false);
  const { id, name, thumbnail, changed } = stored;
  const stops = thumbnail?.stops ?? 0;
  const open = async (): Promise<void> => {
    if (await takeInHand(id)) show('shape');
  };
  return (
    <li class="card">
      <button type="button" class="card-open" title={said.open(name)} onClick={() => void open()}>
        <svg class="thumbnail" viewBox={thumbnail?.box ?? '0 0 4 3'} aria-hidden="true">
          <path d={thumbnail?.data ?? ''} />
        </svg>
        {isNaming ? null : <strong>{name}</strong>}
        <small>{currentId.value === id ? said.inHand : said.changed(whenOf(changed, hasTwin))}</small>
        {stops === 0 ? null : <small class="problem">{said.stops(stops)}</small>}
      </button>
      {isNaming ? <NameField stored={stored} onDone={() => setNaming(false)} /> : null}
      <div class="actions">
        <Button look="quiet" onClick={() => setNaming(!isNaming)}>
          {said.rename}
        </Button>
        <Button look="quiet" onClick={() => void copyDesign(stored)}>
          {said.copy}
        </Button>
        <Button
          look="quiet"
          aria-label={said.saveAll(name)}
          onClick={() => void asItIs(stored).then(saveDesign)}
        >
          {said.save}
        </Button>
        <Button look="quiet" onClick={() => void setDeleted(id, true)}>
          {said.remove}
        </Button>
      </div>
    </li>
  );
}

/** The maker's own calendar day, and hour. */
function whenOf(iso: string, withTime: boolean): string {
  const at = new Date(iso);
  const two = (n: number) => String(n).padStart(2, '0');
  return withTime ? `${today(at)}, ${two(at.getHours())}:${two(at.getMinutes())}` : today(at);
}

function NameField({ stored, onDone }: { readonly stored: StoredDesign; readonly onDone: () => void }) {
  const isDone = useRef(false);
  const take = (typed: string): void => {
    // Enter takes the field away, which leaves it once more.
    if (isDone.current) return;
    isDone.current = true;
    const name = typed.trim();
    if (name !== '' && name !== stored.name) void renameDesign(stored.id, name);
    onDone();
  };
  return (
    <input
      type="text"
      aria-label={said.name}
      maxLength={80}
      defaultValue={stored.name}
      ref={(field) => field?.focus()}
      onBlur={(event) => take(event.currentTarget.value)}
      onKeyDown={(event) => {
        if (event.key === 'Enter') take(event.currentTarget.value);
        if (event.key === 'Escape') {
          isDone.current = true;
          onDone();
        }
      }}
    />
  );
}
