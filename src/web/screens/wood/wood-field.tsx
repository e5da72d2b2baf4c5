import { problems } from '../../engine/engine.ts';
import { change } from '../../state/current.ts';
import { TextField } from '../../ui/text-field.tsx';

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
  const where = ['wood', ...path].join('.');
  return (
    <TextField
      label={label}
      text={String(value ?? '')}
      problem={problems.value.find((each) => each.path === where)?.message}
      onTake={(text) =>
        change(label, [{ path: ['wood', ...path], ...(text === '' ? {} : { to: write(text) }) }])
      }
    />
  );
}
