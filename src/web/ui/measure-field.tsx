import { useEffect, useId, useRef, useState } from 'preact/hooks';
import { parseAngle, parseCount, parseLength, parseRatio } from '../../measure/index.ts';

export type MeasureKind = 'length' | 'angle' | 'ratio' | 'count';

export interface MeasureFieldProps {
  readonly label: string;
  readonly kind: MeasureKind;
  /** As typed and kept. */
  readonly text: string;
  /** What a bare length means. */
  readonly unit: 'mm' | 'in';
  readonly onChange: (text: string) => void;
  /** Said under the field. */
  readonly hint?: string | undefined;
  /** What the engine has to say against the figure. */
  readonly problem?: string | undefined;
  readonly autoFocus?: boolean;
  readonly disabled?: boolean;
  /** It follows something that is being pulled. */
  readonly isMoving?: boolean;
  readonly onEscape?: () => void;
  /** The label is read out but not shown. */
  readonly hideLabel?: boolean;
}

/** A field for a measure in any unit that the engine reads; it is taken on Enter or when the field is left, and refused in words. */
export function MeasureField(props: MeasureFieldProps) {
  const { label, kind, text, unit, onChange, hint, autoFocus, onEscape, hideLabel, disabled = false } = props;
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [typed, setShown] = useState<string>();
  // What is typed and not yet taken: a field that goes away when it is taken is left once more.
  const untaken = useRef<string | undefined>(undefined);
  const setTyped = (to: string | undefined): void => {
    untaken.current = to;
    setShown(to);
  };
  const unreadable = typed === undefined ? undefined : whyUnreadable(typed, kind, unit);
  const problem = unreadable ?? props.problem;
  useEffect(() => {
    if (autoFocus) field.current?.select();
  }, [autoFocus]);
  const take = (): void => {
    const now = untaken.current;
    if (now === undefined || unreadable !== undefined) return;
    setTyped(undefined);
    if (now.trim() !== text) onChange(now.trim());
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') {
      setTyped(undefined);
      onEscape?.();
    }
  };
  return (
    <div class={`measure-field ${props.isMoving === true ? 'moving' : ''}`}>
      <label for={id} class={hideLabel ? 'hidden-label' : ''}>
        {label}
      </label>
      <input
        ref={field}
        id={id}
        type="text"
        inputMode={kind === 'count' ? 'numeric' : 'text'}
        disabled={disabled}
        autocomplete="off"
        spellcheck={false}
        value={typed ?? text}
        aria-invalid={problem !== undefined}
        aria-describedby={problem !== undefined || hint !== undefined ? `${id}-says` : undefined}
        onInput={(event) => setTyped(event.currentTarget.value)}
        onFocus={(event) => event.currentTarget.select()}
        onBlur={take}
        onKeyDown={onKeyDown}
      />
      {(problem ?? hint) === undefined ? null : (
        <p id={`${id}-says`} class={problem === undefined ? 'hint' : 'problem'}>
          {problem ?? hint}
        </p>
      )}
    </div>
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
