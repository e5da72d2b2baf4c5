import { useState } from 'preact/hooks';
import { type Design, usualKnownPoints } from '../../../design/index.ts';
import { photographs, takePhotograph } from '../../photographs/board-pictures.ts';
import { change } from '../../state/current.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { marking } from './marking.ts';

const said = words.wood.photograph;

type Board = NonNullable<NonNullable<Design['wood']>['boards']>[number];

interface PhotographFieldsProps {
  readonly design: Design;
  readonly board: Board;
  readonly boardAt: number;
}

/** The photographs of one board: taken in, marked, taken away. The pictures stay in this browser, the design names them. */
export function PhotographFields({ design, board, boardAt }: PhotographFieldsProps) {
  const [why, setWhy] = useState<string>();
  const own = board.photographs ?? [];
  const path = ['wood', 'boards', boardAt, 'photographs'] as const;
  const taken = new Set(
    (design.wood?.boards ?? []).flatMap((each) => each.photographs ?? []).map(({ file }) => file),
  );
  const take = async (file: File | undefined, as?: string): Promise<void> => {
    if (file === undefined) return;
    setWhy(undefined);
    const name = as ?? unusedName(file.name.slice(0, 60), taken);
    try {
      const size = await takePhotograph(name, file);
      if (as !== undefined) return;
      const face = own.some((each) => each.face === 'upper' && each.leaf === undefined) ? 'lower' : 'upper';
      const photograph = { file: name, face, points: usualKnownPoints(board, face, size, 4) };
      change(said.added(board.name), [{ path, to: [...own, photograph] }]);
      marking.value = { boardAt, at: own.length };
    } catch (cause) {
      setWhy((cause as DOMException).name === 'QuotaExceededError' ? said.full : said.unreadable(file.name));
    }
  };
  return (
    <fieldset class="photographs">
      <legend>{said.title}</legend>
      {own.map(({ file, face, leaf, points }, at) => (
        <div key={file} class="photograph">
          <p>{file}</p>
          {photographs.value.get(file) === 'missing' ? (
            <label class="file">
              <span class="problem">{said.missing(file)}</span>
              <input
                type="file"
                accept="image/*"
                onChange={(event) => void take(event.currentTarget.files?.[0], file)}
              />
            </label>
          ) : null}
          <Choice
            label={said.shows}
            options={choicesOf(said.faces)}
            chosen={face}
            onChoose={(to) =>
              change(said.shows, [
                { path: [...path, at, 'face'], to },
                // What was the near edge in the picture is now the far one: the marks stay on the corners that they are on.
                ...(points.length === 4
                  ? [
                      {
                        path: [...path, at, 'points'],
                        to: points.map((each, i) => ({ ...each, on: points[3 - i]!.on })),
                      },
                    ]
                  : []),
              ])
            }
          />
          <Choice
            label={said.of}
            options={[
              ['', said.whole],
              ...Array.from(
                { length: leavesOf(design, board.name) },
                (_, k) => [`${k + 1}`, said.leaf(k + 1)] as const,
              ),
            ]}
            chosen={leaf === undefined ? '' : `${leaf}`}
            onChoose={(to) =>
              change(said.of, [{ path: [...path, at, 'leaf'], ...(to === '' ? {} : { to: Number(to) }) }])
            }
          />
          <div class="row">
            <Button onClick={() => (marking.value = { boardAt, at })}>{said.mark}</Button>
            <Button
              look="quiet"
              onClick={() => {
                marking.value = undefined;
                change(said.removed, [{ path, to: own.filter((_, i) => i !== at) }]);
              }}
            >
              {said.remove}
            </Button>
          </div>
        </div>
      ))}
      <label class="file">
        <span class="hint">{said.take}</span>
        <input
          type="file"
          accept="image/*"
          aria-label={said.takeFor(board.name)}
          onChange={(event) => {
            const { currentTarget } = event;
            void take(currentTarget.files?.[0]).then(() => {
              currentTarget.value = '';
            });
          }}
        />
      </label>
      {why === undefined ? null : (
        <p class="problem" role="alert">
          {why}
        </p>
      )}
    </fieldset>
  );
}

/** Leaves that the board is resawn into, by the plans of the matches that name it. */
function leavesOf({ wood }: Design, board: string): number {
  const plans = (wood?.bookmatch ?? [])
    .filter(({ boards }) => boards?.includes(board))
    .map(({ resaw }) => resaw);
  const counts = (wood?.resaw ?? []).filter(({ name }) => plans.includes(name)).map(({ leaves }) => leaves);
  return Math.max(0, ...counts);
}

function unusedName(name: string, taken: ReadonlySet<string>): string {
  if (!taken.has(name)) return name;
  for (let count = 2; ; count++) if (!taken.has(`${name} (${count})`)) return `${name} (${count})`;
}
