import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { engineDo, problems } from '../../engine/engine.ts';
import { change } from '../../state/current.ts';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

type Size = Design['paper']['size'];

/** Paper, how the sheets stand, their overlap and margins. */
export function PaperFields({ design: { paper, units } }: { readonly design: Design }) {
  const [names, setNames] = useState<readonly string[]>([]);
  useEffect(() => void engineDo('listPapers', undefined).then(setNames), []);
  const said = words.sheets;
  const set = (label: string, path: readonly string[], to: unknown): void =>
    change(label, [{ path: ['paper', ...path], to }]);
  const field = (label: string, path: readonly string[], value: string | number) => (
    <MeasureField
      key={path.join('.')}
      label={label}
      kind="length"
      text={String(value)}
      unit={units.length}
      problem={problemAt(path)}
      onChange={(to) => set(label, path, to)}
    />
  );
  const { size } = paper;
  const kind = typeof size === 'string' ? size : 'roll' in size ? 'roll' : 'sheet';
  return (
    <section aria-label={said.paper}>
      <h2>{said.paper}</h2>
      <label class="choice">
        {said.size}
        <select
          value={names.find((name) => name.toLowerCase() === kind.toLowerCase()) ?? kind}
          onChange={(event) => set(said.size, ['size'], sizeOf(event.currentTarget.value, units.length))}
        >
          {names.map((name) => (
            <option key={name} value={name}>
              {name}
            </option>
          ))}
          <option value="sheet">{said.otherSheet}</option>
          <option value="roll">{said.otherRoll}</option>
        </select>
      </label>
      {problemAt(['size']) === undefined ? null : <p class="problem">{problemAt(['size'])}</p>}
      {typeof size !== 'string' && 'width' in size ? (
        <>
          {field(said.width, ['size', 'width'], size.width)}
          {field(said.height, ['size', 'height'], size.height)}
        </>
      ) : null}
      {typeof size !== 'string' && 'roll' in size ? (
        <>
          {field(said.roll, ['size', 'roll'], size.roll)}
          {field(said.longest, ['size', 'longest'], size.longest)}
        </>
      ) : null}
      <label class="choice">
        {said.orientation}
        <select
          value={paper.orientation}
          onChange={(event) => set(said.orientation, ['orientation'], event.currentTarget.value)}
        >
          {Object.entries(said.orientations).map(([name, label]) => (
            <option key={name} value={name}>
              {label}
            </option>
          ))}
        </select>
      </label>
      {field(said.overlap, ['overlap'], paper.overlap)}
      <MeasureField
        label={said.margin}
        kind="length"
        text={String(paper.margins.left)}
        unit={units.length}
        problem={problemAt(['margins'])}
        onChange={(to) => set(said.margin, ['margins'], { top: to, right: to, bottom: to, left: to })}
      />
    </section>
  );
}

function problemAt(path: readonly string[]): string | undefined {
  const at = `paper.${path.join('.')}`;
  return problems.value.find(({ code, path: where }) =>
    where === 'paper' ? code === `paper.${path[0]}` : where === at,
  )?.message;
}

/** A paper by its name, or sizes to begin with for one that is typed. */
function sizeOf(name: string, unit: Design['units']['length']): Size {
  if (name === 'sheet')
    return unit === 'mm' ? { width: '330 mm', height: '480 mm' } : { width: '13 in', height: '19 in' };
  if (name === 'roll')
    return unit === 'mm' ? { roll: '610 mm', longest: '3000 mm' } : { roll: '24 in', longest: '120 in' };
  return name;
}
