import { parseAngle, parseCount, parseLength, parseRatio } from '../../measure/index.ts';
import { TextField, type TextFieldProps } from './text-field.tsx';

export type MeasureKind = 'length' | 'angle' | 'ratio' | 'count';

export interface MeasureFieldProps extends Omit<TextFieldProps, 'whyNot' | 'inputMode' | 'maxLength'> {
  readonly kind: MeasureKind;
  /** What a bare length means. */
  readonly unit: 'mm' | 'in';
  /** What it may be, mm, rad or plain, and how that is said; what is not is not taken. */
  readonly range?: { readonly least: number; readonly most: number; readonly words: string };
}

/** A limit typed in another unit may be carried past itself by rounding: share of it. */
const ROUNDING = 1e-9;

/** A field for a measure in any unit that the engine reads. */
export function MeasureField({ kind, unit, range, ...rest }: MeasureFieldProps) {
  return (
    <TextField
      {...rest}
      inputMode={kind === 'count' ? 'numeric' : 'text'}
      whyNot={(typed) => whyNot(typed, kind, unit, range)}
    />
  );
}

/** What is wrong with a typed figure, or nothing. */
function whyNot(
  text: string,
  kind: MeasureKind,
  unit: 'mm' | 'in',
  range: MeasureFieldProps['range'],
): string | undefined {
  const read = {
    length: () => parseLength(text, { unit }),
    angle: () => parseAngle(text),
    ratio: () => parseRatio(text),
    count: () => parseCount(text),
  }[kind]();
  if (range === undefined) return read.ok ? undefined : read.problems[0]?.message;
  // Too large to be read at all is out of range as well.
  if (!read.ok) return /^-?\d+$/.test(text.trim()) ? range.words : read.problems[0]?.message;
  const slack = ROUNDING * Math.max(Math.abs(range.least), Math.abs(range.most));
  return read.value < range.least - slack || read.value > range.most + slack ? range.words : undefined;
}
