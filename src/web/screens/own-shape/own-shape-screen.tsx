import { useEffect, useState } from 'preact/hooks';
import { parseLength } from '../../../measure/index.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { design } from '../../state/current.ts';
import { addDesign } from '../../state/designs.ts';
import { show } from '../../state/screen.ts';
import { Button } from '../../ui/button.tsx';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { TextField } from '../../ui/text-field.tsx';
import { words } from '../../words/en.ts';
import { DrawingBoard } from './drawing-board.tsx';
import { addPoint, clear, close, drawn, endBatten, lay, role, type Tool, takeBack, tool } from './drawn.ts';
import { isKept, keepDrawn } from './keep-drawn.ts';
import { PhotoPanel } from './photo-panel.tsx';

const said = words.ownShape;
/** What came of the file taken last. */
interface SvgSays {
  readonly isRefused: boolean;
  readonly words: readonly string[];
}

const TOOLS: readonly Tool[] = ['line', 'arc', 'batten'];

/** An outline of the maker's own: drawn over a photograph or on bare paper, or read from a file, and made a form. */
export function OwnShapeScreen() {
  const unit = design.value?.units.length ?? 'mm';
  const [title, setTitle] = useState<string>(said.title);
  const [stock, setStock] = useState(unit === 'mm' ? '32 mm' : '1 1/4 in');
  const [problems, setProblems] = useState<readonly string[]>([]);
  const [svgSays, setSvgSays] = useState<SvgSays>();
  useEffect(() => {
    keepDrawn().catch(() => {
      isKept.value = false;
    });
  }, []);
  const { closed, start, waiting } = drawn.value;
  const use = async (): Promise<void> => {
    const read = parseLength(stock, { unit });
    const shape = {
      title,
      loops: closed,
      thickness: read.ok ? read.value : 0,
      grain: Math.PI / 2,
      up: Math.PI / 2,
      pieces: 1,
    };
    const begun = await engineDo('beginOwnShape', {
      shape,
      unit,
      date: new Date().toISOString().slice(0, 10),
    });
    setProblems(begun.ok ? [] : begun.problems.map(({ message }) => message));
    if (!begun.ok) return;
    await addDesign(begun.value);
    show('shape');
  };
  const takeSvg = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const read = await engineDo('strokesInSvg', { text: await file.text(), name: file.name });
    setProblems([]);
    if (!read.ok) {
      setSvgSays({ isRefused: true, words: read.problems.map(({ message }) => message) });
      return;
    }
    const { loops, remarks } = read.value;
    setSvgSays({ isRefused: false, words: [said.svgLaid(file.name, loops.length), ...remarks] });
    lay(loops);
  };
  return (
    <div class="own-shape-screen">
      <aside class="own-tools">
        <h1>{words.screens['own-shape']}</h1>
        {isKept.value ? null : (
          <p class="problem" role="alert">
            {said.notKept}
          </p>
        )}
        <PhotoPanel />
        <section aria-labelledby="svg">
          <h2 id="svg">{said.svg}</h2>
          <label class="file">
            <span>{said.svgHelp}</span>
            <input
              type="file"
              accept=".svg,image/svg+xml"
              onChange={(event) => {
                const { currentTarget } = event;
                // The same file may be mended and taken once more.
                void takeSvg(currentTarget.files?.[0]).finally(() => {
                  currentTarget.value = '';
                });
              }}
            />
          </label>
          {svgSays === undefined ? null : (
            <div role={svgSays.isRefused ? 'alert' : 'status'}>
              {svgSays.words.map((each) => (
                <p key={each} class={svgSays.isRefused ? 'problem' : 'hint'}>
                  {each}
                </p>
              ))}
              {svgSays.isRefused ? <p class="hint">{said.svgStays}</p> : null}
            </div>
          )}
        </section>
        <section aria-labelledby="draw">
          <h2 id="draw">{said.draw}</h2>
          <fieldset class="choices">
            <legend>{said.stroke}</legend>
            {TOOLS.map((each) => (
              <label key={each}>
                <input
                  type="radio"
                  name="stroke"
                  checked={tool.value === each}
                  onChange={() => (tool.value = each)}
                />{' '}
                {said.tools[each]}
              </label>
            ))}
          </fieldset>
          <p class="hint">{said.toolHelp[tool.value]}</p>
          <Choice
            label={said.role}
            options={choicesOf(said.roles)}
            chosen={role.value}
            onChoose={(chosen) => {
              role.value = chosen;
            }}
          />
          <PointFields unit={unit} />
          <div class="row">
            <Button onClick={takeBack}>{said.takeBack}</Button>
            {tool.value === 'batten' && waiting.length > 0 ? (
              <Button onClick={endBatten}>{said.endBatten}</Button>
            ) : null}
            <Button onClick={close} disabled={start === undefined}>
              {said.close}
            </Button>
            <Button look="quiet" onClick={clear}>
              {said.clear}
            </Button>
          </div>
        </section>
        <section aria-labelledby="use">
          <h2 id="use">{said.use}</h2>
          <TextField label={said.name} text={title} maxLength={80} onTake={setTitle} />
          <MeasureField label={said.stock} kind="length" unit={unit} text={stock} onTake={setStock} />
          <Button look="main" onClick={() => void use()} disabled={closed.length === 0}>
            {said.make}
          </Button>
          <p class="hint">{closed.length === 0 ? said.notClosed : said.isClosed(closed.length)}</p>
          {problems.length === 0 ? null : (
            <ul class="problem" role="alert">
              {problems.map((problem) => (
                <li key={problem}>{problem}</li>
              ))}
            </ul>
          )}
        </section>
      </aside>
      <DrawingBoard />
    </div>
  );
}

/** A point typed instead of clicked: across and up from the lower left corner of the paper. */
function PointFields({ unit }: { readonly unit: 'mm' | 'in' }) {
  const [across, setAcross] = useState('0');
  const [up, setUp] = useState('0');
  const add = (): void => {
    const [x, y] = [parseLength(across, { unit }), parseLength(up, { unit })];
    if (x.ok && y.ok) addPoint({ x: x.value, y: y.value });
  };
  return (
    <fieldset class="point">
      <legend>{said.point}</legend>
      <MeasureField label={said.across} kind="length" unit={unit} text={across} onTake={setAcross} />
      <MeasureField label={said.up} kind="length" unit={unit} text={up} onTake={setUp} />
      <Button onClick={add}>{said.addPoint}</Button>
    </fieldset>
  );
}
