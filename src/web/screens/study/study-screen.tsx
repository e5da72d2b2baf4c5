import { useEffect, useState } from 'preact/hooks';
import type { SmallSide } from '../../../design/index.ts';
import type { PatientOutcome } from '../../engine/patient/deeds.ts';
import { patientDo } from '../../engine/patient/patient-do.ts';
import { change, design } from '../../state/current.ts';
import { show } from '../../state/screen.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { words } from '../../words/en.ts';
import { AxisFields, type Choices, type Chosen } from './axis-fields.tsx';
import { StudyTile } from './study-tile.tsx';

const said = words.study;

type Wall = Extract<PatientOutcome<'studyWall'>, { ok: true }>['value'];

/** One or two figures and a wall of small bases across their ranges; a click takes one. */
export function StudyScreen() {
  const now = design.value;
  const [choices, setChoices] = useState<Choices>();
  const [across, setAcross] = useState<Chosen>();
  const [down, setDown] = useState<Chosen>();
  const [wall, setWall] = useState<Wall>();
  const [side, setSide] = useState<SmallSide>('room');
  const [problem, setProblem] = useState<string>();
  useEffect(() => {
    if (now === undefined) return;
    void patientDo('studyChoices', now).then((found) => {
      if (!found.ok) return setProblem(found.problems[0]?.message);
      setChoices(found.value);
      const likely = found.value.find(({ kind }) => kind === 'angle') ?? found.value[0];
      setAcross((before) => before ?? likely);
    });
  }, [now?.form.text]);
  useEffect(() => {
    if (now === undefined || across === undefined) return;
    const axes = down === undefined ? [across] : [across, down];
    let isLate = false;
    void patientDo('studyWall', { design: now, axes }).then((found) => {
      if (isLate) return;
      setProblem(found.ok ? undefined : found.problems[0]?.message);
      setWall(found.ok ? found.value : undefined);
    });
    return () => {
      isLate = true;
    };
  }, [now, across, down]);
  if (now === undefined) return <p class="waiting">{words.noDesign}</p>;
  const take = (parameters: Readonly<Record<string, string | number>>): void => {
    const figures = Object.values(parameters).join(', ');
    change(
      said.taken(figures),
      Object.entries(parameters).map(([name, to]) => ({ path: ['parameters', name], to })),
    );
    show('shape');
  };
  const columns = wall?.scales[0]?.values.length ?? 1;
  return (
    <div class="study-screen">
      <h1>{words.screens.study}</h1>
      <p class="hint">{said.help}</p>
      {choices === undefined ? (
        <p class="waiting">{words.loading}</p>
      ) : (
        <div class="study-axes">
          <AxisFields
            label={said.across}
            choices={choices}
            chosen={across}
            unit={now.units.length}
            onChange={setAcross}
          />
          <AxisFields
            label={said.down}
            choices={choices}
            chosen={down}
            unit={now.units.length}
            none={said.none}
            onChange={setDown}
          />
          <Choice label={said.seen} options={choicesOf(said.sides)} chosen={side} onChoose={setSide} />
        </div>
      )}
      {problem === undefined ? null : (
        <p class="problem" role="alert">
          {problem}
        </p>
      )}
      {wall === undefined ? null : (
        <ul
          class="study-wall"
          style={{
            gridTemplateColumns: `repeat(${down === undefined ? 'auto-fill' : columns}, minmax(7rem, 1fr))`,
          }}
        >
          {wall.cells.map(({ at, parameters }) => (
            <StudyTile
              key={JSON.stringify(parameters)}
              design={now}
              side={side}
              parameters={parameters}
              name={wall.scales
                .map(({ label, values }, axis) => said.value(label, values[at[axis]!]!))
                .join(', ')}
              isNow={Object.entries(parameters).every(([name, to]) => `${now.parameters[name]}` === `${to}`)}
              onTake={() => take(parameters)}
            />
          ))}
        </ul>
      )}
    </div>
  );
}
