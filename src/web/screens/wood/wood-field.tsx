import { useId, useState } from 'preact/hooks';
import { problems } from '../../engine/engine.ts';
import { change } from '../../state/current.ts';

interface WoodFieldProps {
  readonly label: string;
  /** In the design's `wood`. */
  readonly path: readonly (string | number)[];
  readonly value: string | number | undefined;
  /** What is written into the design, where it is not the text itself. */
  readonly write?: (text: string) => unknown;
}

/** One figure of the wood, typed as the design file has it; what the engine has to say against it stands below. */
export function WoodField({ label, path, value, write = (text) => text }: WoodFieldProps) {
  const id = useId();
  const [typed, setTyped] = useState<string>();
  const where = ['wood', ...path].join('.');
  const problem = problems.value.find((each) => each.path === where)?.message;
  const take = (): void => {
    const text = typed?.trim();
    setTyped(undefined);
    if (text === undefined || text === String(value ?? '')) return;
    change(label, [{ path: ['wood', ...path], ...(text === '' ? {} : { to: write(text) }) }]);
  };
  return (
    <div class="measure-field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        autocomplete="off"
        spellcheck={false}
        value={typed ?? String(value ?? '')}
        aria-invalid={problem !== undefined}
        aria-describedby={problem === undefined ? undefined : `${id}-says`}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onBlur={take}
        onKeyDown={(event) => {
          if (event.key === 'Enter') take();
          if (event.key === 'Escape') setTyped(undefined);
        }}
      />
      {problem === undefined ? null : (
        <p id={`${id}-says`} class="problem">
          {problem}
        </p>
      )}
    </div>
  );
}
