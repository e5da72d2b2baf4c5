import { signal } from '@preact/signals';
import { useAnswer } from '../../engine/use-answer.ts';
import { words } from '../../words/en.ts';

/** Are the curvature combs to be seen? */
const isShown = signal(false);

interface CombMarksProps {
  readonly part: string;
  /** Units of the scene per mm of wood. */
  readonly scale: number;
}

/** The combs beside the batten curves of a part, while they are pulled into shape. */
export function CombMarks({ part, scale }: CombMarksProps) {
  const lines = useAnswer('comb', { part }) ?? [];
  if (!isShown.value) return null;
  return (
    <g class="comb" transform={`scale(${scale})`}>
      {lines.map(({ role, data }) => (
        <path key={role + data.slice(0, 40)} d={data} class={`line role-${role}`} />
      ))}
    </g>
  );
}

/** Shows the combs or puts them away, where the part has a curve that a batten would take. */
export function CombChoice({ part }: { readonly part: string }) {
  const lines = useAnswer('comb', { part }) ?? [];
  if (lines.length === 0) return null;
  return (
    <label class="comb-choice">
      <input
        type="checkbox"
        checked={isShown.value}
        onChange={(event) => {
          isShown.value = event.currentTarget.checked;
        }}
      />
      {words.shape.comb}
    </label>
  );
}
