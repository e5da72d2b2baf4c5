import { useState } from 'preact/hooks';
import { Button } from '../../ui/button.tsx';
import { Choice } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { forgetCorners, layPhotograph, photograph, SHEETS, sheet } from './photograph.ts';

const said = words.ownShape;

/** A photograph taken in, and the sheet in it by which it is made true. */
export function PhotoPanel() {
  const photo = photograph.value;
  const [why, setWhy] = useState<string>();
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    await layPhotograph(file).then(
      () => setWhy(undefined),
      () => setWhy(said.notAPicture(file.name)),
    );
  };
  return (
    <section aria-labelledby="photo">
      <h2 id="photo">{said.photo}</h2>
      <label class="file">
        <span>{said.photoHelp}</span>
        <input type="file" accept="image/*" onChange={(event) => void take(event.currentTarget.files?.[0])} />
      </label>
      {why === undefined ? null : (
        <p class="problem" role="alert">
          {why}
        </p>
      )}
      {photo === undefined ? null : (
        <>
          <Choice
            label={said.sheet}
            options={SHEETS.map(({ name, way }) => [`${name} ${way}`, said.sheetWay(name, way)])}
            chosen={`${sheet.value.name} ${sheet.value.way}`}
            onChoose={(chosen) => {
              sheet.value = SHEETS.find(({ name, way }) => `${name} ${way}` === chosen)!;
              forgetCorners();
            }}
          />
          <p role="status">
            {photo.made === undefined
              ? (photo.why ?? said.mark(photo.corners.length))
              : said.made(
                  photo.made.errorAt({ x: sheet.value.width / 2, y: sheet.value.height / 2 }),
                  photo.made.errorAt({ x: 3 * sheet.value.width, y: sheet.value.height / 2 }),
                )}
          </p>
          {photo.made === undefined ? null : <Button onClick={forgetCorners}>{said.markAgain}</Button>}
        </>
      )}
    </section>
  );
}
