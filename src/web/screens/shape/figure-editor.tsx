import { useEffect, useState } from 'preact/hooks';
import { formatAngle, parseAngle, parseLength } from '../../../measure/index.ts';
import type { ScreenFigure } from '../../engine/answers/picture.ts';
import { foresee } from '../../engine/engine.ts';
import { patientDo } from '../../engine/patient/patient-do.ts';
import type { Pull } from '../../engine/protocol.ts';
import { change, design } from '../../state/current.ts';
import { driversOfPicture } from '../../state/drivers.ts';
import { plainLength } from '../../state/lengths.ts';
import { Choice } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

interface FigureEditorProps {
  readonly of: Pull['of'];
  readonly figure: ScreenFigure;
  /** px in the drawing. */
  readonly at: { readonly x: number; readonly y: number };
  readonly onDone: () => void;
}

/** A field over a figure of the drawing. Where the figure is a parameter itself that is set; otherwise the maker says which parameter follows. */
export function FigureEditor({ of, figure, at, onDone }: FigureEditorProps) {
  const drivers = driversOfPicture(of)?.[figure.name];
  const inHand = design.value;
  const [chosen, setChosen] = useState<string>();
  const [problem, setProblem] = useState<string>();
  const [solving, setSolving] = useState(false);
  /** Taken, but not there yet: what it follows is not known, or it could not be brought about. */
  const [wanted, setWanted] = useState<string>();
  useEffect(() => {
    if (drivers !== undefined && wanted !== undefined) void take(wanted);
  }, [drivers, chosen]);
  const first = drivers?.[0];
  if (inHand === undefined) return null;
  const follows = drivers?.find(({ parameter }) => parameter === chosen) ?? first;
  const kind = figure.kind === 'angle' ? 'angle' : 'length';
  const shown =
    kind === 'angle'
      ? formatAngle(figure.value, { unit: 'deg', decimals: 2 }).replace(/\.?0+°$/, '°')
      : plainLength(figure.value);
  const standing = first?.itself === true ? String(inHand.parameters[first.parameter] ?? shown) : shown;
  const edits = (parameter: string, to: string | number) => [{ path: ['parameters', parameter], to }];
  const take = async (typed: string): Promise<void> => {
    setWanted(typed);
    setProblem(undefined);
    if (follows === undefined) return;
    if (follows.itself) {
      change(follows.label, edits(follows.parameter, typed));
      onDone();
      return;
    }
    const read = kind === 'angle' ? parseAngle(typed) : parseLength(typed, { unit: inHand.units.length });
    if (!read.ok) return;
    setSolving(true);
    const { parameter, label } = follows;
    const sought = { of, name: figure.name, kind: figure.kind, parameter, target: read.value };
    const solved = await patientDo('solve', { design: inHand, wanted: sought });
    setSolving(false);
    if (!solved.ok) {
      setProblem(solved.problems[0]?.message);
      return;
    }
    change(label, edits(parameter, solved.value));
    onDone();
  };
  return (
    <div class="figure-editor" style={{ left: `clamp(7.5rem, ${at.x}px, 100% - 7.5rem)`, top: `${at.y}px` }}>
      <MeasureField
        label={figure.label}
        kind={kind}
        text={wanted ?? standing}
        unit={inHand.units.length}
        problem={problem}
        disabled={drivers !== undefined && first === undefined}
        autoFocus
        onTyping={(typed) => {
          if (follows?.itself === true) foresee(edits(follows.parameter, typed));
        }}
        onTake={(typed) => void take(typed)}
        onEscape={onDone}
      />
      {drivers === undefined ? (
        <p class="hint">{words.shape.findingDrivers}</p>
      ) : first === undefined ? (
        <p class="hint">{words.shape.noDriver}</p>
      ) : first.itself ? null : (
        <Choice
          label={words.shape.byChanging}
          options={drivers.map(({ parameter, label }) => [parameter, label])}
          chosen={follows?.parameter ?? first.parameter}
          onChoose={(parameter) => {
            setProblem(undefined);
            setChosen(parameter);
          }}
        />
      )}
      {solving ? <p class="hint">{words.reckoning}</p> : null}
    </div>
  );
}
