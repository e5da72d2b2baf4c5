import { parseAngle, parseCount, parseLength, parseRatio } from '../../measure/index.ts';
import { TextField, type TextFieldProps } from './text-field.tsx';

export type MeasureKind = 'length' | 'angle' | 'ratio' | 'count';

export interface MeasureFieldProps extends Omit<TextFieldProps, 'whyNot' | 'inputMode' | 'maxLength'> {
  readonly kind: MeasureKind;
  /** What a bare length means. */
  readonly unit: 'mm' | 'in';
}

/** A field for a measure in any unit that the engine reads. */
export function MeasureField({ kind, unit, ...rest }: MeasureFieldProps) {
  return (
    <TextField
      {...rest}
      inputMode={kind === 'count' ? 'numeric' : 'text'}
      whyNot={(typed) => whyUnreadable(typed, kind, unit)}
    />
  );
}

/** What is wrong with a typed figure, or nothing. Its range is for the engine to judge. */
function whyUnreadable(text: string, kind: MeasureKind, unit: 'mm' | 'in'): string | undefined {
  const read = {
    length: () => parseLength(text, { unit }),
    angle: () => parseAngle(text),
    ratio: () => parseRatio(text),
    count: () => parseCount(text),
  }[kind]();
  return read.ok ? undefined : read.problems[0]?.message;
}
