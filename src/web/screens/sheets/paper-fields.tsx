import { useEffect, useState } from 'preact/hooks';
import type { Design } from '../../../design/index.ts';
import { problems } from '../../engine/engine.ts';
import { engineDo } from '../../engine/engine-do.ts';
import { DesignLength } from '../../fields/design-length.tsx';
import { change } from '../../state/current.ts';
import { Choice, choicesOf } from '../../ui/choice.tsx';
import { MeasureField } from '../../ui/measure-field.tsx';
import { words } from '../../words/en.ts';

const said = words.sheets;

/** Paper, how the sheets stand, their overlap and margins. */
export function PaperFields({ design: { paper, units } }: { readonly design: Design }) {
  const set = (label: string, name: keyof Design['paper'], to: unknown): void =>
    change(label, [{ path: ['paper', name], to }]);
  return (
    <section aria-label={said.paper}>
      <h2>{said.paper}</h2>
      <SizeFields size={paper.size} unit={units.length} onTake={(size) => set(said.size, 'size', size)} />
      <Choice
        label={said.orientation}
        options={choicesOf(said.orientations)}
        chosen={paper.orientation}
        onChoose={(orientation) => set(said.orientation, 'orientation', orientation)}
      />
      <DesignLength label={said.overlap} path={['paper', 'overlap']} value={paper.overlap} />
      <MeasureField
        label={said.margin}
        kind="length"
        text={String(paper.margins.left)}
        unit={units.length}
        problem={problemWith('margins')}
        onTake={(to) => set(said.margin, 'margins', { top: to, right: to, bottom: to, left: to })}
      />
    </section>
  );
}

interface SizeFieldsProps {
  readonly size: Design['paper']['size'];
  readonly unit: 'mm' | 'in';
  readonly onTake: (size: Design['paper']['size']) => void;
}

/** A paper by its name, or a sheet or roll by its sizes. */
function SizeFields({ size, unit, onTake }: SizeFieldsProps) {
  const [names, setNames] = useState<readonly string[]>([]);
  useEffect(() => void engineDo('listPapers', undefined).then(setNames), []);
  const path = ['paper', 'size'];
  const kind = typeof size === 'string' ? size : 'roll' in size ? 'roll' : 'sheet';
  const problem = problemWith('size');
  const take = async (name: string): Promise<void> =>
    onTake(name === 'sheet' || name === 'roll' ? await engineDo('usualSize', { kind: name, unit }) : name);
  return (
    <>
      <Choice
        label={said.size}
        options={[
          ...names.map((name) => [name, name] as const),
          ['sheet', said.otherSheet],
          ['roll', said.otherRoll],
        ]}
        chosen={names.find((name) => name.toLowerCase() === kind.toLowerCase()) ?? kind}
        onChoose={(name) => void take(name)}
      />
      {problem === undefined ? null : <p class="problem">{problem}</p>}
      {typeof size !== 'string' && 'width' in size ? (
        <>
          <DesignLength label={said.width} path={[...path, 'width']} value={size.width} />
          <DesignLength label={said.height} path={[...path, 'height']} value={size.height} />
        </>
      ) : null}
      {typeof size !== 'string' && 'roll' in size ? (
        <>
          <DesignLength label={said.roll} path={[...path, 'roll']} value={size.roll} />
          <DesignLength label={said.longest} path={[...path, 'longest']} value={size.longest} />
        </>
      ) : null}
    </>
  );
}

/** What the engine has to say against a figure of the paper, or against the paper for its sake. */
function problemWith(name: 'size' | 'margins'): string | undefined {
  return problems.value.find(({ code, path }) =>
    path === 'paper' ? code === `paper.${name}` : path === `paper.${name}`,
  )?.message;
}
