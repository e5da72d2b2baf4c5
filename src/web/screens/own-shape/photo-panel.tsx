import { Button } from '../../ui/button.tsx';
import { words } from '../../words/en.ts';
import { forgetCorners, photograph, sheet } from './drawn.ts';

const said = words.ownShape;

/** Sheets that most have at hand, mm: ISO 216 and ANSI/ASME Y14.1. */
const SHEETS = {
  A4: { width: 210, height: 297 },
  A3: { width: 297, height: 420 },
  Letter: { width: 215.9, height: 279.4 },
} as const;

/** A photograph taken in, and the sheet in it by which it is made true. */
export function PhotoPanel() {
  const photo = photograph.value;
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const url = URL.createObjectURL(file);
    const image = new Image();
    image.src = url;
    await image.decode().then(
      () => {
        photograph.value = {
          url,
          width: image.naturalWidth,
          height: image.naturalHeight,
          corners: [],
          made: undefined,
          why: undefined,
        };
      },
      () => URL.revokeObjectURL(url),
    );
  };
  return (
    <section aria-labelledby="photo">
      <h2 id="photo">{said.photo}</h2>
      <label class="file">
        <span>{said.photoHelp}</span>
        <input type="file" accept="image/*" onChange={(event) => void take(event.currentTarget.files?.[0])} />
      </label>
      {photo === undefined ? null : (
        <>
          <label class="choice">
            {said.sheet}{' '}
            <select
              onChange={(event) => {
                const [name, way] = event.currentTarget.value.split(' ') as [keyof typeof SHEETS, string];
                const { width, height } = SHEETS[name];
                sheet.value = way === 'long' ? { width: height, height: width } : { width, height };
                forgetCorners();
              }}
            >
              {Object.keys(SHEETS).flatMap((name) =>
                (['upright', 'long'] as const).map((way) => (
                  <option key={`${name} ${way}`} value={`${name} ${way}`}>
                    {said.sheetWay(name, way)}
                  </option>
                )),
              )}
            </select>
          </label>
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
