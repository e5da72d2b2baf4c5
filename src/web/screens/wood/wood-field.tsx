import { problems } from '../../engine/engine.ts';
import { change } from '../../state/current.ts';
import { TextField } from '../../ui/text-field.tsx';
import { type WoodMeasure, whyNot } from './why-not.ts';

interface WoodFieldProps {
  readonly label: string;
  readonly of: WoodMeasure;
  /** In the design's `wood`. */
  readonly path: readonly (string | number)[];
  readonly value: string | number | undefined;
  /** It may be left empty: then nothing is said of it. */
  readonly optional?: boolean;
  /** What is written into the design, where it is not the text itself. */
  readonly write?: (text: string) => unknown;
}

/**
 * One figure of the wood, typed as the design file has it. What cannot be read is refused and the old figure stays; what the engine has to
 * say against what is kept stands below.
 */
export function WoodField({
  label,
  of,
  path,
  value,
  optional = false,
  write = (text) => text,
}: WoodFieldProps) {
  const where = ['wood', ...path].join('.');
  return (
    <TextField
      label={label}
      text={String(value ?? '')}
      problem={problems.value.find((each) => each.path === where)?.message}
      whyNot={(typed) => whyNot(typed, of, !optional)}
      onTake={(text) =>
        change(label, [{ path: ['wood', ...path], ...(text === '' ? {} : { to: write(text) }) }])
      }
    />
  );
}
