import { useEffect, useState } from 'preact/hooks';
import { refused, saveFile, takeInFile } from '../../state/design-files.ts';
import { show } from '../../state/screen.ts';
import type { KeptFile } from '../../store/database.ts';
import { forgetFile, keptFiles } from '../../store/stored-designs.ts';
import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';

const said = words.designs;

/** Files in: a design is taken up; what cannot be used is told in the engine's own words, and the file kept as it came. */
export function FilesPanel() {
  const [kept, setKept] = useState<readonly KeptFile[]>([]);
  const refresh = (): void => void keptFiles().then(setKept, () => undefined);
  useEffect(refresh, []);
  const take = async (field: HTMLInputElement): Promise<void> => {
    const [file] = field.files ?? [];
    if (file === undefined) return;
    const isIn = await takeInFile(file).finally(() => {
      field.value = '';
    });
    if (isIn) show('shape');
    refresh();
  };
  return (
    <section class="files" aria-labelledby="files">
      <h2 id="files">{said.take}</h2>
      <label class="file">
        <span>{said.takeHelp}</span>
        <input
          type="file"
          accept=".json,application/json"
          onChange={(event) => void take(event.currentTarget)}
        />
      </label>
      {refused.value === undefined ? null : (
        <div class="refused" role="alert">
          <h3>{said.refused(refused.value.name)}</h3>
          <ul>
            {refused.value.problems.slice(0, 8).map(({ message, line }) => (
              <li key={`${line} ${message}`}>{message}</li>
            ))}
          </ul>
          <p>{said.refusedHelp}</p>
        </div>
      )}
      {kept.length === 0 ? null : (
        <>
          <h3>{said.keptFiles}</h3>
          <ul class="kept-files">
            {kept.map(({ id, name, file, time }) => (
              <li key={id}>
                {name} <small>{time.slice(0, 10)}</small>{' '}
                <Button look="quiet" onClick={() => saveFile(file, name)}>
                  {said.saveKept}
                </Button>
                <Button look="quiet" onClick={() => void forgetFile(id).then(refresh)}>
                  {said.forget}
                </Button>
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
