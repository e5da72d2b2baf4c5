import { foresee, problems } from '../engine/engine.ts';
import { change, design } from '../state/current.ts';
import { MeasureField } from '../ui/measure-field.tsx';

interface DesignLengthProps {
  readonly label: string;
  /** Where it stands in the design file. */
  readonly path: readonly string[];
  readonly value: string | number;
}

/** A length of the design in hand; what the engine has to say against it stands below. */
export function DesignLength({ label, path, value }: DesignLengthProps) {
  const inHand = design.value;
  if (inHand === undefined) return null;
  const where = path.join('.');
  return (
    <MeasureField
      label={label}
      kind="length"
      text={String(value)}
      unit={inHand.units.length}
      problem={problems.value.find((problem) => problem.path === where)?.message}
      onTyping={(to) => foresee([{ path, to }])}
      onTake={(to) => change(label, [{ path, to }])}
    />
  );
}
