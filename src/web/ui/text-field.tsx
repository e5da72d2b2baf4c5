import { useEffect, useId, useRef, useState } from 'preact/hooks';

export interface TextFieldProps {
  readonly label: string;
  /** As typed and kept. */
  readonly text: string;
  /** Takes what was typed, without the blanks around it; asked only when it differs from what is kept. */
  readonly onTake: (text: string) => void;
  /** Hears, while it is typed, what would be taken now; without the blanks around it. */
  readonly onTyping?: (text: string) => void;
  /** Why a typed text cannot be taken, in words; nothing where it can. */
  readonly whyNot?: (typed: string) => string | undefined;
  /** Said under the field. */
  readonly hint?: string | undefined;
  /** What the engine has to say against what is kept. */
  readonly problem?: string | undefined;
  readonly inputMode?: 'text' | 'numeric';
  readonly maxLength?: number;
  readonly autoFocus?: boolean;
  readonly disabled?: boolean;
  /** It follows something that is being pulled. */
  readonly isMoving?: boolean;
  readonly onEscape?: () => void;
}

/** A field that is taken on Enter or when it is left, put back by Escape, and refuses in words what cannot be read. */
export function TextField(props: TextFieldProps) {
  const { label, text, onTake, hint, autoFocus = false, inputMode = 'text' } = props;
  const id = useId();
  const field = useRef<HTMLInputElement>(null);
  const [typed, setShown] = useState<string>();
  // What is typed and not yet taken: a field that goes away when it is taken is left once more.
  const untaken = useRef<string | undefined>(undefined);
  const setTyped = (to: string | undefined): void => {
    untaken.current = to;
    setShown(to);
  };
  const refused = typed === undefined ? undefined : props.whyNot?.(typed);
  const problem = refused ?? props.problem;
  useEffect(() => {
    if (autoFocus) field.current?.select();
  }, [autoFocus]);
  const hear = (now: string): void => {
    setTyped(now);
    const wouldTake = now.trim() !== text && props.whyNot?.(now) === undefined;
    if (wouldTake) props.onTyping?.(now.trim());
  };
  const take = (): void => {
    const now = untaken.current;
    if (now === undefined || refused !== undefined) return;
    setTyped(undefined);
    if (now.trim() !== text) onTake(now.trim());
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    if (event.key === 'Enter') take();
    if (event.key === 'Escape') {
      setTyped(undefined);
      props.onEscape?.();
    }
  };
  return (
    <div class={`field ${props.isMoving === true ? 'moving' : ''}`}>
      <label for={id}>{label}</label>
      <input
        ref={field}
        id={id}
        type="text"
        inputMode={inputMode}
        maxLength={props.maxLength}
        disabled={props.disabled}
        autocomplete="off"
        spellcheck={false}
        value={typed ?? text}
        data-typed={typed === undefined ? 'no' : 'yes'}
        aria-invalid={problem !== undefined}
        aria-describedby={problem !== undefined || hint !== undefined ? `${id}-says` : undefined}
        onInput={(event) => hear(event.currentTarget.value)}
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
